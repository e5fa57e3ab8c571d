using System.Runtime.InteropServices;
using Seedfall.Photos.Pixels;
using SkiaSharp;

namespace Seedfall.Photos.Reading;

/// <summary>Pixels to JPEG, with nothing in the file but the picture.</summary>
internal static class JpegEncode
{
    /// <summary>Longest side of a kept picture, pixels.</summary>
    internal const int LongSide = 2000;

    /// <summary>Quality of a kept picture, of 100.</summary>
    internal const int KeepingQuality = 85;

    internal static byte[] Encode(PixelImage image, int quality)
    {
        var rgba = GC.AllocateUninitializedArray<byte>(image.Width * image.Height * 4);
        for (int from = 0, to = 0; to < rgba.Length; from += 3, to += 4)
        {
            rgba[to] = image.Rgb[from];
            rgba[to + 1] = image.Rgb[from + 1];
            rgba[to + 2] = image.Rgb[from + 2];
            rgba[to + 3] = 255;
        }

        var pin = GCHandle.Alloc(rgba, GCHandleType.Pinned);
        try
        {
            using var pixmap = new SKPixmap(new SKImageInfo(image.Width, image.Height, SKColorType.Rgba8888, SKAlphaType.Opaque), pin.AddrOfPinnedObject());
            using var data = pixmap.Encode(new SKJpegEncoderOptions(quality, SKJpegEncoderDownsample.Downsample420, SKJpegEncoderAlphaOption.Ignore));
            return data?.ToArray() ?? throw new InvalidOperationException($"a {image.Width} x {image.Height} picture could not be written as JPEG");
        }
        finally
        {
            pin.Free();
        }
    }
}
