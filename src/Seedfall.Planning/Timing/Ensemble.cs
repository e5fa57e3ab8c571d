namespace Seedfall.Planning.Timing;

/// <summary>The seasons that might come: this season as far as it is known, then each past season in turn.</summary>
internal static class Ensemble
{
    /// <summary>Days in which this season's head start over a past one fades to a third.</summary>
    private const double FadeDays = 4.5;

    /// <summary>
    /// One member per past season. After the last known day the difference in soil temperature between this season and the
    /// member fades exponentially; night temperatures are the member's own.
    /// </summary>
    internal static IReadOnlyList<SeasonWeather> Splice(IReadOnlyList<SeasonWeather> past, ThisSeason season) =>
        season.Known is { } known && season.KnownDays > 0 ? [.. past.Select(member => Join(member, known, season.KnownDays))] : past;

    private static SeasonWeather Join(SeasonWeather member, SeasonWeather known, int days)
    {
        var (soilC, tminC) = ((double[])member.SoilC.Clone(), (double[])member.TminC.Clone());
        Array.Copy(known.SoilC, soilC, days);
        Array.Copy(known.TminC, tminC, days);
        var offsetC = known.SoilC[days - 1] - member.SoilC[days - 1];
        for (var i = days; i < soilC.Length; i++)
        {
            soilC[i] += offsetC * Math.Exp((days - 1 - i) / FadeDays);
        }

        return new SeasonWeather(member.Year, soilC, tminC);
    }
}
