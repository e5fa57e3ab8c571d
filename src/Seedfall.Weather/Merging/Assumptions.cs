using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Merging;

/// <summary>What the files lack for a plan, and what will stand in for it.</summary>
internal static class Assumptions
{
    internal static IEnumerable<string> For(WeatherDay[] days, StationPosition? position)
    {
        yield return "Only days are used; the hours of a day are drawn from its highest and lowest temperature.";
        foreach (var line in Missing(days))
        {
            yield return line;
        }

        if (position is null)
        {
            yield return "Place of the station: the lawn's.";
        }
    }

    private static IEnumerable<string> Missing(WeatherDay[] days) =>
        new[]
        {
            Line(days, "sun", d => d.SolarMJ is not null, "estimated from the day's temperature range"),
            Line(days, "humidity", d => d.HumidityMeanPct is not null || d.HumidityMaxPct is not null, "dew point taken from the day's lowest temperature"),
            Line(days, "wind", d => d.WindMs is not null, "a light wind of 2 m/s at 2 m"),
            Line(days, "mean temperature", d => d.MeanC is not null, "the middle of the extremes"),
        }.OfType<string>();

    private static string? Line(WeatherDay[] days, string what, Func<WeatherDay, bool> has, string standIn)
    {
        var missing = days.Count(d => !has(d));
        var subject = char.ToUpperInvariant(what[0]) + what[1..];
        return missing == 0 ? null
            : missing == days.Length ? $"{subject} is not in the files: {standIn}."
            : FormattableString.Invariant($"{subject} is missing on {missing} of {days.Length} days: {standIn} there.");
    }
}
