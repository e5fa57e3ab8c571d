using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>Seed for one patch: rate, bulk, thin-spot extra.</summary>
internal sealed class PatchSeeding(SeedBlend blend, TradeTables tables, double overseedShare, SeedingWork work)
{
    private readonly double _seedsPerKg = blend.SeedsPerKilogram();
    private readonly double _pureLive = blend.PureLive;
    private readonly double _extensionPoundsPerM = MixShares.RateOfMix(
        [.. blend.Kinds().Select(k => k.WeightShare)],
        [.. blend.Kinds().Select(k => tables.For(k.Species).NewLawnPoundsPerM.Middle)]);

    internal PatchSeed For(PatchSummary patch)
    {
        var share = SeedTarget.ShareOfNewRate(patch.LivingCover.Value, overseedShare, work);
        var livePerM2 = SeedCount.FromPerSquareFoot(SeedTarget.LivePerSquareFoot) * share;
        var rate = SeedCount.RateFor(livePerM2, _seedsPerKg);
        var extraShare = work == SeedingWork.NewEstablishment ? 0.0 : SeedTarget.ThinExtra(patch.LivingCover.Value, share);
        var baseKg = rate.KilogramsPerSquareMeter * patch.Area.Value / _pureLive;
        var extraKg = baseKg * extraShare;
        return new PatchSeed(
            patch.Id,
            Target(patch, rate, share),
            Extension(patch, share),
            Bulk(patch, rate, baseKg, extraKg),
            Extra(patch, baseKg, extraKg, extraShare, share),
            Live(patch, livePerM2, share));
    }

    private Figure Target(PatchSummary patch, MassPerArea rate, double share) => Worked.Sourced(
        $"seed.{patch.Id}.target", $"{patch.Name}: pure live seed rate", QuantityKind.MassPerArea, rate.KilogramsPerSquareMeter,
        "rate = N f / s", SeedTarget.Source, Sureness.Published, ShareNote(share),
        new WorkingInput("N", "live seeds on bare ground", SeedTarget.LivePerSquareFoot, "per sq ft"),
        new WorkingInput("f", "share of the new-lawn rate", share, ""),
        new WorkingInput("s", "seeds in a pound of the mix", _seedsPerKg * 0.45359237, "per lb"));

    private Figure Extension(PatchSummary patch, double share)
    {
        var kinds = blend.Kinds();
        var sources = string.Join("; ", kinds.Select(k => tables.For(k.Species).NewLawnPoundsPerM.Source).Distinct());
        return Worked.Sourced(
            $"seed.{patch.Id}.extension", $"{patch.Name}: extension rate for comparison", QuantityKind.MassPerArea,
            MassPerArea.FromPoundsPerThousandSquareFeet(_extensionPoundsPerM * share).KilogramsPerSquareMeter,
            "rate = f / sum(w_i / r_i)", sources, Sureness.Published, "Middle of each printed new-lawn range, as sold; half for overseeding is the extension rule.",
            [new("f", "share of the new-lawn rate", share, ""), .. kinds.SelectMany(k => new WorkingInput[]
            {
                new($"w {SpeciesIds.Of(k.Species)}", "share by weight", k.WeightShare, ""),
                new($"r {SpeciesIds.Of(k.Species)}", "new-lawn rate, middle", tables.For(k.Species).NewLawnPoundsPerM.Middle, "lb per 1,000 sq ft"),
            })]);
    }

    private Figure Bulk(PatchSummary patch, MassPerArea rate, double baseKg, double extraKg) => Worked.Computed(
        $"seed.{patch.Id}.bulk", $"{patch.Name}: bulk seed", QuantityKind.Mass, baseKg + extraKg,
        "bulk = rate A / PLS + extra", "Pure live seed: University of Minnesota Extension, Purchasing Seed.",
        new WorkingInput("rate", "pure live seed rate", rate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"),
        new WorkingInput("A", "area", new Area(patch.Area.Value).ThousandSquareFeet, "1,000 sq ft"),
        new WorkingInput("PLS", "pure live seed of the blend", _pureLive, ""),
        new WorkingInput("extra", "for thin spots", Mass.FromKilograms(extraKg).Pounds, "lb"));

    private static Figure Extra(PatchSummary patch, double baseKg, double extraKg, double extraShare, double share) => Worked.Sourced(
        $"seed.{patch.Id}.extra", $"{patch.Name}: kept apart for thin spots", QuantityKind.Mass, extraKg,
        "extra = base (1 - c) min(1/f - 1, 1)", "bound of twice the rate: UC IPM, K-State and UMN on crowded seedlings; the split is Seedfall's own", Sureness.Assumed,
        extraShare > 0.0 ? "Brings the bare part up to the new-lawn rate, never beyond twice this patch's rate: crowded seedlings damp off." : "None: the patch gets the full rate already.",
        new WorkingInput("base", "seed spread evenly", Mass.FromKilograms(baseKg).Pounds, "lb"),
        new WorkingInput("c", "living cover", patch.LivingCover.Value, ""),
        new WorkingInput("f", "share of the new-lawn rate", share, ""));

    private static Figure Live(PatchSummary patch, double livePerM2, double share) => Worked.Sourced(
        $"seed.{patch.Id}.live", $"{patch.Name}: live seeds on the ground", QuantityKind.CountPerArea, livePerM2,
        "n = N f", SeedTarget.Source, Sureness.Published, "Field survival is lower: expect plants from a third to a half of them.",
        new WorkingInput("N", "live seeds on bare ground", SeedTarget.LivePerSquareFoot / 144.0, "per sq in"),
        new WorkingInput("f", "share of the new-lawn rate", share, ""));

    private string ShareNote(double share) => work == SeedingWork.NewEstablishment
        ? "New establishment: the full new-lawn rate."
        : share >= 1.0 - 1e-9
            ? "Bare ground: the full new-lawn rate."
            : "Between the full rate on bare ground and the overseeding share from half cover up.";
}
