using Ical.Net.CalendarComponents;

namespace Seedfall.Exchange.Calendar;

/// <summary>The lawn's zone as a short VTIMEZONE: only the rules in force in the season.</summary>
internal static class ZoneComponent
{
    internal static VTimeZone Of(string zone, int year) => VTimeZone.FromDateTimeZone(zone, new DateTime(year - 1, 6, 1), includeHistoricalData: false);
}
