using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Merging;

/// <summary>What looks odd in the days but is kept: stuck sensors, spikes, a calendar without leap days.</summary>
internal static class Oddities
{
    /// <summary>Equal values in a row beyond which a sensor is taken for stuck, where values have tenths.</summary>
    private const int StuckDays = 6;

    /// <summary>The same where values are whole degrees and repeat by chance.</summary>
    private const int StuckWholeDays = 9;

    /// <summary>A day this far above or below both neighbors, degC.</summary>
    private const double SpikeC = 25.0;

    /// <summary>Notes of one kind that are written out.</summary>
    private const int MostAlike = 5;

    internal static IEnumerable<string> Find(WeatherDay[] days, IReadOnlyList<FileDraft> files)
    {
        var stuck = days.All(d => d.Quality != DayQuality.Measured || d.TmaxC == Math.Round(d.TmaxC)) ? StuckWholeDays : StuckDays;
        return Few(Stuck(days, "highest temperature", d => d.TmaxC, stuck))
            .Concat(Few(Stuck(days, "lowest temperature", d => d.TminC, stuck)))
            .Concat(Few(Stuck(days, "rain", d => d.RainMm > 0 ? d.RainMm : null, StuckDays)))
            .Concat(Few(Stuck(days, "sun", d => d.SolarMJ > 0 ? d.SolarMJ : null, StuckDays)))
            .Concat(Few(Stuck(days, "mean humidity", d => d.HumidityMeanPct < 99.5 ? d.HumidityMeanPct : null, StuckDays)))
            .Concat(Few(Stuck(days, "wind", d => d.WindMs, StuckDays)))
            .Concat(Few(Stuck(days, "soil temperature at 5 cm", d => Math.Abs(d.Soil5CmC ?? 0.0) > 1.0 ? d.Soil5CmC : null, StuckDays + 1)))
            .Concat(Few(Spikes(days)))
            .Concat(LeapDays(days))
            .Concat(MixedFormats(files));
    }

    /// <summary>The first of many notes alike, and how many more there are.</summary>
    private static IEnumerable<string> Few(IEnumerable<string> notes)
    {
        var all = notes.ToList();
        return all.Count <= MostAlike ? all : [.. all.Take(MostAlike), FormattableString.Invariant($"And {all.Count - MostAlike} more like the last.")];
    }

    private static IEnumerable<string> Stuck(WeatherDay[] days, string name, Func<WeatherDay, double?> value, int longest)
    {
        for (var i = 0; i < days.Length;)
        {
            var end = i + 1;
            while (end < days.Length && value(days[i]) is { } v && value(days[end]) == v && Follows(days[end - 1], days[end]) && IsRead(days[end]))
            {
                end++;
            }

            if (end - i >= longest)
            {
                yield return FormattableString.Invariant(
                    $"The {name} is {value(days[i]):0.##} on {end - i} days from {days[i].Date:yyyy-MM-dd}: the sensor may have been stuck. Kept.");
            }

            i = end;
        }
    }

    private static IEnumerable<string> Spikes(WeatherDay[] days)
    {
        for (var i = 1; i + 1 < days.Length; i++)
        {
            if (Follows(days[i - 1], days[i]) && Follows(days[i], days[i + 1])
                && (IsSpike(days[i - 1].TmaxC, days[i].TmaxC, days[i + 1].TmaxC) || IsSpike(days[i - 1].TminC, days[i].TminC, days[i + 1].TminC)))
            {
                yield return FormattableString.Invariant(
                    $"{days[i].Date:yyyy-MM-dd}: {days[i].TminC:0.#} to {days[i].TmaxC:0.#} degC stands more than {SpikeC:0} degC apart from both days beside it. Kept.");
            }
        }
    }

    private static bool IsSpike(double before, double value, double after) =>
        Math.Min(value - before, value - after) > SpikeC || Math.Max(value - before, value - after) < -SpikeC;

    private static bool Follows(WeatherDay a, WeatherDay b) => b.Date.DayNumber == a.Date.DayNumber + 1;

    private static bool IsRead(WeatherDay day) => day.Quality == DayQuality.Measured;

    private static IEnumerable<string> LeapDays(WeatherDay[] days)
    {
        var leapDays = days.Where((d, i) => d.Date is { Month: 2, Day: 28 } && DateTime.IsLeapYear(d.Date.Year) && i + 1 < days.Length)
            .Select(d => (d.Date.Year, d.Date.DayNumber)).ToList();
        var filled = days.Where(d => d.Date is { Month: 2, Day: 29 } && !IsRead(d)).Select(d => d.Date.Year).ToHashSet();
        if (leapDays.Count >= 2 && leapDays.TrueForAll(d => filled.Contains(d.Year)))
        {
            yield return FormattableString.Invariant($"No February 29 in any of {leapDays.Count} leap years: the file keeps a calendar without leap days. Filled like any gap.");
        }
    }

    private static IEnumerable<string> MixedFormats(IReadOnlyList<FileDraft> files)
    {
        var formats = files.Select(f => f.Format).Distinct().ToList();
        if (formats.Count > 1)
        {
            yield return $"Files of several formats were joined: {string.Join(", ", formats)}.";
        }

        if (files.Count > 1 && files.Any(f => f.Station.Id is null && f.Station.LatitudeDeg is null))
        {
            yield return "Not every file names its station or place; they were taken to be of one place.";
        }
    }
}
