using Seedfall.Exchange.Tables;
using Seedfall.Exchange.Tests.Logs;

namespace Seedfall.Exchange.Tests.Tables;

/// <summary>The record book as an inspector's table.</summary>
public sealed class RecordsCsvTests
{
    private static readonly IReadOnlyList<IReadOnlyList<string>> Rows = Read(RecordsCsv.Write(DemoBook.Book));

    [Fact]
    public void Every_record_ever_written_is_one_row_of_as_many_cells_as_the_header()
    {
        Assert.All(Rows, row => Assert.Equal(Rows[0].Count, row.Count));
        Assert.Equal(Enumerable.Range(1, 8).Select(n => DemoBook.Id(n).ToString("D")).Order(), Rows.Skip(1).Select(row => Cell(row, "record_id")).Order());
    }

    [Fact]
    public void What_stands_what_was_corrected_what_was_struck_and_what_is_disputed_are_told_apart()
    {
        Assert.Equal(("stands", "the target was left out"), StateOf(2));
        Assert.Equal(("corrected", "the target was left out"), StateOf(1));
        Assert.Equal(("struck", "typed on the wrong lawn"), StateOf(4));
        Assert.Equal(("stands, disputed", "weighed again"), StateOf(6));
        Assert.Equal(("stands, disputed", "the bag was short"), StateOf(7));
        (string, string) StateOf(int n) => (Cell(Row(n), "state"), Cell(Row(n), "reason"));
    }

    [Fact]
    public void Quantities_stand_in_the_units_their_columns_name()
    {
        var row = Row(2);
        Assert.Equal(("0.57", "4200", "3.5", "68", "20", "61"), (Cell(row, "product_fl_oz"), Cell(row, "area_sq_ft"), Cell(row, "wind_start_mph"), Cell(row, "air_start_f"), Cell(row, "air_start_c"), Cell(row, "humidity_start_percent")));
        Assert.Equal("mesotrione 8.1", Cell(row, "active_ingredients_g"));
        Assert.Equal(("2026-09-08", "07:30", "08:05", "UTC-05:00"), (Cell(row, "date"), Cell(row, "start"), Cell(row, "end"), Cell(row, "clock_from_utc")));
        Assert.Equal(("25", ""), (Cell(Row(3), "product_lb"), Cell(Row(3), "product_fl_oz")));
    }

    [Fact]
    public void Text_that_looks_like_a_formula_is_made_text() =>
        // OWASP ASVS 5.0 item 1.2.10; RFC 4180 section 2, rules 6 and 7.
        Assert.Equal("'=1+1, a \"product\"", Cell(Row(4), "product"));

    [Fact]
    public void Rows_come_in_order_of_time_and_end_in_carriage_return_and_line_feed()
    {
        Assert.Equal("2025", Cell(Rows[1], "date")[..4]);
        var text = RecordsCsv.Write(DemoBook.Book);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.Equal('\uFEFF', text[0]);
    }

    private static IReadOnlyList<string> Row(int n) => Rows.Single(row => Cell(row, "record_id") == DemoBook.Id(n).ToString("D"));

    private static string Cell(IReadOnlyList<string> row, string column) => row[Rows[0].ToList().IndexOf(column)];

    /// <summary>RFC 4180 read back, a cell at a time.</summary>
    private static List<IReadOnlyList<string>> Read(string text)
    {
        var (rows, row, cell, quoted) = (new List<IReadOnlyList<string>>(), new List<string>(), new System.Text.StringBuilder(), false);
        text = text.TrimStart('\uFEFF');
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '"' when quoted && i + 1 < text.Length && text[i + 1] == '"':
                    cell.Append('"');
                    i++;
                    break;
                case '"':
                    quoted = !quoted;
                    break;
                case ',' when !quoted:
                    row.Add(cell.ToString());
                    cell.Clear();
                    break;
                case '\r' when !quoted:
                    row.Add(cell.ToString());
                    cell.Clear();
                    rows.Add(row);
                    row = [];
                    i++;
                    break;
                default:
                    cell.Append(text[i]);
                    break;
            }
        }

        return rows;
    }
}
