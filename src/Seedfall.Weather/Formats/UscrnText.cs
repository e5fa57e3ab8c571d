using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>What the two text products of the U.S. Climate Reference Network share.</summary>
internal static class UscrnText
{
    internal static bool IsHeader(TokenLine tokens) => tokens[0].SequenceEqual("WBANNO"u8);

    internal static void RequireCount(TokenLine tokens, int count, int line)
    {
        if (tokens.Count != count)
        {
            var found = tokens.Count > count ? "more" : FormattableString.Invariant($"{tokens.Count}");
            throw new RefusedException(line, 0, FormattableString.Invariant($"{count} fields"), found);
        }
    }

    internal static int Day(TokenLine tokens, int field, int line) => FieldText.TryCompactDate(tokens[field], out var day)
        ? day
        : throw new RefusedException(line, tokens.Column(field), "a date as YYYYMMDD", FieldText.Quote(tokens[field]));

    /// <summary>Takes the station's number and place from the first line; a later line of another station is refused.</summary>
    internal static void Station(TokenLine tokens, int idField, int longitudeField, int latitudeField, FileDraft file, int line)
    {
        var id = tokens[idField];
        if (file.Station.Id is { } known)
        {
            Span<char> chars = stackalloc char[16];
            if (id.Length > 16 || !chars[..System.Text.Encoding.Latin1.GetChars(id, chars)].SequenceEqual(known))
            {
                throw new RefusedException(line, tokens.Column(idField), $"station {known}, as on the lines before", FieldText.Quote(id));
            }

            return;
        }

        file.Station.Id = FieldText.Decode(id);
        file.Station.Name = $"USCRN {file.Station.Id}";
        file.Station.LongitudeDeg = Number(tokens, longitudeField, line);
        file.Station.LatitudeDeg = Number(tokens, latitudeField, line);
    }

    /// <summary>Puts a field's number into the row, unless it is one of the missing codes.</summary>
    internal static void Put(TokenLine tokens, int field, Element element, int line, ref Row row)
    {
        var value = Number(tokens, field, line);
        if (!IsMissing(element, value))
        {
            row.Set(element, value);
        }
    }

    internal static double Number(TokenLine tokens, int field, int line) => FieldText.TryNumber(tokens[field], out var value)
        ? value
        : throw new RefusedException(line, tokens.Column(field), "a number", FieldText.Quote(tokens[field]));

    /// <summary>-9999 in any spelling; -99 for soil moisture.</summary>
    internal static bool IsMissing(Element element, double value) =>
        Math.Abs(value + 9999) < 0.5 || (element == Element.SoilMoisture5Cm && Math.Abs(value + 99) < 0.5);

    internal static void NoteUnits(FileDraft file, ReadOnlySpan<(int Field, Element Element)> fields)
    {
        foreach (var (field, element) in fields)
        {
            file.Units[element] = (Elements.Unit(element), "by format");
            file.ColumnOf[(int)element] = field + 1;
        }
    }
}
