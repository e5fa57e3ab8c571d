using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>Water and money of the whole season.</summary>
internal static class SeasonWater
{
    /// <summary>Liters over all phases: the median over past seasons with each season's rain taken off, or a rainless season where none is known.</summary>
    internal static Figure Volume(IReadOnlyList<PhaseFit> fits, WeatherHistory weather)
    {
        var seasons = weather.Years.Where(year => year < fits[0].Need.Phase.From.Year)
            .Select(year => Liters(fits, weather, year)).OfType<double>().Order().ToArray();
        var dryLiters = fits.Sum(fit => Sprinklings(fit) * fit.LitersPerRound);
        var known = seasons.Length > 0;
        return new Figure("water.season.volume", "Water for the season", QuantityKind.Volume, known ? Spread.Percentile(seasons, 0.5) : dryLiters, new Working(
            known
                ? "median over past seasons of the sum over phases of V r, rounds r cut by that season's rain"
                : "sum over phases of V r, no rain taken off",
            [
                new("V", "water of one seedbed round", Gallons(fits.FirstOrDefault(f => f.Need.Phase.Id == "seedbed")?.LitersPerRound ?? 0.0), "gal"),
                new("dry", "a season without rain", Gallons(dryLiters), "gal"),
                new("n", "past seasons", seasons.Length, ""),
            ],
            "1 in on 1,000 sq ft is 623.4 gal; rain counted up to what the phase needs that day, in deeper phases that week",
            Sureness.Computed));
    }

    /// <summary>What the season's water costs: by the meter's steps where these are known, else by one price; null where neither is.</summary>
    internal static Figure? Cost(Figure volume, IReadOnlyList<PhaseFit> fits, Lawn lawn)
    {
        if (lawn.Water?.Meter is { } meter)
        {
            return MeteredCost.Of(volume, [.. fits.Select(fit => (fit.Need.Phase.From, Days(fit.Need.Phase), Sprinklings(fit) * fit.LitersPerRound))], meter, lawn.Water.HouseholdPerMonth ?? Engine.Units.Volume.Zero);
        }

        if (lawn.Prices?.WaterPerThousandGallons is not { } price)
        {
            return null;
        }

        var gallons = Gallons(volume.Value);
        return new Figure("water.season.cost", "Cost of the season's water", QuantityKind.Money, gallons / 1000.0 * (double)price, new Working(
            "C = V p / 1000",
            [new("V", "water for the season", gallons, "gal"), new("p", "price per 1,000 gallons", (double)price, "")],
            "price entered for this lawn",
            Sureness.Computed));
    }

    private static double Gallons(double liters) => new Volume(liters).Gallons;

    private static double Sprinklings(PhaseFit fit) => fit.Need.RoundsPerWeek / 7.0 * Days(fit.Need.Phase);

    private static int Days(Phase phase) => phase.To.DayNumber - phase.From.DayNumber + 1;

    /// <summary>Liters in one past year's weather; null where a day of it is missing.</summary>
    private static double? Liters(IReadOnlyList<PhaseFit> fits, WeatherHistory weather, int year)
    {
        var sum = 0.0;
        foreach (var fit in fits)
        {
            var from = fit.Need.Phase.From.AddYears(year - fits[0].Need.Phase.From.Year);
            if (weather.Span(from, from.AddDays(Days(fit.Need.Phase) - 1)) is not { } days)
            {
                return null;
            }

            sum += RoundsAfterRain(fit.Need, days) * fit.LitersPerRound;
        }

        return sum;
    }

    private static double RoundsAfterRain(PhaseNeed need, IReadOnlyList<WeatherDay> days)
    {
        var chunk = need.DaysPerWeek == 7 ? 1 : 7;
        var rounds = 0.0;
        for (var first = 0; first < days.Count; first += chunk)
        {
            var length = Math.Min(chunk, days.Count - first);
            var rainMm = 0.0;
            for (var i = first; i < first + length; i++)
            {
                rainMm += days[i].RainMm;
            }

            rounds += Math.Max(0.0, (need.RoundsPerWeek / 7.0 * length) - (rainMm / need.MostMm));
        }

        return rounds;
    }
}
