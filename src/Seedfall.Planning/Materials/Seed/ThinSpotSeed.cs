using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>A thin spot as it was found on a patch.</summary>
/// <param name="Id">Unique on the patch: lower-case letters, digits and hyphens.</param>
/// <param name="Name">As the page has it, for example <c>spot 1</c>.</param>
/// <param name="Low">Least its area is likely to be.</param>
/// <param name="High">Most it is likely to be.</param>
/// <param name="Cover">Living cover in it.</param>
public sealed record FoundThinSpot(string Id, string Name, Area Area, Area Low, Area High, Fraction Cover);

/// <summary>Extra seed for one thin spot.</summary>
/// <param name="Area">Its area, with the range in the working.</param>
/// <param name="Extra">Bulk seed on top of what the patch gets anyway.</param>
public sealed record ThinSpotNeed(string Id, string Name, Figure Area, Figure Cover, Figure Extra);

/// <summary>Extra seed for the thin spots of one patch.</summary>
/// <param name="Sentence">What to do, with what the plan keeps apart already.</param>
/// <param name="HighExtra">Extra where every spot is as large as it is likely to be: what to have at hand.</param>
public sealed record ThinSpotSeed(string PatchId, string Sentence, IReadOnlyList<ThinSpotNeed> Spots, Figure Area, Figure Extra, Figure HighExtra)
{
    private const string Bound = "bound of the new-lawn rate, and of twice the patch's own: UC IPM, K-State and UMN on crowded seedlings; the split is Seedfall's own";

    /// <summary>
    /// Extra bulk seed: each spot is brought up to the rate its own cover asks for, which is at most the new-lawn rate, and never
    /// beyond twice the patch's own: <c>extra = A b min(f_spot / f - 1, 1)</c>, with <c>b</c> the patch's bulk rate and <c>f</c>
    /// shares of the new-lawn rate by <see cref="SeedTarget.ShareOfNewRate"/>.
    /// </summary>
    /// <param name="lawn">The lawn; must have passed <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">The overseeding share, where chosen.</param>
    /// <param name="patch">The patch as the plan sees it.</param>
    /// <param name="seed">The patch's own seeding.</param>
    /// <param name="spots">The spots found on it.</param>
    public static ThinSpotSeed For(Lawn lawn, Choices choices, PatchSummary patch, PatchSeed seed, IReadOnlyList<FoundThinSpot> spots)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(patch);
        ArgumentNullException.ThrowIfNull(seed);
        ArgumentNullException.ThrowIfNull(spots);
        var (work, _) = WorkKind.Of(lawn);
        var overseedShare = Math.Clamp(choices.OverseedShare?.Value ?? SeedTarget.UsualOverseedShare, SeedTarget.LeastOverseedShare, SeedTarget.MostOverseedShare);
        var share = SeedTarget.ShareOfNewRate(patch.LivingCover.Value, overseedShare, work);
        var bulkRate = MassPerArea.FromKilogramsPerSquareMeter((seed.Bulk.Value - seed.ThinExtra.Value) / patch.Area.Value);
        double Times(FoundThinSpot spot) => TimesRate(SeedTarget.ShareOfNewRate(spot.Cover.Value, overseedShare, work), share);
        double Extra(Area area, FoundThinSpot spot) => area.SquareMeters * bulkRate.KilogramsPerSquareMeter * Times(spot);

        var id = $"thin.{patch.Id}";
        var needs = spots.Select(s => Need(id, patch, s, bulkRate, Times(s), Extra(s.Area, s))).ToList();
        var total = Worked.Computed(
            $"{id}.extra", $"{patch.Name}: extra seed for its thin spots", QuantityKind.Mass, needs.Sum(n => n.Extra.Value), "sum over the spots", null,
            [.. needs.Select(n => new WorkingInput(n.Id, n.Extra.Label, Mass.FromKilograms(n.Extra.Value).Pounds, "lb"))]);
        var high = Worked.Computed(
            $"{id}.high", $"{patch.Name}: extra seed to have at hand", QuantityKind.Mass, spots.Sum(s => Extra(s.High, s)), "sum over the spots at their largest", "The spots may be larger than measured: carry this much and bring home the rest.");
        var area = Worked.Computed(
            $"{id}.area", $"{patch.Name}: thin ground", QuantityKind.Area, spots.Sum(s => s.Area.SquareMeters), "sum over the spots", Range(spots.Sum(s => s.Low.SquareFeet), spots.Sum(s => s.High.SquareFeet)));
        return new(patch.Id, Say(patch, seed, total, high), needs, area, total, high);
    }

    /// <summary>How many times the patch's own rate a spot gets on top: up to its own target, never more than once.</summary>
    internal static double TimesRate(double spotShare, double patchShare) => Math.Clamp(spotShare / patchShare - 1.0, 0.0, SeedTarget.MostTimesRate - 1.0);

    private static ThinSpotNeed Need(string id, PatchSummary patch, FoundThinSpot spot, MassPerArea bulkRate, double times, double extraKg) => new(
        spot.Id,
        spot.Name,
        new Figure(
            $"{id}.{spot.Id}.area", $"{patch.Name}, {spot.Name}: area", QuantityKind.Area, spot.Area.SquareMeters,
            new Working("area within the outline", [], "measured on the photograph between the four marks", Sureness.Measured, Range(spot.Low.SquareFeet, spot.High.SquareFeet))),
        new Figure(
            $"{id}.{spot.Id}.cover", $"{patch.Name}, {spot.Name}: green seen", QuantityKind.Share, spot.Cover.Value,
            new Working("mean over its cells, each of the same ground", [], "measured on the photograph", Sureness.Measured, "Seen at a slant leaves hide ground: the true cover is rather less.")),
        Worked.Sourced(
            $"{id}.{spot.Id}.extra", $"{patch.Name}, {spot.Name}: extra seed", QuantityKind.Mass, extraKg, "extra = A b t", Bound, Sureness.Assumed,
            times > 0.0 ? "In all never more than the new-lawn rate, nor than twice this patch's." : "None: the patch's rate already is what this cover asks for.",
            new WorkingInput("A", "area of the spot", spot.Area.ThousandSquareFeet, "1,000 sq ft"),
            new WorkingInput("b", "bulk rate of the patch", bulkRate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"),
            new WorkingInput("t", "times the patch's rate on top", times, "")));

    private static string Range(double lowSquareFeet, double highSquareFeet) =>
        FormattableString.Invariant($"Likely between {lowSquareFeet:#,##0} and {highSquareFeet:#,##0} sq ft, nine times of ten, by where the edge lies in its cells and how far the marks are off.");

    private static string Say(PatchSummary patch, PatchSeed seed, Figure total, Figure high)
    {
        if (total.Value <= 0.0)
        {
            return $"{patch.Name}: no extra seed; its own rate already is what the thin places ask for.";
        }

        var (need, most, kept) = (FigureText.Both(total), FigureText.Both(high), FigureText.Both(seed.ThinExtra));
        return seed.ThinExtra.Value <= 0.0 ? $"{patch.Name}: {need} more seed on the thin spots; have {most} at hand."
            : high.Value <= seed.ThinExtra.Value ? $"{patch.Name}: {need} on the thin spots, out of the {kept} the plan keeps apart for them."
            : total.Value <= seed.ThinExtra.Value ? $"{patch.Name}: {need} on the thin spots, out of the {kept} the plan keeps apart; have {most} at hand, for they may be larger."
            : $"{patch.Name}: {need} on the thin spots. The plan keeps {kept} apart for them: that much more is needed as the difference, and {most} at hand.";
    }
}
