using Seedfall.Weather.Csv;
using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>
/// GHCN-Daily as one line per value, <c>ID,YYYYMMDD,ELEMENT,VALUE,M,Q,S,HHMM</c>: NOAA's by_year files have no header, its
/// by_station files may have one.
/// </summary>
internal static class GhcnLong
{
    private const int FieldCount = 8;
    private const string Format = "GHCN-Daily, one value a line";

    internal static bool RecognizesRow(ReadOnlySpan<byte> line) =>
        line.Length > 30 && line[11] == ',' && line[20] == ',' && line[25] == ',' && FieldText.TryCompactDate(line[12..20], out _);

    internal static bool RecognizesHeader(CsvReader header) =>
        header.Count == FieldCount && Is(header[0], "id"u8) && Is(header[1], "date"u8) && Is(header[2], "element"u8);

    internal static void ReadHeaderless(LineReader lines, FileDraft file, WeatherReadOptions options) =>
        Read(new CsvReader(lines, (byte)','), file, options);

    internal static void Read(CsvReader csv, FileDraft file, WeatherReadOptions options)
    {
        var days = new GhcnDays(file, Format);
        while (csv.TryRead())
        {
            if (csv.Count != FieldCount)
            {
                throw new RefusedException(csv.Line, 0, FormattableString.Invariant($"{FieldCount} fields"), FormattableString.Invariant($"{csv.Count}"));
            }

            if (GhcnStation.Accepts(csv[0], file, options, csv.Line))
            {
                ReadValue(csv, days);
            }
        }

        days.Finish();
        GhcnStation.RequireFound(file, options);
    }

    private static void ReadValue(CsvReader csv, GhcnDays days)
    {
        if (!FieldText.TryCompactDate(csv[1], out var day))
        {
            throw new RefusedException(csv.Line, 2, "a date as YYYYMMDD", FieldText.Quote(csv[1]));
        }

        if (!FieldText.TryInt(csv[3], out var value))
        {
            throw new RefusedException(csv.Line, 4, "a whole number", FieldText.Quote(csv[3]));
        }

        days.Add(day, csv[2], value, Flag(csv[4]), Flag(csv[5]), csv[7], csv.Line, 4);
    }

    private static char Flag(ReadOnlySpan<byte> field) => field.IsEmpty ? ' ' : (char)field[0];

    private static bool Is(ReadOnlySpan<byte> field, ReadOnlySpan<byte> word) => System.Text.Ascii.EqualsIgnoreCase(field, word);
}
