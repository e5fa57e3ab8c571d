using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Paper;
using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>Spray weather in words.</summary>
internal static class SprayWords
{
    public static string Of(SprayVerdict verdict) => verdict switch
    {
        SprayVerdict.Go => "Go",
        SprayVerdict.Wait => "Wait",
        SprayVerdict.Stop => "Stop",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "is no verdict"),
    };

    /// <summary>A sign beside the word, so that nothing hangs on color.</summary>
    public static string Sign(SprayVerdict verdict) => verdict switch { SprayVerdict.Go => "●", SprayVerdict.Wait => "◐", _ => "✕" };

    public static string Css(SprayVerdict verdict) => verdict switch { SprayVerdict.Go => "spray-go", SprayVerdict.Wait => "spray-wait", _ => "spray-stop" };

    public static string Hour(DateTimeOffset at, UnitSystem system) => at.Hour == 12 && system == UnitSystem.UsCustomary ? "noon" : Wording.Time(TimeOnly.FromDateTime(at.DateTime), system);

    /// <summary>For example <c>9 am to noon</c> or <c>7 to 9 am</c>.</summary>
    public static string Span(DateTimeOffset from, DateTimeOffset to, UnitSystem system)
    {
        var (start, end) = (Hour(from, system), to.Hour == 0 ? "midnight" : Hour(to, system));
        var half = end.Length > 3 ? end[^3..] : "";
        return half is " am" or " pm" && start.EndsWith(half, StringComparison.Ordinal) ? $"{start[..^3]} to {end}" : $"{start} to {end}";
    }

    public static string Stretch(SprayStretch stretch, UnitSystem system) =>
        $"{Wording.Day(DateOnly.FromDateTime(stretch.Start.DateTime))}, {Span(stretch.Start, stretch.End, system)}";

    public static string Wind(double ms, UnitSystem system) => $"{Round(ms, system)} {Unit(system)}";

    /// <summary>The wind at the nozzle through a run.</summary>
    public static string Wind(SprayRun run, UnitSystem system)
    {
        var known = run.Hours.Select(h => h.Moment.NozzleMs).OfType<double>().ToList();
        if (known.Count == 0)
        {
            return "not known";
        }

        var (low, high) = (Round(known.Min(), system), Round(known.Max(), system));
        return $"{(low == high ? high : $"{low} to {high}")} {Unit(system)}";
    }

    /// <summary>An instant for script to hold against the present.</summary>
    public static string Iso(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    /// <summary>The sentence at the top.</summary>
    public static string Lede(SprayView view, UnitSystem system)
    {
        if (view.Outlook is not { } outlook)
        {
            return "One thing is missing: a forecast by the hour.";
        }

        if (outlook.Longest is not { } longest)
        {
            return $"No stretch of {Hours(view.WorkHours)} is fit in the hours known ahead{(outlook.Against.Count > 0 ? $": {Against(outlook.Against[0])}" : "")}.";
        }

        var soonest = outlook.Stretches[0];
        var first = $"{(soonest == longest ? "The soonest and longest stretch" : "The soonest stretch")}: {Stretch(soonest, system)}, wind at the nozzle up to {Wind(soonest.HighestNozzle.MetersPerSecond, system)}.";
        return soonest == longest ? first : $"{first} The longest: {Stretch(longest, system)}.";
    }

    /// <summary>For example <c>12 hours stand against it by wind over the label</c>.</summary>
    public static string Against(SprayAgainst against) => $"{Hours(against.Hours)} of daylight, {SprayTexts.Of(against.Id).Short}";

    public static string Hours(int hours) => hours == 1 ? "1 hour" : string.Create(CultureInfo.InvariantCulture, $"{hours} hours");

    private static string Unit(UnitSystem system) => system == UnitSystem.UsCustomary ? "mph" : "m/s";

    private static string Round(double ms, UnitSystem system) =>
        (system == UnitSystem.UsCustomary ? new Speed(ms).MilesPerHour : ms).ToString("0.#", CultureInfo.InvariantCulture);
}
