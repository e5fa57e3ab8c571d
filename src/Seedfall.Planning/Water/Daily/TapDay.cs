using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water;

/// <summary>One set's run as the tap gives it.</summary>
/// <param name="Start">When it begins.</param>
/// <param name="SetName">The set.</param>
/// <param name="PatchNames">Patches it waters.</param>
/// <param name="Minutes">Whole minutes in each position: what the thirstiest of its patches needs.</param>
/// <param name="Positions">Places it is moved through.</param>
/// <param name="Allowed">False where it runs outside the hours in which this lawn may be watered.</param>
public sealed record TapRun(TimeOnly Start, string SetName, IReadOnlyList<string> PatchNames, int Minutes, int Positions, bool Allowed)
{
    /// <summary>Minutes in all positions together.</summary>
    public int AllMinutes => Minutes * Positions;
}

/// <summary>A day's runs on one tap, one after another: the flow is never shared.</summary>
/// <param name="Day">The day.</param>
/// <param name="Forecast">True where its weather is forecast, false where it is only usual.</param>
/// <param name="Runs">In order of time.</param>
public sealed record TapDay(DateOnly Day, bool Forecast, IReadOnlyList<TapRun> Runs)
{
    internal static IReadOnlyList<TapDay> Week(Lawn lawn, IReadOnlyList<PatchWatering> patches)
    {
        var days = patches.Select(p => p.Plan?.Week.Count ?? 0).DefaultIfEmpty(0).Max();
        return [.. Enumerable.Range(0, days).Select(ahead => On(lawn, [.. patches.Where(p => p.Plan?.Week.Count > ahead)], ahead))];
    }

    private static TapDay On(Lawn lawn, IReadOnlyList<PatchWatering> patches, int ahead)
    {
        var outlook = patches[0].Plan!.Week[ahead];
        var open = WateringHours.On(lawn.Water, WateringHours.Week[((int)outlook.Day.DayOfWeek + 6) % 7]);
        var (runs, free) = (new List<TapRun>(), 0);
        var asked = from patch in patches
                    from round in patch.Plan!.Week[ahead].Timed
                    from run in round.Runs
                    select (patch.PatchName, round.Start, run.SetName, Minutes: (int)run.Minutes.Value, Set: patch.Sets.First(s => s.Name == run.SetName));
        foreach (var set in asked.GroupBy(a => (a.Start, a.SetName)).OrderBy(g => g.Key.Start))
        {
            var start = Math.Max(free, (int)set.Key.Start.ToTimeSpan().TotalMinutes);
            var (minutes, positions) = (set.Max(a => a.Minutes), set.First().Set.Positions);
            free = start + (minutes * positions);
            var allowed = open.Any(stretch => stretch.From <= start && free <= stretch.To);
            runs.Add(new TapRun(TimeOnly.MinValue.AddMinutes(start), set.Key.SetName, [.. set.Select(a => a.PatchName).Distinct()], minutes, positions, allowed));
        }

        return new TapDay(outlook.Day, outlook.Forecast, runs);
    }
}
