using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The fertilizer part of the plan.</summary>
public static class FeedPlanning
{
    /// <summary>
    /// Starter on seed-down day and about day 15, late-fall feed, under the lawn's rule pack. Null with walls where an entry of
    /// the user's breaks a rule; a feeding that would fall in a closed season is left out and its wall named.
    /// </summary>
    /// <param name="lawn">The lawn; must have passed <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">Decide which grasses are seeded.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="patches">Summaries of all the lawn's patches, in its order.</param>
    /// <param name="seedDown">Seed-down day.</param>
    /// <param name="lateFeed">Day the late-fall feed would go on.</param>
    public static Section<FeedPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, DateOnly seedDown, DateOnly lateFeed)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(patches);
        var pack = tables.Pack(lawn.RulePack) ?? throw new ArgumentException($"rule pack {lawn.RulePack} is not in the tables", nameof(lawn));
        var (work, _) = WorkKind.Of(lawn);
        var (steps, assumed) = FeedSteps.Of(lawn, pack, work, seedDown, lateFeed);
        var ruled = RuleAll(lawn, pack, work, steps, GrassMost(lawn, choices, tables, patches));
        IReadOnlyList<Assumption> assumptions = [.. assumed, .. RuleAssumed(lawn, pack)];
        var walls = ruled.SelectMany(r => r.Walls).ToList();
        if (walls.Any(w => !w.Id.StartsWith("rules.blackout.", StringComparison.Ordinal)))
        {
            return new(null, walls, assumptions);
        }

        var area = Area.FromSquareMeters(patches.Sum(p => p.Area.Value));
        var kept = ruled.Where(r => r.NitrogenPoundsPerM is not null).ToList();
        var feedings = kept.Select(r => FeedingFigures.Of(r.Step, r.NitrogenPoundsPerM!.Value, area)).ToList();
        if (feedings.Count == 0)
        {
            return new(null, walls, assumptions);
        }

        var plan = new FeedPlan(
            feedings,
            FeedingFigures.Season(feedings),
            Buy("feed.starter", feedings.Where(f => f.DaysAfterSeedDown is not null), kept, lawn.Prices?.StarterPerPound),
            Buy("feed.late", feedings.Where(f => f.DaysAfterSeedDown is null), kept, null),
            [.. ruled.SelectMany(r => r.Advice), .. SoilAdvice.For(lawn.Soil), .. RuleNotes.For(lawn, pack)]);
        return new(plan, walls, assumptions);
    }

    private static List<RuledStep> RuleAll(Lawn lawn, RulePack pack, SeedingWork work, IReadOnlyList<FeedStep> steps, double grassMost)
    {
        var rules = new FeedRules(pack, work, lawn.Soil, lawn.NitrogenThisYear?.PoundsPerThousandSquareFeet ?? 0.0, grassMost);
        var ruled = new List<RuledStep>();
        foreach (var step in steps)
        {
            ruled.Add(rules.Rule(step, ruled.Count > 0 ? ruled[^1].Step.Date : null));
        }

        return ruled;
    }

    /// <summary>Most nitrogen the seeded grasses want in a year, lb per 1,000 sq ft: the highest end of their ranges.</summary>
    private static double GrassMost(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches) =>
        SeedPlanning.Seeded(lawn, choices, tables, patches).Max(s => tables.For(s).NitrogenPoundsPerMYear.High);

    private static IEnumerable<Assumption> RuleAssumed(Lawn lawn, RulePack pack)
    {
        if (lawn.RulePack is null)
        {
            yield return new("assumed.rules", "No state or province rules are put to this plan.", "Limits on nitrogen, phosphorus and dates are not checked.", "Choose the state's rule pack, and ask what the town adds.");
        }

        if (lawn.NitrogenThisYear is null && pack.Nitrogen.MaxPerYear is not null)
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
