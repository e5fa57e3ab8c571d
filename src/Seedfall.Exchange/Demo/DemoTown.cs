using System.Text;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Lawns;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Demo;

/// <summary>The demo: Tansy Ford, a town that does not exist, with three lawns and its weather. See data/demo/README.md.</summary>
public static class DemoTown
{
    /// <summary>The season the demo plans for.</summary>
    public const int Season = 2026;

    /// <summary>Name of the weather file; says that the weather is invented.</summary>
    public const string WeatherFileName = "invented-weather-tansy-ford.csv";

    /// <summary>Station name in the weather file's header.</summary>
    public const string StationName = "Tansy Ford (INVENTED town, INVENTED weather: drawn at random, measured nowhere)";

    private const ulong Seed = 20260814;

    /// <summary>Ids of the lawns: an ordinary one, one whose tap cannot water it, one that must wait.</summary>
    public static IReadOnlyList<string> Names { get; } = ["mill-lane-corner", "quarry-hill", "ferry-landing"];

    private static readonly Lazy<IReadOnlyList<Lawn>> ReadLawns = new(() => [.. Names.Select(n => Read($"{n}.json"))]);

    private static readonly Lazy<WeatherHistory> Drawn = new(() => Draw(Today));

    private static readonly Lazy<WeatherHistory> DrawnAhead = new(() => Draw(Today.AddDays(DaysAhead)));

    private const int DaysAhead = 7;

    /// <summary>The day the demo is looked at: the last day its weather is known.</summary>
    public static DateOnly Today { get; } = new(Season, 8, 14);

    /// <summary>The three lawns.</summary>
    public static IReadOnlyList<Lawn> Lawns => ReadLawns.Value;

    /// <summary>Daily weather from 2001 to the demo's day.</summary>
    public static WeatherHistory Weather => Drawn.Value;

    /// <summary>The same with the week after the demo's day, as invented as the rest: what stands in for a forecast.</summary>
    public static WeatherHistory Ahead => DrawnAhead.Value.WithDaysAheadForecast(Today);

    private static Lawn Read(string file)
    {
        var result = LawnFile.Read(Encoding.UTF8.GetBytes(Embedded.Text($"demo/{file}")), file, Trade.Tables);
        return result.Lawn ?? throw new InvalidOperationException($"the demo is broken: {result.Problems[0]}");
    }

    private static WeatherHistory Draw(DateOnly last)
    {
        var place = new Place(41.6, -89.9, 230.0);
        var days = new InventedClimate(Seed, place.LatitudeDeg).Days(new DateOnly(2001, 1, 1), last);
        return new WeatherHistory(place, StationName, days, [$"{WeatherFileName}: invented weather of an invented town"], []);
    }
}
