using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>
/// GHCN-Daily station file (.dly): a line for each month and element, 269 columns: station 1-11, year 12-15, month 16-17,
/// element 18-21, then for each of 31 days a value of five columns and its three flags. Lines cut short by editors are
/// taken as blank to the end. Source: NOAA, readme of GHCN-Daily, section III.
/// </summary>
internal static class GhcnFixed
{
    private const int FirstValue = 21;
    private const int DayWidth = 8;
    private const int ValueWidth = 5;

    internal static bool Recognizes(ReadOnlySpan<byte> line) =>
        line.Length is >= FirstValue + ValueWidth and <= FirstValue + 31 * DayWidth
        && line[..11].IndexOfAnyExcept(Letters) < 0
        && FieldText.TryInt(line[11..15], out var year) && year is >= 1700 and <= 2200
        && FieldText.TryInt(line[15..17], out var month) && month is >= 1 and <= 12
        && line[17..21].IndexOfAnyExcept(Letters) < 0
        && FieldText.TryInt(line.Slice(FirstValue, ValueWidth), out _);

    internal static void Read(LineReader lines, FileDraft file, WeatherReadOptions options)
    {
        var days = new GhcnDays(file, "GHCN-Daily .dly");
        while (lines.TryRead(out var line))
        {
            if (line.Trim(" "u8).IsEmpty)
            {
                continue;
            }

            if (!Recognizes(line))
            {
                throw new RefusedException(lines.Line, 1, "a GHCN-Daily line: station, year, month, element and values", FieldText.Quote(line));
            }

            if (GhcnStation.Accepts(line[..11], file, options, lines.Line))
            {
                ReadMonth(line, days, lines.Line);
            }
        }

        days.Finish();
        GhcnStation.RequireFound(file, options);
    }

    private static System.Buffers.SearchValues<byte> Letters { get; } = System.Buffers.SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-"u8);

    private static void ReadMonth(ReadOnlySpan<byte> line, GhcnDays days, int lineNumber)
    {
        FieldText.TryInt(line[11..15], out var year);
        FieldText.TryInt(line[15..17], out var month);
        for (var day = 1; day <= 31; day++)
        {
            var start = FirstValue + (day - 1) * DayWidth;
            if (start + ValueWidth > line.Length)
            {
                RequireBlank(line, start, lineNumber);
                return;
            }

            var text = line.Slice(start, ValueWidth);
            if (text.Trim(" "u8).IsEmpty)
            {
                continue;
            }

            if (!FieldText.TryInt(text, out var value))
            {
                throw new RefusedException(lineNumber, start + 1, "a whole number of five columns", FieldText.Quote(text));
            }

            if (FieldText.TryDate(year, month, day, out var number))
            {
                days.Add(number, line[17..21], value, Flag(line, start + 5), Flag(line, start + 6), default, lineNumber, start + 1);
            }
            else if (value != -9999)
            {
                throw new RefusedException(lineNumber, start + 1, FormattableString.Invariant($"-9999 for day {day} of month {month}, which does not exist"), FieldText.Quote(text));
            }
        }
    }

    /// <summary>A value cut in two is a damaged line, not a short one.</summary>
    private static void RequireBlank(ReadOnlySpan<byte> line, int start, int lineNumber)
    {
        if (start < line.Length && !line[start..].Trim(" "u8).IsEmpty)
        {
            throw new RefusedException(lineNumber, start + 1, "a whole number of five columns", FieldText.Quote(line[start..]));
        }
    }

    private static char Flag(ReadOnlySpan<byte> line, int at) => at < line.Length ? (char)line[at] : ' ';
}
