using Seedfall.Engine.Units;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Where a hand anemometer was held.</summary>
public enum WindHeld
{
    /// <summary>At the height of the nozzle.</summary>
    AtNozzle,

    /// <summary>Overhead, at about 6.5 ft (2 m).</summary>
    Overhead,
}

/// <summary>How much of the sky is covered.</summary>
public enum SkyCover
{
    Clear,
    Broken,
    Overcast,
}

/// <summary>What is read and seen on the lawn. Null means not looked at.</summary>
public sealed record SprayReading
{
    /// <summary>The reading in the weather written down with an application.</summary>
    /// <param name="weather">As written down.</param>
    /// <param name="held">Where the wind was read.</param>
    public static SprayReading Of(FieldWeather weather, WindHeld held)
    {
        ArgumentNullException.ThrowIfNull(weather);
        return new SprayReading { Wind = weather.Wind, Gust = weather.Gust, Air = weather.Air, Humidity = weather.Humidity, Held = held };
    }

    /// <summary>By hand anemometer: the highest steady reading of a minute.</summary>
    public Speed? Wind { get; init; }

    /// <summary>Where it was held.</summary>
    public WindHeld Held { get; init; }

    /// <summary>By signs, 0 to 5; passed over where <see cref="Wind"/> was read.</summary>
    public int? Force { get; init; }

    /// <summary>Highest gust, read at the same height.</summary>
    public Speed? Gust { get; init; }

    public Temperature? Air { get; init; }

    public Fraction? Humidity { get; init; }

    public SkyCover? Sky { get; init; }

    /// <summary>Lowest temperature of the morning.</summary>
    public Temperature? MorningLow { get; init; }

    /// <summary>Smoke, dust or fog hangs in a layer.</summary>
    public bool Hangs { get; init; }

    /// <summary>Dew or rain on the leaves.</summary>
    public bool? WetLeaves { get; init; }

    /// <summary>Minutes until rain, 0 while it rains; null where none is in sight or nothing is known.</summary>
    public double? RainInMinutes { get; init; }

    /// <summary>True where a forecast or the radar shows no rain for as long as it must stay dry.</summary>
    public bool NoRainInSight { get; init; }
}
