using System.Globalization;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Ground;

/// <summary>Where a value of a soil report lies.</summary>
public enum SoilLevel
{
    /// <summary>Told, not graded.</summary>
    Noted,

    Low,

    Optimum,

    High,
}

/// <summary>One value of a soil report, graded.</summary>
/// <param name="Figure">The value, with the lines it was held against.</param>
/// <param name="Unit">Its unit, where it has one.</param>
/// <param name="Level">Where it lies.</param>
/// <param name="Sentence">What it means and what it changes.</param>
public sealed record SoilReading(Figure Figure, string Unit, SoilLevel Level, string Sentence)
{
    internal static SoilReading Of(string id, string label, double value, string unit, (double Low, double High) lines, SoilLevel level, string source, Sureness sureness, FormattableString sentence) => new(
        new Figure($"soil.{id}", label, QuantityKind.Number, value, new Working(
            "x against the lines L and H",
            [new("x", "as the laboratory reports it", value, unit), new("L", "low below", lines.Low, unit), new("H", "high above", lines.High, unit)],
            source,
            sureness)),
        unit,
        level,
        sentence.ToString(CultureInfo.InvariantCulture));

    internal static SoilReading Plain(string id, string label, double value, string unit, string source, Sureness sureness, FormattableString sentence) => new(
        new Figure($"soil.{id}", label, QuantityKind.Number, value, new Working("as the laboratory reports it", [], source, sureness)), unit, SoilLevel.Noted, sentence.ToString(CultureInfo.InvariantCulture));

    internal static SoilLevel Grade(double value, double low, double high) => value < low ? SoilLevel.Low : value > high ? SoilLevel.High : SoilLevel.Optimum;
}
