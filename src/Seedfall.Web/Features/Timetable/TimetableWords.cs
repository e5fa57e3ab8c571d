using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Paper;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Web.Features.Timetable;

/// <summary>Timetables in words.</summary>
internal static class TimetableWords
{
    private const int MinutesPerDay = 24 * 60;

    public static string Sentence(TimetableProof proof) => proof switch
    {
        TimetableProof.Found { Trips: 0 } found => $"Every run has its place: {Count(found.Runs.Count)}, no hand needed.",
        TimetableProof.Found found => $"Every run has its place: {Count(found.Runs.Count)}, hands needed {(found.Trips == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{found.Trips} times"))}.",
        TimetableProof.Impossible impossible => $"It cannot be: {impossible.Reason}",
        TimetableProof.NotProven open => $"Not proven either way: {open.Reason}",
        _ => throw new ArgumentOutOfRangeException(nameof(proof), proof.GetType().Name, "is not an outcome"),
    };

    public static IReadOnlyList<UnservedSet> Unserved(TimetableProof proof) => proof switch
    {
        TimetableProof.Impossible impossible => impossible.Unserved,
        TimetableProof.NotProven open => open.Unserved,
        _ => [],
    };

    /// <summary>A minute as a time, with its weekday where the minutes run through a week.</summary>
    public static string When(int minute, bool week, UnitSystem system)
    {
        var time = Wording.Time(new TimeOnly(minute % MinutesPerDay / 60, minute % 60), system);
        return week ? $"{(DayOfWeek)(((minute / MinutesPerDay) + 1) % 7)}, {time}" : time;
    }

    public static string Run(TimetableRun run) => string.Create(
        CultureInfo.InvariantCulture, $"{run.Set}{(run.Position > 1 ? $", position {run.Position}" : "")}{(run.Cycle > 1 ? $", cycle {run.Cycle}" : "")}");

    /// <summary>A phase by its usual name, for a lawn whose season has no dates.</summary>
    public static string Phase(string id) => id switch
    {
        "soak" => "Soak",
        "seedbed" => "Seedbed to emergence",
        "seedlings" => "Seedlings",
        "weaning" => "Weaning",
        "deep" => "Deep and seldom",
        _ => id,
    };

    private static string Count(int runs) => runs == 1 ? "one run" : string.Create(CultureInfo.InvariantCulture, $"{runs} runs");
}
