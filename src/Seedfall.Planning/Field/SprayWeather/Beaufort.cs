using Seedfall.Engine.Units;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>
/// Wind judged by what leaves, smoke and flags do: the lower end of the Beaufort scale. Ranges in whole miles per hour, for the wind at
/// 10 m over open ground, as the World Meteorological Organization and the US weather service print them (from memory); the signs are
/// in our own words. One entry per force from 0 up; the last stands for itself and everything above.
/// </summary>
/// <param name="Force">0 to 5.</param>
/// <param name="LeastMph">Lower end, mph.</param>
/// <param name="MostMph">Upper end, mph.</param>
/// <param name="Sign">What one sees.</param>
public sealed record Beaufort(int Force, double LeastMph, double MostMph, string Sign)
{
    /// <summary>Force 0 to 5.</summary>
    public static IReadOnlyList<Beaufort> All { get; } =
    [
        new(0, 0.0, 1.0, "Smoke goes straight up; no leaf stirs"),
        new(1, 1.0, 3.0, "Smoke leans; leaves and flag hang still"),
        new(2, 4.0, 7.0, "You feel it on the face; leaves rustle; the flag stirs"),
        new(3, 8.0, 12.0, "Leaves and twigs never rest; a light flag stands out"),
        new(4, 13.0, 18.0, "Dust and loose leaves fly up; small branches move"),
        new(5, 19.0, 24.0, "Small trees sway, or more than that"),
    ];

    /// <summary>Upper end at 10 m: what a limit is held against.</summary>
    public Speed Most => Speed.FromMilesPerHour(MostMph);

    /// <summary>Middle of the range at 10 m: what still air is told by.</summary>
    public Speed Middle => Speed.FromMilesPerHour(0.5 * (LeastMph + MostMph));

    /// <summary>The force; throws outside 0 to 5.</summary>
    public static Beaufort Of(int force) => force >= 0 && force < All.Count ? All[force] : throw new ArgumentOutOfRangeException(nameof(force), force, "0 to 5 are needed");
}
