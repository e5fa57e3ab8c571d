using Seedfall.Engine.Weather;

namespace Seedfall.Weather;

/// <summary>Unit of temperatures whose column does not say.</summary>
public enum TemperatureUnit
{
    Celsius,
    Fahrenheit,
    TenthsOfCelsius,
}

/// <summary>Unit of rain whose column does not say.</summary>
public enum RainUnit
{
    Millimeters,
    Inches,
    TenthsOfMillimeters,
}

/// <summary>What the reader may be told beforehand. The default asks it to find out for itself and refuse what it cannot.</summary>
public sealed record WeatherReadOptions
{
    public static WeatherReadOptions Default { get; } = new();

    /// <summary>Unit of temperature columns that name none; null: judged from the values, refused where they leave a doubt.</summary>
    public TemperatureUnit? Temperature { get; init; }

    /// <summary>Unit of rain columns that name none; null: judged from the values.</summary>
    public RainUnit? Rain { get; init; }

    /// <summary>Read only this station's files and rows; null: files of several stations are refused.</summary>
    public string? Station { get; init; }

    /// <summary>The lawn: gives the report its distance to the station, and stands in for the station's elevation where the file has none.</summary>
    public Place? Lawn { get; init; }

    /// <summary>How much is read before a file is refused as too big.</summary>
    public WeatherReadLimits Limits { get; init; } = WeatherReadLimits.Default;
}

/// <summary>Walls that keep memory bounded whatever the file holds.</summary>
public sealed record WeatherReadLimits
{
    public static WeatherReadLimits Default { get; } = new();

    /// <summary>Longest line of text, bytes.</summary>
    public int LineBytes { get; init; } = 65_536;

    /// <summary>Most bytes of one file after unpacking.</summary>
    public long FileBytes { get; init; } = 256L << 20;

    /// <summary>Most bytes of all files of one reading, after unpacking.</summary>
    public long TotalBytes { get; init; } = 1024L << 20;

    /// <summary>Most bytes of a JSON file after unpacking (it is held whole).</summary>
    public int JsonBytes { get; init; } = 40 << 20;

    /// <summary>Most levels of nesting in a JSON file.</summary>
    public int JsonDepth { get; init; } = 32;

    /// <summary>Most days in one reading.</summary>
    public int Days { get; init; } = 200_000;

    /// <summary>Most hours in one reading.</summary>
    public int Hours { get; init; } = 600_000;

    /// <summary>Most files in one reading, those of directories included.</summary>
    public int Files { get; init; } = 2_000;

    internal void Require()
    {
        foreach (var (limit, name) in new[]
        {
            (LineBytes, nameof(LineBytes)), (FileBytes, nameof(FileBytes)), (TotalBytes, nameof(TotalBytes)), (JsonBytes, nameof(JsonBytes)),
            (JsonDepth, nameof(JsonDepth)), (Days, nameof(Days)), (Hours, nameof(Hours)), (Files, nameof(Files)),
        })
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit, name);
        }
    }
}
