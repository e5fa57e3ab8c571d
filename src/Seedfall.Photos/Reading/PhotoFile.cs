using System.Globalization;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Reading;

/// <summary>Pictures from bytes, and bytes for keeping: nothing a stranger sends does more than be refused by name.</summary>
public static class PhotoFile
{
    /// <summary>The picture, upright, or the reason it is refused. Judged by its header first: a refused size allocates nothing.</summary>
    public static PhotoReadResult Read(ReadOnlySpan<byte> bytes, PhotoLimits? limits = null)
    {
        limits ??= PhotoLimits.Ordinary;
        if (bytes.IsEmpty)
        {
            return PhotoReadResult.Refused(PhotoProblemKind.Empty, "expected a picture, found an empty file");
        }

        if (bytes.Length > limits.MostBytes)
        {
            return PhotoReadResult.Refused(PhotoProblemKind.TooManyBytes, string.Create(CultureInfo.InvariantCulture, $"expected a picture of at most {limits.MostBytes >> 20} MB, found {bytes.Length / 1048576.0:F1} MB"));
        }

        return PhotoSniff.Format(bytes) switch
        {
            null => PhotoReadResult.Refused(PhotoProblemKind.UnknownFormat, "expected a JPEG, PNG, WebP or HEIC picture, found something else"),
            PhotoFormat.Heic => HeicDecode.Read(bytes, limits),
            { } format => SkiaDecode.Read(bytes, format, limits),
        };
    }

    /// <summary>
    /// The picture as it is kept: JPEG in sRGB, long side at most 2000 pixels, with nothing of the file it came from but its pixels.
    /// </summary>
    public static byte[] Store(Photo photo)
    {
        ArgumentNullException.ThrowIfNull(photo);
        return Store(photo.Image);
    }

    /// <inheritdoc cref="Store(Photo)"/>
    public static byte[] Store(PixelImage image)
    {
        ArgumentNullException.ThrowIfNull(image);
        return JpegEncode.Encode(AreaScale.ToLongSide(image, JpegEncode.LongSide), JpegEncode.KeepingQuality);
    }
}
