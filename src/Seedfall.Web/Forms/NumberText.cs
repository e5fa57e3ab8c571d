using System.Globalization;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Forms;

/// <summary>Numbers as people type them: <c>1,250</c>, <c>12.5</c>, <c>12,5</c>, <c>2 3/4</c>.</summary>
internal static partial class NumberText
{
    /// <summary>The number, or null where the text is none. Grouping commas need three digits after each.</summary>
    public static double? Parse(string text)
    {
        text = text.Trim();
        var fraction = Fraction().Match(text);
        if (fraction.Success)
        {
            var whole = fraction.Groups[1].Success ? double.Parse(fraction.Groups[1].Value, CultureInfo.InvariantCulture) : 0.0;
            var below = double.Parse(fraction.Groups[3].Value, CultureInfo.InvariantCulture);
            return below == 0.0 ? null : whole + double.Parse(fraction.Groups[2].Value, CultureInfo.InvariantCulture) / below;
        }

        return double.TryParse(Plain(text), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : null;
    }

    /// <summary>Money keeps its cents as typed, for example <c>39.00</c>; null where the text is no decimal number.</summary>
    public static decimal? ParseMoney(string text) =>
        decimal.TryParse(Plain(text.Trim()), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;

    /// <summary>Without grouping commas, a decimal comma made a point.</summary>
    private static string Plain(string text) =>
        Grouped().IsMatch(text) ? text.Replace(",", "", StringComparison.Ordinal) : DecimalComma().IsMatch(text) ? text.Replace(',', '.') : text;

    /// <summary>A number for a field: up to seven significant digits, no exponent.</summary>
    public static string Write(double value)
    {
        var rounded = double.Parse(value.ToString("G7", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return rounded.ToString("0.##########", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"^(?:(\d{1,6})\s+)?(\d{1,4})\s*/\s*(\d{1,4})$")]
    private static partial Regex Fraction();

    [GeneratedRegex(@"^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$")]
    private static partial Regex Grouped();

    [GeneratedRegex(@"^[+-]?\d*,\d+$")]
    private static partial Regex DecimalComma();
}
