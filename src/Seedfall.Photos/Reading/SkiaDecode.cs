using System.Runtime.InteropServices;
using Seedfall.Photos.Pixels;
using SkiaSharp;

namespace Seedfall.Photos.Reading;

/// <summary>JPEG, PNG and WebP to pixels.</summary>
internal static class SkiaDecode
{
    private const int BytesPerPixel = 4;
    private const double NearEnough = 0.1;

    internal static PhotoReadResult Read(ReadOnlySpan<byte> bytes, PhotoFormat format, PhotoLimits limits)
    {
        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null)
        {
            return PhotoReadResult.Refused(PhotoProblemKind.Damaged, $"expected a {format} picture, found a damaged header");
        }

        var (width, height) = (codec.Info.Width, codec.Info.Height);
        if (DeclaredSize.Judge(width, height, codec.FrameCount, limits) is { } refusal)
        {
            return refusal;
        }

        var decoded = Decode(codec, limits.DecodeLongSide);
        if (decoded.Image is not { } image)
        {
            return decoded.Result == SKCodecResult.IncompleteInput
                ? PhotoReadResult.Refused(PhotoProblemKind.Truncated, $"expected a whole {format} picture, found one that ends early")
                : PhotoReadResult.Refused(PhotoProblemKind.Damaged, $"expected a {format} picture, found damaged data");
        }

        var origin = codec.EncodedOrigin;
        var sideways = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var about = PhotoMetadata.Of(bytes, format);
        return PhotoReadResult.Read(new Photo(
            Upright.Turn(image, (int)origin), format, sideways ? height : width, sideways ? width : height, about.TakenAt, about.HadLocation));
    }

    private static (PixelImage? Image, SKCodecResult Result) Decode(SKCodec codec, int? longSide)
    {
        var size = ScaledSize(codec, longSide);
        using var sRgb = SKColorSpace.CreateSrgb();
        var info = new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, sRgb);
        var buffer = GC.AllocateUninitializedArray<byte>(info.BytesSize);
        var pin = GCHandle.Alloc(buffer, GCHandleType.Pinned);
        try
        {
            var result = codec.GetPixels(info, pin.AddrOfPinnedObject());
            return result == SKCodecResult.Success ? (Scaled(buffer, size, longSide), result) : (null, result);
        }
        finally
        {
            pin.Free();
        }
    }

    /// <summary>The smallest size the codec itself can decode to that is not much below the one wanted.</summary>
    private static SKSizeI ScaledSize(SKCodec codec, int? longSide)
    {
        var full = codec.Info.Size;
        for (var eighths = 1; longSide is { } wanted && eighths < 8; eighths++)
        {
            var scaled = codec.GetScaledDimensions(eighths / 8f);
            if (Math.Max(scaled.Width, scaled.Height) >= wanted * (1.0 - NearEnough) && scaled.Width < full.Width)
            {
                return scaled;
            }
        }

        return full;
    }

    private static PixelImage Scaled(byte[] rgba, SKSizeI size, int? longSide)
    {
        var (width, height) = (size.Width, size.Height);
        return longSide is { } wanted && Math.Max(width, height) > wanted * (1.0 + NearEnough)
            ? AreaScale.Shrink(rgba, BytesPerPixel, width, height, wanted)
            : new PixelImage(width, height, Pack(rgba, width * height));
    }

    private static byte[] Pack(byte[] rgba, int pixels)
    {
        var rgb = GC.AllocateUninitializedArray<byte>(3 * pixels);
        for (int from = 0, to = 0; to < rgb.Length; from += BytesPerPixel, to += 3)
        {
            rgb[to] = rgba[from];
            rgb[to + 1] = rgba[from + 1];
            rgb[to + 2] = rgba[from + 2];
        }

        return rgb;
    }
}
