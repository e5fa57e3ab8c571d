using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>Which measured soil temperatures a validation scores.</summary>
public static class MeasuredSoil
{
    /// <summary>Days of exactly one value, away from freezing, from which a probe counts as stuck.</summary>
    public const int StuckDays = 7;

    private const double LowestC = -30.0;
    private const double HighestC = 50.0;

    /// <summary>True for August to November (February to May in the south) with a believable value.</summary>
    public static bool Scored(WeatherDay day, double latitudeDeg) =>
        SeasonAngle.Month(day.Date, latitudeDeg) is >= 8 and <= 11 && day.Soil5CmC is >= LowestC and <= HighestC;

    /// <summary>For each day whether it is scored: in season, believable, and not part of a run of a stuck probe.</summary>
    public static bool[] ScoredDays(IReadOnlyList<WeatherDay> days, double latitudeDeg, out int stuck)
    {
        var scored = new bool[days.Count];
        stuck = 0;
        var runStart = 0;
        for (var d = 0; d < days.Count; d++)
        {
            if (days[d].Soil5CmC is null || days[d].Soil5CmC != days[runStart].Soil5CmC)
            {
                runStart = d;
            }

            scored[d] = Scored(days[d], latitudeDeg);
            if (d - runStart + 1 >= StuckDays && Math.Abs(days[d].Soil5CmC!.Value) > 1.0)
            {
                stuck += Clear(scored, d - runStart + 1 == StuckDays ? runStart : d, d);
            }
        }

        return scored;
    }

    private static int Clear(bool[] scored, int first, int last)
    {
        var cleared = 0;
        for (var d = first; d <= last; d++)
        {
            cleared += scored[d] ? 1 : 0;
            scored[d] = false;
        }

        return cleared;
    }
}
