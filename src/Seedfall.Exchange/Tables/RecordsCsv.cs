using System.Globalization;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Exchange.Tables;

/// <summary>The record book as a table for an inspector: one row a record as it was written, corrected and struck ones too, quantities in both unit systems.</summary>
public static class RecordsCsv
{
    private static readonly (string Name, Func<Row, CsvText, CsvText> Write)[] Columns =
    [
        ("state", (r, csv) => csv.Cell(r.State)),
        ("reason", (r, csv) => csv.Cell(r.Reason ?? "")),
        ("date", (r, csv) => csv.Cell(Text(r.Entry.At, "yyyy-MM-dd"))),
        ("start", (r, csv) => csv.Cell(Text(r.Entry.At, "HH:mm"))),
        ("end_date", (r, csv) => csv.Cell(Text(r.What.Ended, "yyyy-MM-dd"))),
        ("end", (r, csv) => csv.Cell(Text(r.What.Ended, "HH:mm"))),
        ("clock_from_utc", (r, csv) => csv.Cell($"UTC{Text(r.Entry.At, "zzz")}")),
        ("lawn", (r, csv) => csv.Cell(r.Book.Lawn.Name)),
        ("address", (r, csv) => csv.Cell(r.Book.Lawn.Address ?? "")),
        ("latitude_deg", (r, csv) => csv.Cell(r.Book.Lawn.Place.LatitudeDeg)),
        ("longitude_deg", (r, csv) => csv.Cell(r.Book.Lawn.Place.LongitudeDeg)),
        ("owner", (r, csv) => csv.Cell(r.Book.Lawn.Owner ?? "")),
        ("site", (r, csv) => csv.Cell($"lawn turf, {r.Place}")),
        ("area_sq_ft", (r, csv) => csv.Cell(r.What.Area.SquareFeet)),
        ("area_m2", (r, csv) => csv.Cell(r.What.Area.SquareMeters)),
        ("kind", (r, csv) => csv.Cell(RecordText.Kind(r.What.Kind))),
        ("product", (r, csv) => csv.Cell(r.What.Product)),
        ("registration_number", (r, csv) => csv.Cell(r.What.RegistrationNumber ?? "")),
        ("active_ingredients_g", (r, csv) => csv.Cell(string.Join("; ", r.What.Actives.Select(a => FormattableString.Invariant($"{a.Name} {a.Amount.Grams:0.######}"))))),
        ("product_lb", (r, csv) => csv.Cell(r.What.Amount.Mass?.Pounds)),
        ("product_kg", (r, csv) => csv.Cell(r.What.Amount.Mass?.Kilograms)),
        ("product_fl_oz", (r, csv) => csv.Cell(r.What.Amount.Volume?.FluidOunces)),
        ("product_ml", (r, csv) => csv.Cell(r.What.Amount.Volume?.Milliliters)),
        ("carrier_gal", (r, csv) => csv.Cell(r.What.Carrier?.Gallons)),
        ("carrier_l", (r, csv) => csv.Cell(r.What.Carrier?.Liters)),
        ("target", (r, csv) => csv.Cell(r.What.Target ?? "")),
        ("method", (r, csv) => csv.Cell(r.What.Method ?? "")),
        .. Weather("start", r => r.What.AtStart),
        .. Weather("end", r => r.What.AtEnd),
        ("applicator", (r, csv) => csv.Cell(r.What.Applicator ?? "")),
        ("license_number", (r, csv) => csv.Cell(r.What.License ?? "")),
        ("reentry", (r, csv) => csv.Cell(r.What.Reentry ?? "")),
        ("deviation", (r, csv) => csv.Cell(r.What.Deviation ?? "")),
        ("remark", (r, csv) => csv.Cell(r.Entry.Remark ?? "")),
        ("missing", (r, csv) => csv.Cell(string.Join("; ", r.Missing))),
        ("against_rules", (r, csv) => csv.Cell(string.Join(" ", r.Law.Where(f => f.Standing is LawStanding.Breaks).Select(f => $"{f.Rule}: {f.Statement}")))),
        ("not_settled", (r, csv) => csv.Cell(string.Join(" ", r.Law.Where(f => f.Standing is LawStanding.Unsettled).Select(f => $"{f.Rule}: {f.Statement}")))),
        ("record_id", (r, csv) => csv.Cell(r.Entry.Id.ToString("D"))),
        ("corrects_id", (r, csv) => csv.Cell(r.What.Replaces?.ToString("D") ?? "")),
    ];

    /// <summary>The table by RFC 4180 with a byte-order mark, in order of time; a corrected version follows the one that stands in its place.</summary>
    public static string Write(RecordBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var csv = new CsvText();
        foreach (var (name, _) in Columns)
        {
            csv.Cell(name);
        }

        csv.EndRow();
        foreach (var row in Rows(book))
        {
            foreach (var (_, write) in Columns)
            {
                write(row, csv);
            }

            csv.EndRow();
        }

        return csv.ToString();
    }

    private static IEnumerable<Row> Rows(RecordBook book)
    {
        var written = new HashSet<Guid>();
        foreach (var record in book.Years.OrderBy(year => year.Year).SelectMany(year => year.Records))
        {
            var struck = record.State is EntryState.Struck;
            var state = struck ? "struck" : record.Rivals.Count > 0 ? "stands, disputed" : "stands";
            yield return new(book, record.Entry, record.Place, state, struck ? record.StruckWhy : record.Entry.What.Why, [.. record.Missing.Select(m => m.Name)], record.Law);
            foreach (var earlier in record.Earlier.Where(e => written.Add(e.Entry.Id)))
            {
                yield return new(book, earlier.Entry, record.Place, "corrected", earlier.Why, [], []);
            }
        }
    }

    private static IEnumerable<(string Name, Func<Row, CsvText, CsvText> Write)> Weather(string when, Func<Row, FieldWeather?> read) =>
    [
        ($"wind_{when}_mph", (r, csv) => csv.Cell(read(r)?.Wind?.MilesPerHour)),
        ($"wind_{when}_m_s", (r, csv) => csv.Cell(read(r)?.Wind?.MetersPerSecond)),
        ($"gust_{when}_mph", (r, csv) => csv.Cell(read(r)?.Gust?.MilesPerHour)),
        ($"gust_{when}_m_s", (r, csv) => csv.Cell(read(r)?.Gust?.MetersPerSecond)),
        ($"wind_{when}_from", (r, csv) => csv.Cell(read(r)?.From is { } from ? RecordText.From(from) : "")),
        ($"air_{when}_f", (r, csv) => csv.Cell(read(r)?.Air?.Fahrenheit)),
        ($"air_{when}_c", (r, csv) => csv.Cell(read(r)?.Air?.Celsius)),
        ($"humidity_{when}_percent", (r, csv) => csv.Cell(read(r)?.Humidity?.Percent)),
    ];

    private static string Text(DateTimeOffset? at, string format) => at?.ToString(format, CultureInfo.InvariantCulture) ?? "";

    /// <summary>One record as it was written.</summary>
    private sealed record Row(RecordBook Book, LogEntry.Applied Entry, string Place, string State, string? Reason, IReadOnlyList<string> Missing, IReadOnlyList<LawFinding> Law)
    {
        public Application What => Entry.What;
    }
}
