using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Timing;

/// <summary>The pace of germination as first greens show it; null where none was seen or the season's weather does not reach them.</summary>
/// <param name="Pace">Factor on hydrothermal time.</param>
/// <param name="Greens">Each first green beside what was computed.</param>
/// <param name="LeftOut">First greens that could not be used, each with the reason.</param>
internal sealed record PaceLearned(EmergencePace? Pace, IReadOnlyList<GreenLearned> Greens, IReadOnlyList<string> LeftOut)
{
    internal static PaceLearned Nothing { get; } = new(null, [], []);

    /// <summary>Learns from the first greens seen after a seed-down day.</summary>
    /// <param name="scene">The season.</param>
    /// <param name="seedbeds">Patches as sown and watered.</param>
    /// <param name="seasons">Members, which share their days up to now.</param>
    /// <param name="firstDay">Day of the calendar of the first seed-down day tried.</param>
    /// <param name="seedDown">Day of the calendar the seed went down.</param>
    internal static PaceLearned Of(SeasonScene scene, IReadOnlyList<Seedbed> seedbeds, PlaceSeasons seasons, int firstDay, int seedDown)
    {
        var down = scene.Calendar.Date(seedDown);
        var entries = scene.Log.During<LogEntry.FirstGreen>(scene.Calendar.First, scene.Calendar.Last).DistinctBy(entry => entry.PatchId).ToList();
        var seen = new List<(Seedbed Bed, DateOnly Day, double Days, IReadOnlyList<double?> Simulated)>();
        var leftOut = new List<string>();
        foreach (var entry in entries)
        {
            var bed = entry.PatchId is null ? seedbeds.MaxBy(b => b.BareM2) : seedbeds.FirstOrDefault(b => b.PatchId == entry.PatchId);
            if (Problem(scene, entry, down, bed) is { } problem)
            {
                leftOut.Add($"first green of {entry.Day:yyyy-MM-dd}: {problem}");
                continue;
            }

            var days = Math.Max(0.0, (entry.At.DateTime - down.ToDateTime(new TimeOnly(13, 0))).TotalDays);
            seen.Add((bed!, entry.Day, days, EmergencePace.FirstGreenDays(
                seasons, bed!.Ground, bed.Sown, bed.Rounds, SimulatedStands.SpinUpDays, SimulatedStands.SpinUpDays + seedDown - firstDay)));
        }

        if (seen.Count == 0)
        {
            return new PaceLearned(null, [], leftOut);
        }

        var pace = EmergencePace.From([.. seen.Select(s => (s.Days, s.Simulated))]);
        return new PaceLearned(pace, [.. seen.Select((s, i) => new GreenLearned(s.Bed.PatchId, s.Day, After(down, pace.UncorrectedDays[i]), After(down, pace.CorrectedDays[i])))], leftOut);
    }

    private static string? Problem(SeasonScene scene, LogEntry entry, DateOnly down, Seedbed? bed) =>
        bed is null ? "nothing was sown on that patch"
        : entry.Day < down ? "it lies before seed-down"
        : scene.Calendar.Index(entry.Day) > scene.Season.KnownDays + 1 ? "this season's weather does not reach that day"
        : null;

    private static DateOnly? After(DateOnly down, double? days) => days is { } d ? down.AddDays((int)Math.Floor((13.0 / 24.0) + d)) : null;
}
