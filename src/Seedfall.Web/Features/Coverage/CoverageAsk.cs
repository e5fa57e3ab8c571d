using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Web.Features.Coverage;

/// <summary>What the page is asked to show.</summary>
/// <param name="Set">Number of the set from 1; null for all of them together.</param>
/// <param name="WindMph">Wind at sprinkler height, mph; 0 for still air.</param>
/// <param name="FromDeg">Direction the wind blows from, degrees clockwise from north.</param>
public sealed record CoverageAsk(int? Set, int WindMph, int FromDeg)
{
    public static IReadOnlyList<(int Mph, string Text)> Winds { get; } = [(0, "calm"), (5, "5 mph (8 km/h)"), (10, "10 mph (16 km/h)")];

    public static IReadOnlyList<(int Deg, string Text)> Directions { get; } =
        [(0, "north"), (45, "northeast"), (90, "east"), (135, "southeast"), (180, "south"), (225, "southwest"), (270, "west"), (315, "northwest")];

    public SprayWind Wind => WindMph == 0 ? SprayWind.Still : new(Speed.FromMilesPerHour(WindMph), FromDeg);

    public string WindWords => WindMph == 0 ? "in still air" : $"in a wind of {Winds.First(w => w.Mph == WindMph).Text} from the {Directions.First(d => d.Deg == FromDeg).Text}";

    /// <summary>Read from an address; what is not offered counts as all sets, calm, from the west.</summary>
    public static CoverageAsk Of(IQueryCollection query) => new(
        Number(query["set"]) is > 0 and var set ? set : null,
        Number(query["wind"]) is { } mph && Winds.Any(w => w.Mph == mph) ? mph : 0,
        Number(query["from"]) is { } deg && Directions.Any(d => d.Deg == deg) ? deg : 270);

    private static int? Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
