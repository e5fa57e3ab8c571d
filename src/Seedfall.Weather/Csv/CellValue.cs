using Seedfall.Weather.Input;

namespace Seedfall.Weather.Csv;

/// <summary>What stands in a cell of a quantity.</summary>
internal enum CellKind
{
    Missing,
    Number,
    Trace,
}

/// <summary>A cell of a quantity as read, before its unit is known.</summary>
/// <param name="Kind">Number, trace of rain, or nothing.</param>
/// <param name="Value">The number.</param>
/// <param name="HasPoint">The number is written with a decimal point.</param>
internal readonly record struct CellValue(CellKind Kind, double Value, bool HasPoint)
{
    private const int LongestNumber = 32;

    /// <summary>
    /// Reads the cell; anything but a number, a sign for missing (empty, NA, NaN, null, M, -, -999, -9999) or T for a trace
    /// of rain is refused.
    /// </summary>
    internal static CellValue Parse(ReadOnlySpan<byte> cell, bool decimalComma, string name, int line, int column)
    {
        var text = cell.Trim(" \t"u8);
        if (IsMissing(text))
        {
            return default;
        }

        if (text.SequenceEqual("T"u8))
        {
            return new CellValue(CellKind.Trace, 0, false);
        }

        if (TryNumber(text, decimalComma, out var value))
        {
            return IsMissingCode(value) ? default : new CellValue(CellKind.Number, value, text.IndexOfAny(".,eE"u8) >= 0);
        }

        throw new RefusedException(line, column, $"a number for {name}", FieldText.Quote(cell));
    }

    private static bool TryNumber(ReadOnlySpan<byte> text, bool decimalComma, out double value)
    {
        var comma = decimalComma ? text.IndexOf((byte)',') : -1;
        if (comma < 0 || text.Length > LongestNumber)
        {
            return FieldText.TryNumber(text, out value);
        }

        Span<byte> pointed = stackalloc byte[LongestNumber];
        text.CopyTo(pointed);
        pointed[comma] = (byte)'.';
        return FieldText.TryNumber(pointed[..text.Length], out value);
    }

    private static bool IsMissing(ReadOnlySpan<byte> text) =>
        text.IsEmpty || Is(text, "na"u8) || Is(text, "n/a"u8) || Is(text, "nan"u8) || Is(text, "null"u8) || Is(text, "none"u8) || Is(text, "m"u8) || Is(text, "-"u8);

    private static bool Is(ReadOnlySpan<byte> text, ReadOnlySpan<byte> word) => System.Text.Ascii.EqualsIgnoreCase(text, word);

    private static bool IsMissingCode(double value) => Math.Abs(value + 9999) < 0.5 || Math.Abs(value + 999) < 0.95;
}
