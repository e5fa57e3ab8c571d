using System.Globalization;

namespace Seedfall.Photos.Reading;

/// <summary>Judges what a header declares.</summary>
internal static class DeclaredSize
{
    /// <summary>The refusal, or null where the size is allowed.</summary>
    internal static PhotoReadResult? Judge(long width, long height, int frames, PhotoLimits limits)
    {
        if (width < 1 || height < 1)
        {
            return PhotoReadResult.Refused(PhotoProblemKind.Damaged, "expected a picture, found one without pixels");
        }

        if (Math.Max(width, height) > limits.LongestSide || width * height > limits.MostPixels)
        {
            return PhotoReadResult.Refused(
                PhotoProblemKind.TooManyPixels,
                string.Create(CultureInfo.InvariantCulture, $"expected at most {limits.MostPixels / 1_000_000} megapixels and {limits.LongestSide} pixels a side, found {width} x {height}"));
        }

        return frames > limits.MostFrames
            ? PhotoReadResult.Refused(PhotoProblemKind.TooManyFrames, string.Create(CultureInfo.InvariantCulture, $"expected a still picture, found {frames} frames"))
            : null;
    }
}
