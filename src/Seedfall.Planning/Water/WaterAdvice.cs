using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>What to know about the watering.</summary>
internal static class WaterAdvice
{
    internal static IEnumerable<Advice> For(WaterScene scene, IReadOnlyList<PhaseFit> fits)
    {
        if (WateringHours.Limited(scene.Supply))
        {
            yield return new Advice(
                "water.permit",
                "Watering hours are limited here. Two to four rounds a day break most such rules: ask for a new-seed permit before buying seed. Towns differ: some grant 21 days, some two weeks after registering, some none in July and August.",
                "municipal rules of Fraser MI, Carol Stream IL, Maple Ridge BC, Montgomery IL and others",
                Sureness.Published);
        }

        if (fits.Any(fit => fit.Evening))
        {
            yield return new Advice(
                "water.evening",
                "The allowed hours push a light round into evening or night: leaves stay wet and disease is likelier. Watch for it on warm nights.",
                "WVU Extension: shallow and frequent, not in the evening",
                Sureness.Published);
        }

        if (fits.FirstOrDefault(fit => fit.Need.Phase.Id == "seedbed") is { } seedbed && Thirsty(scene, seedbed) is { } where)
        {
            yield return new Advice(
                "water.thirsty",
                $"{where} faster than the rounds planned can follow: cover the seed, and add a short round at midday on hot or windy days.",
                scene.Ground.Simulated ? "hour-by-hour simulation of past seasons: docs/science/watering.md" : "arithmetic on available water and evaporation",
                Sureness.Computed);
        }

        if (!scene.Timed && fits.Any(fit => fit.Need.Phase.Id == "seedbed" && fit.Need.RoundsPerDay > 2))
        {
            yield return new Advice(
                "water.timer",
                "Midday rounds need somebody at home or a timer on the tap.",
                "common practice, no source read",
                Sureness.CommonPractice);
        }
    }

    /// <summary>Where the seedbed dries too fast, as the start of a sentence; null where it does nowhere.</summary>
    private static string? Thirsty(WaterScene scene, PhaseFit fit)
    {
        if (scene.Ground.Simulated && !scene.Ground.Chosen.Any)
        {
            return fit.Need.Thirsty.Count == 0 ? null : $"{string.Join(", ", scene.Ground.Beds.Where(bed => fit.Need.Thirsty.Contains(bed.PatchId)).Select(bed => bed.Name))}: in more than one past season of 20 this ground dried";
        }

        var lossMm = scene.Ground.Phases.First(p => p.Phase.Id == "seedbed").Demand.EtoMm * SeedbedNeed.WetSoilFactor * scene.Ground.MulchFactor;
        var allowedMm = SeedbedNeed.AllowedLoss * AvailableWater.In(scene.Ground.Texture, SeedbedNeed.Layer).Millimeters;
        return lossMm / fit.Need.RoundsPerDay > allowedMm + 1e-9 ? "This soil dries" : null;
    }
}
