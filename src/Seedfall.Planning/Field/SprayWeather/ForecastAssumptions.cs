using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>What the forecast leaves out, each with what it changes.</summary>
internal static class ForecastAssumptions
{
    internal static IEnumerable<Assumption> Of(IReadOnlyList<SprayHour> hours)
    {
        if (hours.Count == 0)
        {
            yield break;
        }

        if (hours.Any(h => h.Hour.GustMs is null))
        {
            yield return new("assumed.forecast.gust", "The forecast gives no gusts, or not for every hour: where it gives none, none are judged.", "A fit hour may be gusty.", "Watch the wind on the spot for a minute before the first stroke.");
        }

        if (hours.Any(h => h.Hour.CloudPct is null))
        {
            yield return new("assumed.forecast.cloud", "The forecast gives no cloud, or not for every hour: such a sky is taken as clear.", "More hours with a low sun and still air become a stop than need be.", "Look up on the spot.");
        }

        if (hours.Any(h => h.Hour.HumidityPct is null))
        {
            yield return new("assumed.forecast.humidity", "The forecast gives no humidity, or not for every hour.", "Dew and Delta-T are not judged there.", "Feel the leaves on the spot.");
        }

        if (hours.Any(h => h.Hour.RainChancePct is not null || h.Hour.RainMm is not null))
        {
            yield return new("assumed.forecast.rain", FormattableString.Invariant($"An hour counts as rain from {HourMoments.RainMm:0.#} mm (0.01 in) or a chance of {HourMoments.RainChancePct:0} % on (common practice, no source read)."), "A lesser chance does not hold an hour back.", "Look at the sky and the radar before mixing.");
        }

        if (hours.Any(h => h.Hour.Drawn))
        {
            yield return new("assumed.forecast.drawn", "Some hours are drawn between values further apart.", "Wind and showers of single hours are not in them.", "Bring a fresh forecast nearer the day.");
        }
    }
}
