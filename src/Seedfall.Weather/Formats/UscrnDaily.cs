using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>
/// U.S. Climate Reference Network, product daily01: 28 fields between blanks, no header, one line a day of local standard
/// time. Field order and missing codes: NOAA, readme of the product.
/// </summary>
internal static class UscrnDaily
{
    internal const string Format = "USCRN daily01";
    internal const int FieldCount = 28;

    private static readonly (int Field, Element Element)[] Fields =
    [
        (5, Element.TmaxC), (6, Element.TminC), (8, Element.MeanC), (9, Element.RainMm), (10, Element.SolarMJ),
        (15, Element.HumidityMaxPct), (16, Element.HumidityMinPct), (17, Element.HumidityMeanPct),
        (18, Element.SoilMoisture5Cm), (23, Element.Soil5CmC),
    ];

    internal static bool Recognizes(ReadOnlySpan<byte> firstLine)
    {
        var tokens = new TokenLine(firstLine, stackalloc Range[FieldCount + 1]);
        return tokens.Count == FieldCount && tokens[1].Length == 8 && FieldText.TryInt(tokens[0], out _) && FieldText.TryCompactDate(tokens[1], out _);
    }

    internal static void Read(LineReader lines, FileDraft file)
    {
        (file.Format, file.IsAgency) = (Format, true);
        UscrnText.NoteUnits(file, Fields);
        Span<Range> room = stackalloc Range[FieldCount + 1];
        while (lines.TryRead(out var line))
        {
            var tokens = new TokenLine(line, room);
            if (tokens.Count == 0 || UscrnText.IsHeader(tokens))
            {
                continue;
            }

            UscrnText.RequireCount(tokens, FieldCount, lines.Line);
            var row = new Row { Line = lines.Line, Hour = -1, Day = UscrnText.Day(tokens, 1, lines.Line) };
            UscrnText.Station(tokens, 0, 3, 4, file, lines.Line);
            foreach (var (field, element) in Fields)
            {
                UscrnText.Put(tokens, field, element, lines.Line, ref row);
            }

            file.Add(row);
        }
    }
}
