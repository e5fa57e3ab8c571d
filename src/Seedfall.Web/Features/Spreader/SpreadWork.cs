using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Spreader;

/// <summary>One thing the plan has to be spread on a lawn.</summary>
/// <param name="Name">As the page has it.</param>
/// <param name="Advice">What to know of this material in a spreader; null where nothing.</param>
public sealed record NamedJob(string Name, SpreadJob Job, string? Advice);

/// <summary>A lawn's spreading, or why there is none.</summary>
public sealed record SpreadLawn(PlannedLawn Planned, IReadOnlyList<NamedJob> Jobs);

/// <summary>The jobs of a lawn, from its plan.</summary>
internal sealed class SpreadWork(PlanWork plans, TimeProvider clock)
{
    public async Task<SpreadLawn> For(StoredLawn stored, CancellationToken cancellation)
    {
        var planned = await plans.Plan(stored, await plans.Kept(stored, null, cancellation), null, cancellation);
        return new(planned, planned.Plan is { } plan ? [.. Seed(stored, plan).Concat(Feeds(stored, plan))] : []);
    }

    private IEnumerable<NamedJob> Seed(StoredLawn stored, RecoveryPlan plan)
    {
        foreach (var seed in plan.Seed?.Patches ?? [])
        {
            var (patch, mix) = (plan.Patches.Single(p => p.Id == seed.PatchId), plan.Seed!.Mixes.Single(m => m.PatchIds.Contains(seed.PatchId)));
            var material = Flow(mix.Parts);
            var halves = seed.Bulk.Value - seed.ThinExtra.Value;
            if (halves > 0.0 && patch.Area.Value > 0.0)
            {
                var job = Job(stored, FormattableString.Invariant($"seed-{plan.Season}-{seed.PatchId}"), halves / patch.Area.Value, patch.Area.Value, material, string.Join(" + ", mix.Parts.Select(p => p.Name)));
                yield return new($"Seed on {patch.Name}", job with { Reserve = Mass.FromKilograms(seed.ThinExtra.Value) }, material == SpreadMaterial.CoarseSeed ? null
                    : "Bluegrass and fine fescue are so light that a rotary spreader throws them unevenly: a drop spreader, or two half-rate passes at right angles, as here (University of Nebraska).");
            }
        }
    }

    private IEnumerable<NamedJob> Feeds(StoredLawn stored, RecoveryPlan plan) => (plan.Feed?.Feedings ?? []).Where(f => f.Product.Value > 0.0 && f.ProductRate.Value > 0.0).Select(f => new NamedJob(
        $"{f.ProductName}, {FigureText.DateText(f.Date)}",
        Job(stored, FormattableString.Invariant($"{f.Id}-{plan.Season}"), f.ProductRate.Value, f.Product.Value / f.ProductRate.Value, SpreadMaterial.Granules, f.ProductName),
        string.Join(" ", Cautions.Fertilizer.Sentences)));

    private SpreadJob Job(StoredLawn stored, string id, double rateKgM2, double areaM2, SpreadMaterial material, string what) => new(
        id, stored.Row.Id, MassPerArea.FromKilogramsPerSquareMeter(rateKgM2), Area.FromSquareMeters(areaM2),
        new(material, what, DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime)) { Swath = stored.Lawn.Spreader?.Swath, Walk = stored.Lawn.Spreader?.WalkingSpeed });

    private static SpreadMaterial Flow(IReadOnlyList<MixPart> parts)
    {
        bool Coarse(MixPart p) => p.Species is GrassSpecies.PerennialRyegrass or GrassSpecies.TallFescue;
        return parts.All(Coarse) ? SpreadMaterial.CoarseSeed : parts.Any(Coarse) ? SpreadMaterial.MixedSeed : SpreadMaterial.FineSeed;
    }
}
