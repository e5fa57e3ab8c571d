namespace Seedfall.Planning.Timing;

/// <summary>Seeding windows by latitude, for a place whose past weather is not known.</summary>
internal static class CalendarWindow
{
    /// <summary>Source of the windows.</summary>
    internal const string Source =
        "extension windows by region: Purdue AY-3 (northern and southern Indiana and Illinois), UMN Extension, UNL 2021; Virginia Eastern Shore at second hand; latitude bands between them assumed";

    /// <summary>The window of a latitude as days of the season; mountains are colder than their latitude.</summary>
    internal static ChosenWindow For(double latitudeDeg)
    {
        var (opens, closes) = Math.Abs(latitudeDeg) switch
        {
            >= 46.0 => (new DateOnly(2001, 8, 5), new DateOnly(2001, 9, 5)),
            >= 40.3 => (new DateOnly(2001, 8, 15), new DateOnly(2001, 9, 15)),
            >= 38.0 => (new DateOnly(2001, 9, 1), new DateOnly(2001, 9, 30)),
            _ => (new DateOnly(2001, 9, 1), new DateOnly(2001, 10, 15)),
        };
        var calendar = new SeasonCalendar(2001, South: false);
        var (first, last) = (calendar.Index(opens), calendar.Index(closes));
        return new ChosenWindow(first, (first + last) / 2, last);
    }
}
