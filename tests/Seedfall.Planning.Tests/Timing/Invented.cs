using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Tests.Timing;

/// <summary>An invented lawn and the shipped tables, for the timing, water and verdict tests.</summary>
internal static class Invented
{
    internal static readonly TradeTables Tables = TradeTablesJson.Parse(
        File.ReadAllText(Path.Combine(Root(), "data", "species.json")),
        Directory.EnumerateFiles(Path.Combine(Root(), "data", "rules"), "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllText));

    internal static readonly WeatherHistory Weather = InventedWeather.Years(2004, 2023);

    internal static readonly WeatherHistory SouthernWeather = InventedWeather.Years(2004, 2023, InventedWeather.South);

    internal static Patch Patch(double squareFeet = 5000.0, string id = "front") => new()
    {
        Id = id,
        Name = id == "front" ? "Front" : id,
        Shape = new PatchShape.Typed(Area.FromSquareFeet(squareFeet)),
        Grasses = [GrassSpecies.TallFescue],
        LivingCover = Fraction.Of(0.6),
        Cause = DamageCause.Drought,
        SunHours = 8.0,
        SlopePercent = 0.0,
    };

    internal static Lawn Lawn(Place? place = null, params Patch[] patches) => new()
    {
        Id = "invented",
        Name = "Invented lawn",
        Place = place ?? InventedWeather.North,
        Patches = patches.Length == 0 ? [Patch()] : patches,
    };

    internal static IReadOnlyList<PatchSummary> Summaries(Lawn lawn) => PatchGround.Summarize(lawn).Value!;

    internal static Section<SeasonTiming> Time(
        WeatherHistory weather, Choices? choices = null, Place? place = null, params GrassSpecies[] mix)
    {
        var lawn = Lawn(place ?? weather.Station);
        return SeasonTimingPlanning.Plan(lawn, choices ?? new Choices { Season = 2023 }, weather, Tables, Summaries(lawn), mix.Length == 0 ? [GrassSpecies.TallFescue] : mix);
    }

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Seedfall.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("no folder above the tests holds Seedfall.slnx");
    }
}
