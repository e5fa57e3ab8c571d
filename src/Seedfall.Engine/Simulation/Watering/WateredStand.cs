using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Simulation.Plant;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Watering;

/// <summary>What became of the seed under one watering.</summary>
/// <param name="UpShare">Live seed that is up and alive at the end, 0 to 1; losses that do not come from water, heat or rot left out.</param>
/// <param name="EmergenceDays">Days until half the seed of the slowest grass is up; null where it is not by the end.</param>
public readonly record struct SeedUp(double UpShare, double? EmergenceDays);

/// <summary>Emergence under water given hour by hour, by the season's simulation.</summary>
public static class WateredStand
{
    /// <summary>One answer per season.</summary>
    /// <param name="place">Seasons of one place.</param>
    /// <param name="patch">The ground.</param>
    /// <param name="sown">The grasses; at least one.</param>
    /// <param name="irrigationMm">Water by season and hour from the season's first day, mm; at least as many hours as are run.</param>
    /// <param name="seedDownDay">Day of the season on which seed goes down.</param>
    /// <param name="days">Days of the season that are run.</param>
    public static IReadOnlyList<SeedUp> Run(
        PlaceSeasons place, PatchConditions patch, IReadOnlyList<SownGrass> sown, IReadOnlyList<double[]> irrigationMm, int seedDownDay, int days)
    {
        ArgumentNullException.ThrowIfNull(place);
        var simulation = new SeasonSimulation(patch, place.Constants.Column, [.. sown.Select(s => s.Traits)], days);
        var given = new Lanes[24 * days];
        var up = new List<SeedUp>(place.Seasons.Count);
        for (var first = 0; first < place.Seasons.Count; first += LaneMath.Width)
        {
            double At(int lane, int hour) => irrigationMm[Math.Min(first + lane, place.Seasons.Count - 1)][hour];
            for (var hour = 0; hour < given.Length; hour++)
            {
                given[hour] = Vector256.Create(At(0, hour), At(1, hour), At(2, hour), At(3, hour));
            }

            simulation.Run(place.Groups[first / LaneMath.Width], place.Climate, given, seedDownDay, days);
            for (var lane = 0; lane < Math.Min(LaneMath.Width, place.Seasons.Count - first); lane++)
            {
                up.Add(Of(simulation.Plants, lane, sown, patch.SeedDepthMm, StandSearch.SowingHour(seedDownDay), 24 * days));
            }
        }

        return up;
    }

    private static SeedUp Of(IReadOnlyList<PlantRecord> plants, int lane, IReadOnlyList<SownGrass> sown, double depthMm, int start, int end)
    {
        var (standing, all, slowest, allUp) = (0.0, 0.0, 0, true);
        for (var i = 0; i < plants.Count; i++)
        {
            all += sown[i].LiveSeedsPerM2;
            for (var share = 0; share < PlantRecord.Shares; share++)
            {
                var fate = plants[i].Fate(lane, share, start, end, depthMm);
                standing += fate.Emerged ? sown[i].LiveSeedsPerM2 / PlantRecord.Shares * plants[i].Survival(lane, fate.GerminatedHour, end) : 0.0;
                if (share == PlantRecord.Shares / 2)
                {
                    (slowest, allUp) = (Math.Max(slowest, fate.EmergedHour), allUp && fate.Emerged);
                }
            }
        }

        return new SeedUp(all > 0.0 ? Math.Min(1.0, standing / all) : 0.0, allUp ? (slowest - start) / 24.0 : null);
    }
}
