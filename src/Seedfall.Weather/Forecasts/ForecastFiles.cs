using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Seedfall.Engine.Weather;
using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>A forecast, or why the file was refused; never half of each.</summary>
public sealed record ForecastReadResult
{
    private ForecastReadResult()
    {
    }

    /// <summary>Null where the file was refused.</summary>
    public HourlyForecast? Forecast { get; private init; }

    /// <summary>Null where it was read.</summary>
    public FileProblem? Problem { get; private init; }

    [MemberNotNullWhen(true, nameof(Forecast))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool IsRead => Forecast is not null;

    internal static ForecastReadResult Read(HourlyForecast forecast) => new() { Forecast = forecast };

    internal static ForecastReadResult Refused(FileProblem problem) => new() { Problem = problem };
}

/// <summary>
/// Saved answers of two public weather services: the US National Weather Service (the grid's raw layers, or the hourly forecast) and
/// MET Norway's location forecast (compact or complete). Recognized by content; see docs/using/spray-window.md.
/// </summary>
public static class ForecastFiles
{
    /// <summary>Most bytes of a forecast file.</summary>
    public const int MostBytes = 8 << 20;

    private const int MostDepth = 32;

    /// <summary>Reads one file.</summary>
    /// <param name="name">Its name, for messages.</param>
    /// <param name="json">Its content, UTF-8.</param>
    public static ForecastReadResult Read(string name, ReadOnlySpan<byte> json)
    {
        ArgumentNullException.ThrowIfNull(name);
        try
        {
            return json.Length > MostBytes
                ? throw new RefusedException(0, 0, FormattableString.Invariant($"at most {MostBytes >> 20} MB"), "more")
                : ForecastReadResult.Read(Parse(json.StartsWith("\uFEFF"u8) ? json[3..] : json));
        }
        catch (RefusedException e)
        {
            return ForecastReadResult.Refused(new FileProblem(FieldText.Clean(name, FieldText.LongestLabel), e.Line, e.Column, e.Expected, e.Found));
        }
    }

    private static HourlyForecast Parse(ReadOnlySpan<byte> json)
    {
        if (!json.TrimStart(" \t\r\n"u8).StartsWith("{"u8))
        {
            throw new RefusedException(1, 0, "a saved forecast: JSON of the US National Weather Service or of MET Norway", json.IsEmpty ? "an empty file" : FieldText.Quote(json[..Math.Min(json.Length, 60)]));
        }

        var document = new ForecastDocument();
        try
        {
            var walker = new JsonWalker(json, MostDepth);
            document.ReadRoot(ref walker);
            walker.RequireEnd();
        }
        catch (JsonException e)
        {
            throw new RefusedException((int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "JSON", "text that breaks its grammar, ends too soon or nests too deep");
        }

        return document.Build();
    }
}
