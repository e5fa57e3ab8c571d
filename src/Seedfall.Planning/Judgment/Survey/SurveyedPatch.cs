using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment.Survey;

/// <summary>The patch as the walk-over found it: what was measured wins over what was entered; what was not, stays as entered.</summary>
public static class SurveyedPatch
{
    /// <summary>Fewest tufts that say something of dormancy.</summary>
    public const int FewestTufts = 3;

    /// <summary>Share of the tufts that must agree: common practice, no source read.</summary>
    private const double Agreed = 2.0 / 3.0;

    /// <summary>Every patch of the lawn as surveyed.</summary>
    public static Lawn Of(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        return lawn.Patches.All(p => p.Survey is null) ? lawn : lawn with { Patches = [.. lawn.Patches.Select(Of)] };
    }

    /// <summary>The patch as surveyed; the cause stays the adviser's own.</summary>
    public static Patch Of(Patch patch)
    {
        ArgumentNullException.ThrowIfNull(patch);
        if (patch.Survey is not { } survey)
        {
            return patch;
        }

        var living = CoverEstimate.Living(survey.Quadrats) is { } cover ? Fraction.Of(cover.Share) : patch.LivingCover;
        return patch with
        {
            LivingCover = living,
            WeedCover = Weeds(survey, living) ?? patch.WeedCover,
            GrubsPerSquareFoot = GrubEstimate.Of(survey.Lifts)?.PerSquareFoot ?? patch.GrubsPerSquareFoot,
            Thatch = MeanDepth(survey.Thatch) ?? patch.Thatch,
            Dormant = Dormant(survey) ?? patch.Dormant,
            SunHours = survey.SunHours ?? patch.SunHours,
        };
    }

    /// <summary>
    /// True where two thirds of at least three brown tufts held and the soil was not felt moist or wet: dormant. False where two
    /// thirds came out: dead. Null where the tufts disagree, are too few, or hold in moist soil, where dormancy does not fit.
    /// </summary>
    public static bool? Dormant(PatchSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        if (survey.Tugs is not { Total: >= FewestTufts } tugs)
        {
            return null;
        }

        var held = (double)tugs.Held / tugs.Total;
        return held >= Agreed ? survey.Moisture is SoilFeel.Moist or SoilFeel.Wet ? null : true : 1.0 - held >= Agreed ? false : null;
    }

    /// <summary>Mean of several depths; null without one.</summary>
    public static Depth? MeanDepth(IReadOnlyList<Depth> depths)
    {
        ArgumentNullException.ThrowIfNull(depths);
        return depths.Count == 0 ? null : Depth.FromMillimeters(depths.Average(d => d.Millimeters));
    }

    /// <summary>What the working of a figure of the verdict adds where it comes from the walk-over; null where it does not.</summary>
    internal static string? ThatchNote(Patch patch) => patch.Survey is not { Thatch.Count: > 0 } survey ? null : string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"Mean of {survey.Thatch.Count} {(survey.Thatch.Count == 1 ? "core" : "cores")} of the walk-over, from {survey.Thatch.Min().Inches:0.##} to {survey.Thatch.Max().Inches:0.##} in ({survey.Thatch.Min().Millimeters:0} to {survey.Thatch.Max().Millimeters:0} mm).");

    /// <summary>As <see cref="ThatchNote"/>, for grubs.</summary>
    internal static string? GrubNote(Patch patch) => GrubEstimate.Of(patch.Survey?.Lifts) is not { } grubs ? null : string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{grubs.Counted} under {grubs.Lifts} {(grubs.Lifts == 1 ? "lift" : "lifts")} of the walk-over; 90 % range {grubs.Low:0.#} to {grubs.High:0.#} a square foot. {grubs.Words}");

    /// <summary>As <see cref="ThatchNote"/>, for living cover: the whole working.</summary>
    internal static Working? CoverWorking(Patch patch) => CoverEstimate.Living(patch.Survey?.Quadrats ?? [])?.Working("living cover");

    /// <summary>Weeds hit by the grid, else the sum judged by eye, never more than the living turf leaves.</summary>
    private static Fraction? Weeds(PatchSurvey survey, Fraction? living)
    {
        var left = 1.0 - (living?.Value ?? 0.0);
        if (CoverEstimate.Weeds(survey.Quadrats) is { } hit)
        {
            return Fraction.Of(Math.Clamp(hit.Share, 0.0, left));
        }

        var judged = survey.Weeds.Where(w => w.Cover is not null).ToArray();
        return judged.Length > 0 ? Fraction.Of(Math.Clamp(judged.Sum(w => w.Cover!.Value.Value), 0.0, left))
            : survey is { LookedForWeeds: true, Weeds.Count: 0 } ? Fraction.None : null;
    }
}
