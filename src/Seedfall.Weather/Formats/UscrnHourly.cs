using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>
/// U.S. Climate Reference Network, product hourly02: 38 fields between blanks, no header. A stamp is the end of its hour in
/// local standard time, so 0000 closes the day before. A quality flag other than 0 rejects the value beside it. Field order:
/// NOAA, readme of the product.
/// </summary>
internal static class UscrnHourly
{
    internal const string Format = "USCRN hourly02";
    internal const int FieldCount = 38;

    private const double MegajoulesPerWattHour = 0.0036;
    private const int SolarField = 13;

    private static readonly (int Field, Element Element)[] Fields =
    [
        (9, Element.MeanC), (10, Element.TmaxC), (11, Element.TminC), (12, Element.RainMm), (SolarField, Element.SolarMJ),
        (26, Element.HumidityMeanPct), (28, Element.SoilMoisture5Cm), (33, Element.Soil5CmC),
    ];

    internal static bool Recognizes(ReadOnlySpan<byte> firstLine)
    {
        var tokens = new TokenLine(firstLine, stackalloc Range[FieldCount + 1]);
        return tokens.Count == FieldCount && FieldText.TryCompactDate(tokens[1], out _) && FieldText.TryCompactDate(tokens[3], out _);
    }

    internal static void Read(LineReader lines, FileDraft file)
    {
        (file.Format, file.IsAgency, file.IsHourly) = (Format, true, true);
        UscrnText.NoteUnits(file, Fields);
        file.Units[Element.SolarMJ] = ("W/m2", "by format");
        Span<Range> room = stackalloc Range[FieldCount + 1];
        while (lines.TryRead(out var line))
        {
            var tokens = new TokenLine(line, room);
            if (tokens.Count == 0 || UscrnText.IsHeader(tokens))
            {
                continue;
            }

            UscrnText.RequireCount(tokens, FieldCount, lines.Line);
            UscrnText.Station(tokens, 0, 6, 7, file, lines.Line);
            var row = Stamp(UscrnText.Day(tokens, 3, lines.Line), tokens[4], lines.Line, tokens.Column(4));
            PutAll(tokens, file, ref row);
            file.Add(row);
        }
    }

    /// <summary>An hour-ending stamp as the row of the hour it closes.</summary>
    /// <param name="day">Day number of the stamp.</param>
    /// <param name="time">HHMM, 0000 to 2300.</param>
    internal static Row Stamp(int day, ReadOnlySpan<byte> time, int line, int column)
    {
        if (!FieldText.TryInt(time, out var hhmm) || hhmm is < 0 or > 2400 || hhmm % 100 != 0)
        {
            throw new RefusedException(line, column, "a full hour as HHMM, 0000 to 2300", FieldText.Quote(time));
        }

        var ending = hhmm / 100;
        return ending == 0
            ? new Row { Line = line, Day = day - 1, Hour = 23 }
            : new Row { Line = line, Day = day, Hour = (sbyte)(ending - 1) };
    }

    /// <summary>The mean flux of an hour, W/m2, as energy, MJ/m2.</summary>
    internal static double HourSolarMJ(double wattsPerM2) => wattsPerM2 * MegajoulesPerWattHour;

    private static void PutAll(TokenLine tokens, FileDraft file, ref Row row)
    {
        foreach (var (field, element) in Fields)
        {
            UscrnText.Put(tokens, field, element, row.Line, ref row);
        }

        Reject(tokens, 14, Element.SolarMJ, file, ref row);
        Reject(tokens, 27, Element.HumidityMeanPct, file, ref row);
        if (row.Has(Element.SolarMJ))
        {
            row.Set(Element.SolarMJ, HourSolarMJ(row[Element.SolarMJ]));
        }
    }

    private static void Reject(TokenLine tokens, int flagField, Element element, FileDraft file, ref Row row)
    {
        if (row.Has(element) && !tokens[flagField].SequenceEqual("0"u8))
        {
            row.Remove(element);
            file.Tally($"{Elements.Name(element)} flagged as erroneous and left out", FormattableString.Invariant($"line {row.Line}"));
        }
    }
}
