using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Timing;

/// <summary>What the field log taught this season, each thing seen beside what had been expected of it. The uncorrected figures stay, so that the gain can be judged.</summary>
/// <param name="Readings">Thermometer readings.</param>
/// <param name="Greens">First greens.</param>
/// <param name="Covers">Covers seen.</param>
/// <param name="Figures">What is believed now, and how far off things were before and after learning.</param>
/// <param name="LeftOut">Entries that could not be used, each with the reason.</param>
public sealed record SeasonLearning(
    IReadOnlyList<ReadingLearned> Readings,
    IReadOnlyList<GreenLearned> Greens,
    IReadOnlyList<CoverLearned> Covers,
    IReadOnlyList<Figure> Figures,
    IReadOnlyList<string> LeftOut)
{
    /// <summary>True where nothing was written that could teach.</summary>
    public bool IsEmpty => Readings.Count == 0 && Greens.Count == 0 && Covers.Count == 0 && LeftOut.Count == 0;
}

/// <summary>A thermometer reading, degC, at its own hour and depth.</summary>
/// <param name="Date">Day, local standard time.</param>
/// <param name="ReadC">What it showed.</param>
/// <param name="ComputedC">Computed from weather alone.</param>
/// <param name="ExpectedC">Computed with what earlier readings taught.</param>
/// <param name="Used">False where it lay too far off to be believed; shown and not used.</param>
public sealed record ReadingLearned(DateOnly Date, double ReadC, double ComputedC, double ExpectedC, bool Used);

/// <summary>A first green.</summary>
/// <param name="PatchId">The patch.</param>
/// <param name="Date">Day it was seen.</param>
/// <param name="Computed">Day computed by the table; null where none was to be expected.</param>
/// <param name="Corrected">The same with the pace learned.</param>
public sealed record GreenLearned(string PatchId, DateOnly Date, DateOnly? Computed, DateOnly? Corrected);

/// <summary>A cover seen, shares of the ground.</summary>
/// <param name="PatchId">The patch.</param>
/// <param name="Date">Day it was seen.</param>
/// <param name="Seen">What was seen.</param>
/// <param name="Computed">Middle of the forecast from weather and seed alone.</param>
/// <param name="Expected">Middle of the forecast with what was seen before.</param>
public sealed record CoverLearned(string PatchId, DateOnly Date, double Seen, double Computed, double Expected);
