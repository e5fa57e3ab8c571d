using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The fertilizer part of the plan.</summary>
public static class FeedPlanning
{
    /// <summary>
    /// Starter on seed-down day and about day 15, late-fall feed, under the lawn's rule pack. Null with walls where an entry of
    /// the user's breaks a rule; a feeding that would fall in a closed season is left out and its wall named. What the field log
    /// holds of a feeding stands in its place, and the feedings to come are lowered to what that leaves of the year.
    /// </summary>
    /// <param name="lawn">The lawn; must have passed <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">Decide which grasses are seeded.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="patches">Summaries of all the lawn's patches, in its order.</param>
    /// <param name="seedDown">Seed-down day.</param>
    /// <param name="lateFeed">Day the late-fall feed would go on.</param>
    /// <param name="log">The field log; null for nothing written yet.</param>
    public static Section<FeedPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, DateOnly seedDown, DateOnly lateFeed, FieldLog? log = null)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(patches);
        var pack = tables.Pack(lawn.RulePack) ?? throw new ArgumentException($"rule pack {lawn.RulePack} is not in the tables", nameof(lawn));
        var (work, _) = WorkKind.Of(lawn);
        var (steps, assumed) = FeedSteps.Of(lawn, pack, work, seedDown, lateFeed);
        var fed = FedRecord.Of(lawn, log ?? FieldLog.Empty, FeedDates.Settled(pack, steps), seedDown);
        var scene = new FeedScene(lawn, pack, work, steps, fed, GrassMost(lawn, choices, tables, patches));
        var planned = FeedRuling.Planned(scene);
        var (ruled, year) = fed.HasOwn ? FeedRuling.Followed(scene, planned) : (planned, null);
        IReadOnlyList<Assumption> assumptions = [.. assumed, .. RuleAssumed(lawn, pack, fed)];
        var walls = ruled.SelectMany(r => r.Walls).ToList();
        if (walls.Any(w => !w.Id.StartsWith("rules.blackout.", StringComparison.Ordinal)))
        {
            return new(null, walls, assumptions);
        }

        var kept = ruled.Where(r => r.NitrogenPoundsPerM is not null).ToList();
        var feedings = kept.Select(r => FeedingFigures.Of(r, GroundOf(r, patches))).ToList();
        if (feedings.Count == 0 && year is null)
        {
            return new(null, walls, assumptions);
        }

        var plan = new FeedPlan(
            feedings,
            year is null ? FeedingFigures.Season(feedings) : RecordedFigures.Season(lawn, year),
            Buy("feed.starter", feedings.Where(f => f.DaysAfterSeedDown is not null), kept, lawn.Prices?.StarterPerPound),
            Buy("feed.late", feedings.Where(f => f.DaysAfterSeedDown is null), kept, null),
            [.. ruled.SelectMany(r => r.Advice), .. year is null ? [] : GrassFull(scene, year), .. SoilAdvice.For(lawn.Soil), .. RuleNotes.For(lawn, pack)])
        {
            Recorded = year is null ? null : RecordedFigures.Of(scene, planned, feedings, year),
        };
        return new(plan, walls, assumptions);
    }

    /// <summary>The ground a feeding is still to go on.</summary>
    private static Area GroundOf(RuledStep step, IReadOnlyList<PatchSummary> patches) =>
        Area.FromSquareMeters(patches.Where(p => step.Grounds?.Contains(p.Id) != false).Sum(p => p.Area.Value));

    /// <summary>What is recorded is more than the grasses want: said by how much.</summary>
    private static IEnumerable<Advice> GrassFull(FeedScene scene, NitrogenLedger year)
    {
        var (on, most) = (year.Only(line => line.IsRecorded).Most(null), scene.GrassMostPoundsPerM);
        if (on > most + 1.0e-9)
        {
            yield return new(
                "feed.recorded.grass",
                FormattableString.Invariant($"By the record {on:0.###} lb N per 1,000 sq ft is on this year, {on - most:0.###} more than the {most:0.###} these grasses want: leave out every feeding still to come."),
                "yearly nitrogen by grass: Maine Department of Agriculture, Conservation and Forestry, YardScaping",
                Sureness.Published);
        }
    }

    /// <summary>Most nitrogen the seeded grasses want in a year, lb per 1,000 sq ft: the highest end of their ranges.</summary>
    private static double GrassMost(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches) =>
        SeedPlanning.Seeded(lawn, choices, tables, patches).Max(s => tables.For(s).NitrogenPoundsPerMYear.High);

    private static IEnumerable<Assumption> RuleAssumed(Lawn lawn, RulePack pack, FedRecord fed)
    {
        if (lawn.RulePack is null)
        {
            yield return new("assumed.rules", "No state or province rules are put to this plan.", "Limits on nitrogen, phosphorus and dates are not checked.", "Choose the state's rule pack, and ask what the town adds.");
        }

        if (lawn.NitrogenThisYear is null && fed.Before.Count == 0 && pack.Nitrogen.MaxPerYear is not null)
        {
            yield return new("assumed.feed.year", "No nitrogen has gone on this lawn yet this year.", $"{pack.Name} limits the year's nitrogen: what was applied before counts.", "Enter the nitrogen already applied this year.");
        }
    }

    private static Purchase? Buy(string id, IEnumerable<Feeding> feedings, IReadOnlyList<RuledStep> steps, decimal? pricePerPound)
    {
        var list = feedings.ToList();
        if (list.Count == 0)
        {
            return null;
        }

        var product = steps.First(s => s.Step.Id == list[0].Id).Step.Product;
        return BagPurchase.For(id, Mass.FromKilograms(list.Sum(f => f.Product.Value)), product.Bags, pricePerPound);
    }
}
