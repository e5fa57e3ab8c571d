using System.Globalization;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Paper;

/// <summary>Fixed words of the paper: dates, times, verdicts, kinds of work, sureness.</summary>
public static class Wording
{
    /// <summary>For example <c>Sun, Sep 6</c>.</summary>
    public static string Day(DateOnly date) => date.ToString("ddd, MMM d", CultureInfo.InvariantCulture);

    /// <summary>For example <c>Sep 6</c>.</summary>
    public static string Short(DateOnly date) => date.ToString("MMM d", CultureInfo.InvariantCulture);

    /// <summary>One day, or from first to last: <c>Sep 6 to 28</c>.</summary>
    public static string Span(DateOnly from, DateOnly to) =>
        from == to ? Day(from)
        : from.Month == to.Month && from.Year == to.Year ? $"{Short(from)} to {to.Day}"
        : $"{Short(from)} to {Short(to)}";

    /// <summary>For example <c>6:30 am</c>, or <c>06:30</c> beside metric units.</summary>
    public static string Time(TimeOnly time, UnitSystem system) => system == UnitSystem.Metric
        ? time.ToString("HH:mm", CultureInfo.InvariantCulture)
        : time.ToString(time.Minute == 0 ? "h tt" : "h:mm tt", CultureInfo.InvariantCulture).ToLowerInvariant();

    /// <summary>For example <c>1 h 30 min</c>.</summary>
    public static string Duration(int minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var m) => Invariant($"{m} min"),
        (var h, 0) => Invariant($"{h} h"),
        var (h, m) => Invariant($"{h} h {m} min"),
    };

    /// <summary>Which applications a rule of record keeping covers.</summary>
    public static string Scope(RecordScope scope) => scope switch
    {
        RecordScope.RestrictedUse => "Binds where the product is restricted-use; the label says so.",
        RecordScope.RestrictedUseForHire => "Binds where the product is restricted-use and somebody is paid to apply it.",
        RecordScope.ForHire => "Binds for every pesticide somebody is paid to apply.",
        RecordScope.GoodPractice => "No law read; a record is poorer without.",
        _ => throw new ArgumentOutOfRangeException(nameof(scope), scope, "is not a scope of record keeping"),
    };

    /// <summary>A place by its degrees, for example <c>42.3100° N, 84.1200° W</c>.</summary>
    public static string Degrees(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return Invariant($"{Math.Abs(place.LatitudeDeg):0.0000}° {(place.LatitudeDeg < 0.0 ? "S" : "N")}, {Math.Abs(place.LongitudeDeg):0.0000}° {(place.LongitudeDeg < 0.0 ? "W" : "E")}");
    }

    public static string Of(VerdictKind kind) => kind switch
    {
        VerdictKind.Recover => "Recover",
        VerdictKind.StartOver => "Start over",
        VerdictKind.Wait => "Wait",
        VerdictKind.CureFirst => "Cure first",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a verdict"),
    };

    public static string Of(TaskKind kind) => kind switch
    {
        TaskKind.Water => "Water",
        TaskKind.Mow => "Mow",
        TaskKind.Prepare => "Prepare",
        TaskKind.Seed => "Seed",
        TaskKind.Feed => "Feed",
        TaskKind.Spray => "Spray",
        TaskKind.Cover => "Cover",
        TaskKind.Look => "Look",
        TaskKind.Photo => "Photograph",
        TaskKind.Buy => "Buy",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of task"),
    };

    /// <summary>How sure a figure is, as the working says it.</summary>
    public static string Of(Sureness sureness) => sureness switch
    {
        Sureness.Measured => "measured here, or from the label or test in hand",
        Sureness.Published => "from a published source",
        Sureness.Computed => "arithmetic on other figures, as sure as they are",
        Sureness.CommonPractice => "common practice: check your label or handbook",
        Sureness.Assumed => "assumed, because nothing was entered",
        _ => throw new ArgumentOutOfRangeException(nameof(sureness), sureness, "is not a sureness"),
    };

    /// <summary>A mark beside a figure that wants checking; null for the others.</summary>
    public static string? Mark(Sureness sureness) => sureness switch
    {
        Sureness.CommonPractice => "common practice",
        Sureness.Assumed => "assumed",
        _ => null,
    };

    /// <summary>For example <c>78 %</c>.</summary>
    public static string Percent(double share) => Invariant($"{Math.Round(share * 100.0)} %");

    internal static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>Days of the week by name, Monday first.</summary>
    public static string Days(WeekDays days) =>
        days == WeekDays.All ? "Every day" : string.Join(", ", Enum.GetValues<WeekDays>().Where(d => int.PopCount((int)d) == 1 && days.HasFlag(d)));
}
