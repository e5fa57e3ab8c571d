using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Exchange.Paper;

/// <summary>The figures of a plan in the order the paper shows them, each once.</summary>
public static class PlanFigures
{
    /// <summary>Every figure shown, by order of appearance.</summary>
    public static IReadOnlyList<Figure> Of(RecoveryPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. All(plan).Where(f => f is not null).Select(f => f!).DistinctBy(f => f.Id)];
    }

    private static IEnumerable<Figure?> All(RecoveryPlan plan) =>
    [
        plan.TotalArea,
        .. plan.Verdict.Reasons.Select(r => r.Figure),
        .. plan.Patches.SelectMany(p => new[] { p.Area, p.AreaLow, p.AreaHigh, p.Edge, p.BedEdge, p.LivingCover }),
        .. plan.Timing.Figures,
        .. plan.Timing.Learned?.Figures ?? [],
        .. Water(plan.Water),
        .. plan.Materials.SelectMany(m => new[] { m.Need, m.Cost }),
        plan.TotalCost,
        .. plan.Seed is { } seed ? Seed(seed) : [],
        .. plan.Feed is { } feed ? Feed(feed) : [],
        .. plan.Spray is { } spray ? Spray(spray) : [],
        .. plan.Cover is { } cover ? Cover(cover) : [],
        .. plan.AgainstLaw.Select(f => f.Over),
        .. plan.Tasks.SelectMany(t => t.Figures),
    ];

    private static IEnumerable<Figure?> Water(WaterProof water) =>
    [
        water.Shortfall,
        .. water.Limits.SelectMany(Limit),
        .. water.Remedies.Select(r => r.Effect),
        .. water.Figures,
        water.SeasonVolume,
        water.SeasonCost,
        .. water.Phases.SelectMany(p => p.Runs.SelectMany(r => new[] { r.MinutesPerRound, r.Depth, r.SoakMinutes }).Concat(p.Totals).Concat(Timetable(p.Timetables))),
    ];

    private static IEnumerable<Figure?> Timetable(PhaseTimetables times) =>
    [
        .. times.Proofs.SelectMany(day => day.Proof switch
        {
            TimetableProof.Found found => [found.MinutesAway, found.Bound],
            TimetableProof.Impossible none => none.Limits.SelectMany(Limit),
            _ => Array.Empty<Figure?>(),
        }),
        .. times.Daily?.MoreDays is { } more ? Limit(more) : [],
    ];

    private static IEnumerable<Figure?> Limit(BindingLimit limit) => [limit.Enough, limit.NotEnough];

    private static IEnumerable<Figure?> Seed(SeedPlan seed) =>
    [
        seed.TotalBulk,
        seed.HalfPass,
        .. seed.Patches.SelectMany(p => new[] { p.TargetRate, p.ExtensionRate, p.Bulk, p.ThinExtra, p.LivePerArea }),
        .. seed.Mix.SelectMany(m => new[] { m.ShareByWeight, m.ShareByCount, m.PureLiveSeed }),
        .. seed.Mixes.Count < 2 ? [] : seed.Mixes.SelectMany(x => x.Parts.SelectMany(m => new[] { m.ShareByWeight, m.ShareByCount, m.PureLiveSeed }).Prepend(x.HalfPass)),
        .. seed.Lots.SelectMany(l => Purchase(l.Purchase).Prepend(l.Bulk)),
    ];

    private static IEnumerable<Figure?> Feed(FeedPlan feed) =>
    [
        .. feed.Feedings.SelectMany(f => new[] { f.ProductRate, f.NitrogenRate, f.PhosphateRate, f.PotashRate, f.Product }),
        feed.NitrogenThisSeason,
        .. feed.Recorded is { } recorded ? recorded.Steps.SelectMany(s => new[] { s.Planned, s.Applied, s.Left }).Append(recorded.PlannedThisSeason).Append(recorded.ThisYear) : [],
        .. Purchase(feed.StarterPurchase),
        .. Purchase(feed.LatePurchase),
    ];

    private static IEnumerable<Figure?> Spray(SprayPlan spray) =>
    [
        .. spray.Trips.SelectMany(t =>
            t.Products.SelectMany(p => new[] { p.Rate, p.Total }.Concat(p.PerPatch))
                .Concat(t.Tanks.SelectMany(k => k.Products.Prepend(k.Carrier)))
                .Append(t.CarrierTotal)),
        .. spray.YearlyTotals,
    ];

    private static IEnumerable<Figure?> Cover(CoverPlan cover) =>
        [.. cover.Patches.SelectMany(p => new[] { p.Area, p.Amount }), cover.Total, .. Purchase(cover.Purchase)];

    private static IEnumerable<Figure?> Purchase(Purchase? purchase) =>
        purchase is null ? [] : [purchase.Bought, purchase.LeftOver, purchase.Cost];
}
