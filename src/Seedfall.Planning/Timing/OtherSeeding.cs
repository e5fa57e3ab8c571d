using Seedfall.Engine.Simulation;

namespace Seedfall.Planning.Timing;

/// <summary>The seeding offered when autumn is refused, and its name.</summary>
internal sealed record OtherSeeding(SeedWindow Window, string Name)
{
    internal const string Dormant = "dormant seeding";

    internal const string Spring = "spring seeding";

    internal const string Source =
        "dormant seeding once soil is cold enough that nothing sprouts: below 40 degF (UMN Extension: soil below 50 degF, days of about 35 to 40 degF; below 40 degF common practice); spring seeding from soil above 50 degF (common practice)";

    private const double DormantC = 40.0 / 9.0;

    private const double SpringC = 10.0;

    /// <summary>First day searched for cold soil: October 10, April 10 in the south.</summary>
    private const int DormantFrom = 92;

    private const int DormantDays = 21;

    private const int SpringDays = 35;

    private const int SpringSearchDays = 130;

    private const int Unknown = -1;

    /// <summary>Mid November, mid May in the south; common practice.</summary>
    private const int UsualColdDay = 129;

    /// <summary>Dormant seeding where soil gets cold before the season ends in most years, else spring seeding.</summary>
    internal static OtherSeeding Of(PastSeasons past, SeasonCalendar calendar, double latitudeDeg)
    {
        if (past.Seasons.Count == 0)
        {
            return ByLatitude(calendar, latitudeDeg);
        }

        if (Spread.Middle(ChanceCurves.FallDays(past.Seasons, DormantC, DormantFrom)) is { } cold)
        {
            return new OtherSeeding(Days(calendar.Date(cold), DormantDays), Dormant);
        }

        var searched = SpringSearch(calendar.Year, calendar.South);
        var warm = Spread.Middle(past.Seasons.Select(season => Warming(past.Soil!, SpringSearch(season.Year, calendar.South))).Where(day => day != Unknown));
        return warm is { } days ? new OtherSeeding(Days(searched.AddDays(days), SpringDays), Spring) : ByLatitude(calendar, latitudeDeg);
    }

    private static DateOnly SpringSearch(int year, bool south) => south ? new DateOnly(year, 8, 1) : new DateOnly(year + 1, 2, 1);

    /// <summary>Days from the search's start to soil that stays above the spring threshold; -1 where the weather does not cover them.</summary>
    private static int? Warming(SoilTemperatureSeries soil, DateOnly start)
    {
        var from = IndexOf(soil, start);
        var last = from + SpringSearchDays - 1;
        if (last >= soil.Days.Count || soil.Days[from].Date != start || soil.Days[last].Date != start.AddDays(SpringSearchDays - 1))
        {
            return Unknown;
        }

        var cooling = soil.DailyMeanC[from..(last + 1)].Select(c => -c).ToArray();
        return SoilCrossing.FirstFallBelow(cooling, -SpringC, 0);
    }

    /// <summary>Index of the first day on or after a date.</summary>
    private static int IndexOf(SoilTemperatureSeries soil, DateOnly date)
    {
        var (low, high) = (0, soil.Days.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = soil.Days[middle].Date < date ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private static OtherSeeding ByLatitude(SeasonCalendar calendar, double latitudeDeg) => Math.Abs(latitudeDeg) >= 40.0
        ? new OtherSeeding(Days(calendar.Date(UsualColdDay), DormantDays), Dormant)
        : new OtherSeeding(Days(SpringSearch(calendar.Year, calendar.South).AddDays(40), SpringDays), Spring);

    private static SeedWindow Days(DateOnly opens, int days) => new(opens, opens.AddDays(days / 3), opens.AddDays(days), null);
}
