using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Merging;

/// <summary>History and report out of the checked days.</summary>
internal static class ReportBuilder
{
    internal static WeatherReadResult Build(
        StationDraft station, IReadOnlyList<FileDraft> drafts, IReadOnlyList<WeatherFile> entries, GapFill.Result filled, List<string> notes, WeatherReadOptions options)
    {
        var days = filled.Days;
        var place = StationPlace.Of(station, options.Lawn);
        notes.AddRange(place.Notes);
        var name = station.Name ?? station.Id ?? drafts[0].Name;
        var assumptions = Assumptions.For(days, place.Position).ToList();
        var filledCount = days.Count(d => d.Quality == DayQuality.Interpolated);
        if (filled.Gaps.Exists(g => !g.Filled))
        {
            notes.Add($"Gaps longer than {GapFill.LongestFilledDays} days stay empty; a season that needs those days drops out of the ensemble.");
        }

        var report = new WeatherReport(
            name, place.Position, days[0].Date, days[^1].Date, days.Length, filledCount,
            entries, Years(days), filled.Gaps, [.. Columns(days, drafts)], assumptions, notes);
        var sources = entries.Select(f => FormattableString.Invariant($"{f.Name}: {f.Format}, {f.Records} records, SHA-256 {f.Sha256}")).ToList();
        return WeatherReadResult.Read(new WeatherHistory(place.Place, name, days, sources, [.. assumptions, .. notes]), report);
    }

    private static List<WeatherYear> Years(WeatherDay[] days)
    {
        var byYear = days.ToLookup(d => d.Date.Year);
        return [.. Enumerable.Range(days[0].Date.Year, days[^1].Date.Year - days[0].Date.Year + 1).Select(year => Year(year, byYear[year]))];
    }

    private static WeatherYear Year(int year, IEnumerable<WeatherDay> days)
    {
        var (count, filled, longest) = (0, 0, 0);
        var (next, end) = (new DateOnly(year, 1, 1).DayNumber, new DateOnly(year, 12, 31).DayNumber + 1);
        foreach (var day in days)
        {
            longest = Math.Max(longest, day.Date.DayNumber - next);
            next = day.Date.DayNumber + 1;
            count++;
            filled += day.Quality == DayQuality.Interpolated ? 1 : 0;
        }

        longest = Math.Max(longest, end - next);
        return new WeatherYear(year, count, filled, (DateTime.IsLeapYear(year) ? 366 : 365) - count, longest);
    }

    private static IEnumerable<WeatherColumn> Columns(WeatherDay[] days, IReadOnlyList<FileDraft> drafts)
    {
        for (var i = 0; i < Elements.Count; i++)
        {
            var e = (Element)i;
            var count = days.Count(d => Value(d, e) is not null);
            var units = drafts.Where(d => d.Units.ContainsKey(e)).Select(d => d.Units[e]).Distinct().ToList();
            if (count > 0)
            {
                yield return units.Count == 0
                    ? new WeatherColumn(Elements.Name(e), Elements.Unit(e), "made from hours", count)
                    : new WeatherColumn(Elements.Name(e), string.Join(" and ", units.Select(u => u.Unit).Distinct()), string.Join("; ", units.Select(u => u.Source).Distinct()), count);
            }
        }
    }

    private static double? Value(WeatherDay d, Element e) => e switch
    {
        Element.TmaxC => d.TmaxC,
        Element.TminC => d.TminC,
        Element.MeanC => d.MeanC,
        Element.RainMm => d.RainMm,
        Element.SolarMJ => d.SolarMJ,
        Element.HumidityMaxPct => d.HumidityMaxPct,
        Element.HumidityMinPct => d.HumidityMinPct,
        Element.HumidityMeanPct => d.HumidityMeanPct,
        Element.WindMs => d.WindMs,
        Element.Soil5CmC => d.Soil5CmC,
        _ => d.SoilMoisture5Cm,
    };
}
