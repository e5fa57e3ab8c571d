namespace Seedfall.Planning.Timing;

/// <summary>The seasons that might come: this season as far as it is known, then each past season in turn.</summary>
internal static class Ensemble
{
    /// <summary>Days in which this season's head start over a past one fades to a third.</summary>
    private const double FadeDays = 4.5;

    /// <summary>
    /// One member per past season. After the last known day the difference in soil temperature between this season and the
    /// member fades exponentially, what thermometers taught fades at its own pace; night temperatures are the member's own.
    /// </summary>
    internal static IReadOnlyList<SeasonWeather> Splice(IReadOnlyList<SeasonWeather> past, ThisSeason season, SeasonCalendar calendar) =>
        season.Known is { } known && season.KnownDays > 0 ? [.. past.Select(member => Join(member, known, season, calendar))] : past;

    private static SeasonWeather Join(SeasonWeather member, SeasonWeather known, ThisSeason season, SeasonCalendar calendar)
    {
        var days = season.KnownDays;
        var (soilC, tminC) = ((double[])member.SoilC.Clone(), (double[])member.TminC.Clone());
        Array.Copy(known.SoilC, soilC, days);
        Array.Copy(known.TminC, tminC, days);
        var offsetC = known.SoilC[days - 1] - season.BiasC(calendar.Date(days - 1)) - member.SoilC[days - 1];
        for (var i = days; i < soilC.Length; i++)
        {
            soilC[i] += (offsetC * Math.Exp((days - 1 - i) / FadeDays)) + season.BiasC(calendar.Date(i));
        }

        return new SeasonWeather(member.Year, soilC, tminC);
    }
}
