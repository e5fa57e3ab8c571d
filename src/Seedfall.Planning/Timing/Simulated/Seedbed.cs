using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Cover;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Timing;

/// <summary>One patch as simulated: ground, grasses as sown, watering, and its weight among the lawn's patches.</summary>
/// <param name="PatchId">The patch.</param>
/// <param name="AreaM2">Ground area.</param>
/// <param name="BareM2">Ground without living turf: what there is to fill.</param>
internal sealed record Seedbed(string PatchId, PatchConditions Ground, IReadOnlyList<SownGrass> Sown, CoverStand Stand, WateringRounds Rounds, double AreaM2, double BareM2)
{
    private const double LightExponent = 0.7;

    /// <summary>One seedbed per patch that gets seed.</summary>
    internal static IReadOnlyList<Seedbed> Of(
        Lawn lawn, Choices choices, IReadOnlyList<PatchSummary> patches, SeedPlan seed, WaterProof water, TradeTables tables) =>
        [.. lawn.Patches.Zip(patches)
            .Select(pair => (Patch: pair.First, Summary: pair.Second, Seed: seed.Patches.FirstOrDefault(s => s.PatchId == pair.First.Id)))
            .Where(p => p.Seed is not null && p.Summary.Area.Value > 0.0)
            .Select(p => One(lawn, choices, p.Patch, p.Summary, seed, p.Seed!, water, tables))];

    /// <summary>The same with seed and shoots that take longer or shorter.</summary>
    internal Seedbed At(double pace) => this with
    {
        Sown = [.. Sown.Select(s => s with { Traits = s.Traits.At(pace) })],
    };

    private static Seedbed One(
        Lawn lawn, Choices choices, Patch patch, PatchSummary summary, SeedPlan seed, PatchSeed row, WaterProof water, TradeTables tables)
    {
        var ground = SeedbedGround.Of(lawn, patch, summary, choices.Method);
        var perM2 = LiveOnBareM2(summary, row);
        var mix = seed.Mixes.FirstOrDefault(m => m.PatchIds.Contains(patch.Id))?.Parts ?? seed.Mix;
        var grasses = mix.Select(part => (Facts: tables.For(part.Species), Share: part.ShareByCount.Value)).ToList();
        return new Seedbed(
            patch.Id,
            ground,
            [.. grasses.Select(g => new SownGrass(SpeciesTraits.Germination(g.Facts), perM2 * g.Share))],
            new CoverStand(
                SpeciesTraits.Cover(tables.For(patch.Grasses[0])),
                Mixed([.. grasses.Select(g => (SpeciesTraits.Cover(g.Facts), g.Share))]),
                new GrowthConditions(1.0, Math.Pow(1.0 - ground.ShadeShare, LightExponent), 1.0)),
            choices.SeedbedRounds == 0 ? WateringRounds.RainOnly : SeedbedRounds.Of(water, patch.Id, lawn.Water),
            summary.Area.Value,
            summary.Area.Value * (1.0 - summary.LivingCover.Value));
    }

    /// <summary>Live seeds on the bare part: the patch's even rate and the extra kept for thin spots, which all goes there.</summary>
    private static double LiveOnBareM2(PatchSummary summary, PatchSeed row)
    {
        var bare = 1.0 - summary.LivingCover.Value;
        var even = row.Bulk.Value - row.ThinExtra.Value;
        return row.LivePerArea.Value * (bare > 0.0 && even > 0.0 ? 1.0 + (row.ThinExtra.Value / even / bare) : 1.0);
    }

    private static CoverTraits Mixed(IReadOnlyList<(CoverTraits Traits, double Share)> grasses) =>
        new(Mean(grasses, t => t.RateAt15), false, Mean(grasses, t => t.SeedlingM2));

    private static double Mean(IReadOnlyList<(CoverTraits Traits, double Share)> grasses, Func<CoverTraits, double> value) =>
        grasses.Sum(g => value(g.Traits) * g.Share) / grasses.Sum(g => g.Share);
}
