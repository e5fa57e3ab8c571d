using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground.Door;

/// <summary>The whole supply: taps and what stands behind them, sprinkler sets, allowed hours, timers, the bill.</summary>
internal static class WaterRules
{
    private const int MostPrograms = 100;
    private const int MostStarts = 288;
    private const double MostHouseholdLiters = 1_000_000.0;

    internal static void Check(Lawn lawn, Findings found)
    {
        if (lawn.Water is not { } water)
        {
            return;
        }

        TapRules.Check(water, found);
        WellRules.Check(water, found);
        SetRules.Check(lawn, water, found);
        for (var i = 0; i < water.Allowed.Count; i++)
        {
            Window(water.Allowed[i], $"water.allowed[{i}]", found);
        }

        Timers(water, found);
        MeterRules.Check(water.Meter, found);
        found.Range("water.householdPerMonth", water.HouseholdPerMonth?.Liters, 0.0, MostHouseholdLiters, "L");
    }

    private static void Timers(WaterSupply water, Findings found)
    {
        found.Once([.. water.Timers.Select(t => t.Name)], i => $"water.timers[{i}].name", "timer name");
        for (var i = 0; i < water.Timers.Count; i++)
        {
            found.Words($"water.timers[{i}].name", water.Timers[i].Name, 60);
            found.Range($"water.timers[{i}].programs", water.Timers[i].Programs, 1.0, MostPrograms, "");
            found.Range($"water.timers[{i}].startsPerDay", water.Timers[i].StartsPerDay, 1.0, MostStarts, "");
        }

        if (water is { Timer: false, Timers.Count: > 0 })
        {
            found.Add("water.timer", "no, while timers are described", "yes, or no timer described");
        }
    }

    private static void Window(WateringWindow window, string path, Findings found)
    {
        if (window.Days == WeekDays.None || (window.Days & ~WeekDays.All) != 0)
        {
            found.Add($"{path}.days", "no day", "at least one day of the week");
        }

        Hours(window.From, window.To, path, found);
    }

    /// <summary>Hours that begin and end on one day.</summary>
    internal static void Hours(TimeOnly from, TimeOnly to, string path, Findings found)
    {
        if (to <= from)
        {
            found.Add(path, FormattableString.Invariant($"{from:HH\\:mm} to {to:HH\\:mm}"), "an end after the start on the same day; hours over midnight are two windows");
        }
    }
}
