using Seedfall.Engine.Timing;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Ground;

/// <summary>What a weather history says of a place's climate.</summary>
public sealed record ClimateFacts
{
    /// <summary>Year that frost dates are told in; it does not count.</summary>
    public const int ShownYear = 2001;

    /// <summary>Null where no winter is whole.</summary>
    public Winters? Winters { get; private init; }

    /// <summary>First 32 degF night of autumn; null where too few years are known.</summary>
    public FrostDates? AutumnFrost { get; private init; }

    /// <summary>First 28 degF night of autumn.</summary>
    public FrostDates? AutumnHardFrost { get; private init; }

    /// <summary>Last 32 degF night of spring.</summary>
    public FrostDates? SpringFrost { get; private init; }

    /// <summary>Last 28 degF night of spring.</summary>
    public FrostDates? SpringHardFrost { get; private init; }

    /// <summary>Months known, January first.</summary>
    public required IReadOnlyList<MonthNormals> Months { get; init; }

    /// <summary>Rain of a year and degree-days, where all twelve months are known.</summary>
    public required IReadOnlyList<Figure> Year { get; init; }

    /// <summary>What the climate asks of the grasses.</summary>
    public required IReadOnlyList<Advice> Grasses { get; init; }

    /// <summary>Facts of a history.</summary>
    /// <param name="weather">Daily weather; the more years the better.</param>
    /// <param name="south">True south of the equator.</param>
    public static ClimateFacts Of(WeatherHistory weather, bool south)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var months = MonthNormals.Of(weather);
        return new ClimateFacts
        {
            Winters = Winters.Of(weather, south),
            AutumnFrost = FrostDates.Autumn(weather, south, Frost.Light, "climate.autumn-frost32", "First 32 degF night of autumn"),
            AutumnHardFrost = FrostDates.Autumn(weather, south, Frost.Hard, "climate.autumn-frost28", "First 28 degF night of autumn"),
            SpringFrost = FrostDates.Spring(weather, south, Frost.Light, "climate.spring-frost32", "Last 32 degF night of spring"),
            SpringHardFrost = FrostDates.Spring(weather, south, Frost.Hard, "climate.spring-frost28", "Last 28 degF night of spring"),
            Months = months,
            Year = months.Count == 12 ? [Rain(months), DegreeDays(months)] : [],
            Grasses = months.Count == 12 ? [.. GrassCountry.Hints(months)] : [],
        };
    }

    private static Figure Rain(IReadOnlyList<MonthNormals> months) => new(
        "climate.rain", "Rain and melted snow of a year", QuantityKind.Depth, months.Sum(m => m.RainMm), new Working(
            "sum of the months' means", [new("n", "fewest whole months of one name", months.Min(m => m.Years), "")], "this place's weather history", Sureness.Computed));

    private static Figure DegreeDays(IReadOnlyList<MonthNormals> months) => new(
        "climate.growing-degree-days", "Growing degree-days above 50 degF, in degF", QuantityKind.Number, months.Sum(m => m.GrowingDegreeDays) * 1.8, new Working(
            "1.8 sum of max(0, (Tmax + Tmin)/2 - 10)", [new("n", "fewest whole months of one name", months.Min(m => m.Years), "")], "this place's weather history; base of 50 degF common practice", Sureness.Computed));
}
