using ImageMagick;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Reading;

/// <summary>HEIC to pixels. The declared size is judged from the boxes first; the decoder runs one picture at a time, under limits.</summary>
internal static class HeicDecode
{
    private const ulong MostMemoryBytes = 512UL << 20;
    private static readonly Lock OneAtATime = new();

    internal static PhotoReadResult Read(ReadOnlySpan<byte> bytes, PhotoLimits limits)
    {
        var boxes = HeifBoxes.Of(bytes);
        if (!boxes.IsWhole)
        {
            return PhotoReadResult.Refused(PhotoProblemKind.Truncated, "expected a whole HEIC picture, found one that ends early or is damaged");
        }

        if (DeclaredSize.Judge(boxes.Width, boxes.Height, 1, limits) is { } refusal)
        {
            return refusal;
        }

        lock (OneAtATime)
        {
            try
            {
                return Decode(bytes, limits);
            }
            catch (MagickException)
            {
                return PhotoReadResult.Refused(PhotoProblemKind.Damaged, "expected an HEIC picture, found damaged data");
            }
        }
    }

    private static PhotoReadResult Decode(ReadOnlySpan<byte> bytes, PhotoLimits limits)
    {
        Limit(limits);
        using var picture = new MagickImage(bytes, new MagickReadSettings { Format = MagickFormat.Heic });
        var (width, height) = ((int)picture.Width, (int)picture.Height);
        var exif = picture.GetExifProfile()?.ToByteArray();
        if (picture.GetColorProfile() is not null)
        {
            picture.TransformColorSpace(ColorProfiles.SRGB);
        }

        // The decoder has turned the picture as its boxes say; the Exif orientation repeats that and is not applied again.
        using var pixels = picture.GetPixelsUnsafe();
        var rgb = pixels.ToByteArray(PixelMapping.RGB) ?? throw new InvalidOperationException("a decoded HEIC picture gave no pixels");
        var image = new PixelImage(width, height, rgb);
        var about = exif is null ? default : PhotoMetadata.OfExif(exif);
        image = limits.DecodeLongSide is { } longSide ? AreaScale.ToLongSide(image, longSide) : image;
        return PhotoReadResult.Read(new Photo(image, PhotoFormat.Heic, width, height, about.TakenAt, about.HadLocation));
    }

    private static void Limit(PhotoLimits limits)
    {
        ResourceLimits.Width = (ulong)limits.LongestSide;
        ResourceLimits.Height = (ulong)limits.LongestSide;
        ResourceLimits.Area = (ulong)limits.MostPixels;
        ResourceLimits.Memory = MostMemoryBytes;
        ResourceLimits.MaxMemoryRequest = MostMemoryBytes;
        ResourceLimits.Disk = 0;
        ResourceLimits.ListLength = (ulong)limits.MostFrames;
        ResourceLimits.Thread = 1;
    }
}
