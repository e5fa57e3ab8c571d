using Seedfall.Engine.Simulation.Correction;

namespace Seedfall.Planning.Timing;

/// <summary>The cover forecast of a lawn and its patches, and what was seen of it so far.</summary>
/// <param name="Lawn">Whole lawn: the patches' fans weighed by area, taken to rise and fall together.</param>
/// <param name="Patches">Patch by patch.</param>
/// <param name="Seen">Each cover seen beside what had been expected.</param>
internal sealed record CoverOutlook(IReadOnlyList<CoverFanDay> Lawn, IReadOnlyList<PatchCover> Patches, IReadOnlyList<CoverLearned> Seen)
{
    internal static CoverOutlook Nothing { get; } = new([], [], []);

    internal static CoverOutlook Of(DateOnly seedDown, IReadOnlyList<(Seedbed Bed, CoverPosterior Cover)> patches)
    {
        var each = patches.Select(p => new PatchCover(p.Bed.PatchId, [.. Enumerable.Range(0, p.Cover.Days).Select(day => Fan(p.Cover, day, seedDown))])).ToList();
        var (weights, area) = (patches.Select(p => p.Bed.AreaM2).ToArray(), patches.Sum(p => p.Bed.AreaM2));
        double Mean(int day, Func<CoverFanDay, double> value) => each.Select((patch, i) => value(patch.Days[day]) * weights[i]).Sum() / area;
        return new CoverOutlook(
            [.. Enumerable.Range(0, each[0].Days.Count).Select(day => new CoverFanDay(seedDown.AddDays(day), Mean(day, d => d.P10), Mean(day, d => d.P50), Mean(day, d => d.P90)))],
            each,
            [.. patches.SelectMany(p => p.Cover.Checks.Select(check => new CoverLearned(p.Bed.PatchId, seedDown.AddDays(check.Seen.Day), check.Seen.Cover, check.Uncorrected, check.Expected)))]);
    }

    private static CoverFanDay Fan(CoverPosterior cover, int day, DateOnly seedDown) =>
        new(seedDown.AddDays(day), cover.Quantile(day, 0.10), cover.Quantile(day, 0.50), cover.Quantile(day, 0.90));
}
