using System.Buffers.Text;
using System.Text;

namespace Seedfall.Weather.Input;

/// <summary>Numbers, dates and short quotations out of the bytes of a field.</summary>
internal static class FieldText
{
    /// <summary>Longest name taken from a file, characters.</summary>
    internal const int LongestLabel = 200;

    /// <summary>A finite decimal number that fills the field, blanks around it allowed.</summary>
    internal static bool TryNumber(ReadOnlySpan<byte> field, out double value)
    {
        field = field.Trim(" \t"u8);
        if (field.StartsWith("+"u8))
        {
            field = field[1..];
        }

        return Utf8Parser.TryParse(field, out value, out var used) && used == field.Length && double.IsFinite(value);
    }

    /// <summary>A whole number that fills the field.</summary>
    internal static bool TryInt(ReadOnlySpan<byte> field, out int value)
    {
        field = field.Trim(" \t"u8);
        return Utf8Parser.TryParse(field, out value, out var used) && used == field.Length;
    }

    /// <summary>Eight digits, a real date.</summary>
    internal static bool TryCompactDate(ReadOnlySpan<byte> field, out int dayNumber)
    {
        dayNumber = 0;
        return field.Length == 8 && TryInt(field, out var n) && TryDate(n / 10_000, n / 100 % 100, n % 100, out dayNumber);
    }

    /// <summary>A real date of the years 1700 to 2200.</summary>
    internal static bool TryDate(int year, int month, int day, out int dayNumber)
    {
        dayNumber = 0;
        if (year is < 1700 or > 2200 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month))
        {
            return false;
        }

        dayNumber = new DateOnly(year, month, day).DayNumber;
        return true;
    }

    /// <summary>The field for a message: in quotes, cut at 40 characters, nothing unprintable.</summary>
    internal static string Quote(ReadOnlySpan<byte> field)
    {
        if (field.Trim(" \t"u8).IsEmpty)
        {
            return "an empty field";
        }

        return $"'{Clean(Encoding.UTF8.GetString(field.Length > 200 ? field[..200] : field), 40)}'";
    }

    /// <summary>The field as text: UTF-8, or Latin-1 where it is not UTF-8; cleaned, at most 200 characters.</summary>
    internal static string Decode(ReadOnlySpan<byte> field)
    {
        var text = Encoding.UTF8.GetString(field);
        return Clean((text.Contains('\uFFFD') ? Encoding.Latin1.GetString(field) : text).Trim(), LongestLabel);
    }

    /// <summary>Text from a file made fit for a terminal or a page: control characters replaced, cut where too long.</summary>
    internal static string Clean(string text, int most)
    {
        var cut = text.Length > most ? text[..most] + "..." : text;
        return string.Concat(cut.Select(c => char.IsControl(c) || char.IsSurrogate(c) || c == '\uFFFD' ? '?' : c));
    }
}
