namespace Seedfall.Photos.Cover;

/// <summary>Cover, the mean over how the evidence may be read, and half its 90 % range: what that leaves open, widened as left-out photographs asked for.</summary>
internal static class CoverRange
{
    /// <summary>A range wider than this says little.</summary>
    internal const double Unclear = 0.25;

    /// <summary>Error where nothing in a picture is doubtful, share of the ground.</summary>
    internal const double Least = 0.01;

    internal static (double Cover, double Half) Of(EvidenceCounts counts, PictureBias bias, CoverModel model)
    {
        var (mean, square) = (0.0, 0.0);
        foreach (var (reading, weight) in bias.Readings)
        {
            var at = counts.Cover(reading);
            mean += weight * at;
            square += weight * at * at;
        }

        return (mean, model.RangeFactor * (Least + Math.Sqrt(Math.Max(0.0, square - (mean * mean)))));
    }
}
