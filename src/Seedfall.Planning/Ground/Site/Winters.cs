using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Ground;

/// <summary>How cold the winters get: the coldest night of each, their mean, the hardiness zone.</summary>
/// <param name="Coldest">Coldest night of each whole winter, degC, by the year it ends in.</param>
/// <param name="MeanExtreme">Mean annual extreme minimum.</param>
/// <param name="Zone">Half zone the mean lies in.</param>
/// <param name="Chances">Half zones the long mean may lie in, likeliest first, each with a chance of at least one in twenty.</param>
public sealed record Winters(IReadOnlyList<(int Year, double TminC)> Coldest, Figure MeanExtreme, HardinessZone Zone, IReadOnlyList<(HardinessZone Zone, double Chance)> Chances)
{
    /// <summary>Winters a hardiness zone is defined by.</summary>
    public const int Wanted = 30;

    private const int FewestDays = 350;
    private const double LeastChance = 0.05;

    private const string Source =
        "mean annual extreme minimum in steps of 5 degF, 30 years: Daly et al. 2012, J. Appl. Meteorol. Climatol. 51:242, the plant hardiness map of the U.S. Department of Agriculture; winters July to June after the U.S. Forest Service";

    /// <summary>Winters of a history, July to June (January to December in the south); null where none is whole.</summary>
    /// <param name="weather">Daily weather.</param>
    /// <param name="south">True south of the equator.</param>
    public static Winters? Of(WeatherHistory weather, bool south)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var coldest = weather.Days.GroupBy(d => south || d.Date.Month < 7 ? d.Date.Year : d.Date.Year + 1)
            .Where(IsWhole)
            .Select(g => (g.Key, g.Min(d => d.TminC)))
            .TakeLast(Wanted).ToArray();
        if (coldest.Length == 0)
        {
            return null;
        }

        double[] extremesF = [.. coldest.Select(c => Temperature.FromCelsius(c.Item2).Fahrenheit)];
        var mean = extremesF.Average();
        var errorF = extremesF.Length > 1 ? Math.Sqrt(extremesF.Sum(f => (f - mean) * (f - mean)) / (extremesF.Length - 1) / extremesF.Length) : 0.0;
        var zone = HardinessZone.Of(Temperature.FromFahrenheit(mean));
        return new Winters(coldest, MeanFigure(coldest, mean, errorF, zone), zone, Likely(mean, coldest.Length < Wanted ? errorF : 0.0, zone));
    }

    /// <summary>Almost every day is there, and the half year that holds the coldest night has no hole over a week.</summary>
    private static bool IsWhole(IEnumerable<WeatherDay> winter)
    {
        WeatherDay[] days = [.. winter];
        return days.Length >= FewestDays && days.Zip(days.Skip(1)).All(pair => pair.Second.Date.DayNumber - pair.First.Date.DayNumber <= 7);
    }

    private static IReadOnlyList<(HardinessZone, double)> Likely(double meanF, double errorF, HardinessZone zone) =>
    [
        .. Enumerable.Range(Math.Max(0, zone.Index - 3), 7).Select(i => new HardinessZone(Math.Min(i, 25))).Distinct()
            .Select(z => (z, z.Chance(meanF, errorF))).Where(z => z.Item2 >= LeastChance).OrderByDescending(z => z.Item2),
    ];

    private static Figure MeanFigure((int Year, double TminC)[] coldest, double meanF, double errorF, HardinessZone zone) => new(
        "climate.extreme-minimum", "Mean of each winter's coldest night", QuantityKind.Temperature, Temperature.FromFahrenheit(meanF).Celsius, new Working(
            "sum of the coldest night of each winter / n",
            [
                new("n", string.Create(CultureInfo.InvariantCulture, $"whole winters, {coldest[0].Year} to {coldest[^1].Year}"), coldest.Length, ""),
                new("s", "standard error of the mean", errorF, "degF"),
                new("min", "coldest of all", coldest.Min(c => c.TminC), "degC"),
            ],
            Source,
            Sureness.Computed,
            string.Create(CultureInfo.InvariantCulture, $"Half zone {zone}: {zone.From.Fahrenheit:0} to {zone.To.Fahrenheit:0} degF.{(coldest.Length < Wanted ? $" A zone is defined by {Wanted} winters; these are {coldest.Length}, so the map may show a neighbor." : "")} Trees and shrubs live by it; cool-season lawn grasses outlive zone 3.")));
}
