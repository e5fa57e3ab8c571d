using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>What the air takes on a thirsty day of a phase.</summary>
/// <param name="EtoMm">Reference evapotranspiration that four days in five do not exceed, mm/d.</param>
/// <param name="Working">How it is known.</param>
/// <param name="Assumed">True where no past day of the phase is known.</param>
internal sealed record Demand(double EtoMm, Working Working, bool Assumed)
{
    /// <summary>Share of days that need no more.</summary>
    private const double DryShare = 0.8;

    /// <summary>Reference evapotranspiration of a dry early-autumn day where none can be computed: 0.18 in.</summary>
    private const double UnknownMm = 4.6;

    /// <summary>Pools the phase's calendar days over all years before the season.</summary>
    internal static Demand Of(WeatherHistory weather, Place place, Phase phase)
    {
        var daily = PastDays(weather, phase).Select(day => DailyEvapotranspiration.For(day, place)).ToArray();
        if (daily.Length == 0)
        {
            return new Demand(UnknownMm, new Working("ETo assumed", [], "assumed for a dry day of early autumn: no past day of these dates is known", Sureness.Assumed), true);
        }

        var sorted = daily.Select(d => d.Eto.Millimeters).Order().ToArray();
        var hargreaves = daily.Count(d => d.Method == EvapotranspirationMethod.Hargreaves);
        return new Demand(Spread.Percentile(sorted, DryShare), new Working(
            "80th percentile of daily reference evapotranspiration over these dates of past years",
            [new("n", "past days", daily.Length, "d")],
            hargreaves == daily.Length ? "Hargreaves and Samani 1985, FAO-56 eq. 52, from temperatures alone" : "ASCE standardized equation and FAO-56, from this place's weather",
            Sureness.Published,
            "One day in five asks for more: add a round when the forecast is hot, dry or windy."), false);
    }

    private static IEnumerable<WeatherDay> PastDays(WeatherHistory weather, Phase phase)
    {
        foreach (var year in weather.Years.Where(y => y < phase.From.Year))
        {
            var shift = year - phase.From.Year;
            for (var (date, last) = (phase.From.AddYears(shift), phase.To.AddYears(shift)); date <= last; date = date.AddDays(1))
            {
                if (weather.Day(date) is { } day)
                {
                    yield return day;
                }
            }
        }
    }
}
