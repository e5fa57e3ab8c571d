using System.Runtime.Intrinsics;
using Seedfall.Engine.Simulation.Seedbed;

namespace Seedfall.Checks.Analytic.Water;

/// <summary>The drying experiment: 30 mm of rain, twelve hours without evaporation, then days of 4.5 mm between 06 and 18 h.</summary>
internal static class DryingSeedbed
{
    internal const double DailyMm = 4.5;

    internal static readonly SeedbedSurface Bare = new(0.0, 40.0, 0.0);

    internal static SeedbedState Wetted(SeedbedSoil soil)
    {
        var state = new SeedbedState(soil.Hydraulics.FieldCapacity);
        for (var hour = 0; hour < 15; hour++)
        {
            SeedbedWater.Step(soil, state, Bare, Hour(hour < 3 ? 10.0 : 0.0, 0.0, 0.0));
        }

        return state;
    }

    /// <summary>The same hour in all four lanes, without roots.</summary>
    internal static SeedbedHour Hour(double rainMm, double irrigationMm, double demandMm) =>
        new(Vector256.Create(rainMm), Vector256.Create(irrigationMm), Vector256.Create(demandMm), Vector256<double>.Zero, 0.0);

    /// <summary>Evaporative demand of an hour of the day, mm: half a sine from 06 to 18 h.</summary>
    internal static double DemandMm(int hourOfDay) => hourOfDay is < 6 or >= 18
        ? 0.0
        : 0.5 * DailyMm * (Math.Cos(Math.PI * (hourOfDay - 6) / 12.0) - Math.Cos(Math.PI * (hourOfDay - 5) / 12.0));

    internal static double[] CumulativeEvaporationMm(SeedbedSoil soil, int days)
    {
        var state = Wetted(soil);
        var byDay = new double[days];
        var total = 0.0;
        for (var hour = 0; hour < 24 * days; hour++)
        {
            total += SeedbedWater.Step(soil, state, Bare, Hour(0.0, 0.0, DemandMm(hour % 24))).EvaporationMm.GetElement(0);
            byDay[hour / 24] = total;
        }

        return byDay;
    }

    /// <summary>Hours of twenty days in which the top layer is drier than -0.5 MPa when 4.5 mm a day come in equal rounds at the given hours.</summary>
    internal static int DryTopHours(SeedbedSoil soil, params int[] rounds)
    {
        var state = Wetted(soil);
        var dry = 0;
        for (var hour = 0; hour < 480; hour++)
        {
            var irrigation = rounds.Contains(hour % 24) ? DailyMm / rounds.Length : 0.0;
            SeedbedWater.Step(soil, state, Bare, Hour(0.0, irrigation, DemandMm(hour % 24)));
            dry += soil.PotentialMPa(state.WaterContent[0].GetElement(0)) < -0.5 ? 1 : 0;
        }

        return dry;
    }
}
