namespace Seedfall.Photos.Cover;

/// <summary>Cover and its 90 % range: what the bias leaves open, and what left-out photographs showed to come on top.</summary>
internal static class CoverRange
{
    /// <summary>A range wider than this says little.</summary>
    internal const double Unclear = 0.25;

    /// <summary>Error where nothing in a picture is doubtful, share of the ground.</summary>
    internal const double Least = 0.01;

    internal static (double Cover, double Half) Of(EvidenceCounts counts, PictureBias bias, int taps, CoverModel model)
    {
        var (mean, square) = (0.0, 0.0);
        foreach (var (reading, weight) in bias.Readings)
        {
            var at = counts.Cover(reading);
            mean += weight * at;
            square += weight * at * at;
        }

        var cover = taps == 0 ? counts.Cover(EvidenceReading.Plain) : mean;
        return (cover, model.RangeFactor * (Least + Math.Sqrt(Math.Max(0.0, square - (mean * mean)))));
    }
}
