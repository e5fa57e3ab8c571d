using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Cover;
using Seedfall.Engine.Simulation.Plant;

namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>The grass on a patch for the cover forecast.</summary>
/// <param name="Turf">The turf that lives.</param>
/// <param name="Seedlings">The grass sown, the mix's mean.</param>
/// <param name="Conditions">Nitrogen, light, water.</param>
public sealed record CoverStand(CoverTraits Turf, CoverTraits Seedlings, GrowthConditions Conditions);

/// <summary>Living cover after one seed-down date in every season.</summary>
public static class CoverEnsemble
{
    /// <summary>Cover at the end of each day from seed-down on, 0 to 1: every season with each of the variants.</summary>
    /// <param name="place">Seasons of one place.</param>
    /// <param name="patch">The ground.</param>
    /// <param name="sown">The grasses as sown; at least one.</param>
    /// <param name="watering">Rounds from the first watered day on.</param>
    /// <param name="firstWateredDay">Index of a day.</param>
    /// <param name="seedDownDay">Index of the seed-down day.</param>
    /// <param name="stand">How what lives and what comes up cover ground.</param>
    /// <param name="rule">Field survival.</param>
    /// <param name="variants">What each season is grown with.</param>
    public static CoverMembers Run(
        PlaceSeasons place,
        PatchConditions patch,
        IReadOnlyList<SownGrass> sown,
        WateringRounds watering,
        int firstWateredDay,
        int seedDownDay,
        CoverStand stand,
        StandRule rule,
        CoverVariants variants)
    {
        var simulation = new SeasonSimulation(patch, place.Constants.Column, [.. sown.Select(s => s.Traits)], Math.Max(1, place.Days));
        var each = variants.All();
        var cover = new double[place.Seasons.Count * each.Count][];
        var prior = new double[cover.Length];
        var emerged = new double[place.Days];
        for (var i = 0; i < place.Seasons.Count; i++)
        {
            var lane = i % LaneMath.Width;
            if (lane == 0)
            {
                simulation.Run(place.Groups[i / LaneMath.Width], place.Climate, watering, firstWateredDay, 0, place.Days);
            }

            Emerged(simulation.Plants, lane, sown, seedDownDay, place.Days, patch.SeedDepthMm, rule, emerged);
            for (var v = 0; v < each.Count; v++)
            {
                var member = (i * each.Count) + v;
                var start = Math.Clamp(patch.TurfShare + each[v].StartShift, 0.0, 1.0);
                cover[member] = Grow(place.Seasons[i], start, seedDownDay, stand, each[v].Vigor, each[v].Survival, emerged);
                prior[member] = each[v].Weight / place.Seasons.Count;
            }
        }

        return new CoverMembers(cover, prior);
    }

    /// <summary>Seedlings that come up on each day and live, per m2.</summary>
    private static void Emerged(
        IReadOnlyList<PlantRecord> plants, int lane, IReadOnlyList<SownGrass> sown, int seedDownDay, int days, double depthMm, StandRule rule, double[] perM2)
    {
        Array.Clear(perM2);
        var start = StandSearch.SowingHour(seedDownDay);
        for (var i = 0; i < plants.Count; i++)
        {
            var perShare = sown[i].LiveSeedsPerM2 * rule.FieldSurvival / PlantRecord.Shares;
            for (var share = 0; share < PlantRecord.Shares; share++)
            {
                var fate = plants[i].Fate(lane, share, start, 24 * days, depthMm);
                if (fate.Emerged)
                {
                    perM2[Math.Min(days - 1, fate.EmergedHour / 24)] += perShare * plants[i].Survival(lane, fate.GerminatedHour, 24 * days);
                }
            }
        }
    }

    private static double[] Grow(SeasonForcing season, double turfShare, int seedDownDay, CoverStand stand, double vigor, double survival, double[] emerged)
    {
        var growth = new CoverGrowth(turfShare, stand.Turf, stand.Seedlings);
        var cover = new double[season.Days - seedDownDay];
        for (var day = seedDownDay; day < season.Days; day++)
        {
            growth.Day(season.MeanAirC[day], survival * emerged[day], 0.0, stand.Conditions, vigor);
            cover[day - seedDownDay] = growth.Total;
        }

        return cover;
    }
}
