using System.Globalization;
using System.Text;

namespace Seedfall.Exchange.Tables;

/// <summary>
/// Comma-separated text by RFC 4180: CRLF, quotes where needed. Text that a spreadsheet would take for a formula gets a leading
/// apostrophe; numbers are written from numbers only, so a minus sign is never mistaken for one.
/// </summary>
internal sealed class CsvText
{
    private readonly StringBuilder _text = new("\uFEFF");
    private bool _first = true;

    internal CsvText Cell(string text)
    {
        Separate();
        var guarded = LooksLikeFormula(text) ? $"'{text}" : text;
        _text.Append(guarded.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{guarded.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : guarded);
        return this;
    }

    /// <summary>A number to at most six decimals; an empty cell for null.</summary>
    internal CsvText Cell(double? number)
    {
        Separate();
        _text.Append(number?.ToString("0.######", CultureInfo.InvariantCulture));
        return this;
    }

    internal CsvText EndRow()
    {
        _text.Append("\r\n");
        _first = true;
        return this;
    }

    public override string ToString() => _text.ToString();

    private void Separate()
    {
        if (!_first)
        {
            _text.Append(',');
        }

        _first = false;
    }

    /// <summary>Full-width forms of = + - @ count too.</summary>
    private static bool LooksLikeFormula(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\0' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20';
}
