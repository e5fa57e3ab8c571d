using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>What a column is for.</summary>
internal enum ColumnRole
{
    Unknown,
    Value,
    Date,
    Year,
    Month,
    Day,
    StationId,
    StationName,
    Latitude,
    Longitude,
    Elevation,
    Attributes,
    Quality,
    MultiDayRain,
    MultiDayCount,
}

/// <summary>Unit a column's header names.</summary>
internal enum ColumnUnit
{
    None,
    Celsius,
    Fahrenheit,
    Kelvin,
    Millimeters,
    Centimeters,
    Inches,
    MegajoulesPerM2,
    KilowattHoursPerM2,
    WattsPerM2,
    Percent,
    MetersPerSecond,
    KilometersPerHour,
    MilesPerHour,
    Knots,
    VolumeFraction,
    Meters,
    Feet,
}

/// <summary>A header as a role, a quantity and a unit: <c>tmax_c</c>, <c>TMAX (°F)</c> and <c>Max temp [degC]</c> are all understood.</summary>
/// <param name="Text">The header as it stands.</param>
/// <param name="Role">What the column is for.</param>
/// <param name="Element">The quantity, for <see cref="ColumnRole.Value"/> and <see cref="ColumnRole.Attributes"/>.</param>
/// <param name="Unit">The unit the header names.</param>
/// <param name="WindHeightM">Height of the wind measurement where the header says it, m.</param>
internal sealed record HeaderName(string Text, ColumnRole Role, Element Element, ColumnUnit Unit, double? WindHeightM)
{
    internal static HeaderName Parse(string text)
    {
        var words = Words(text);
        if (words.Count > 1 && words[^1] == "attributes")
        {
            var owner = HeaderWords.Quantity(string.Concat(words.Take(words.Count - 1)));
            return new HeaderName(text, owner is null ? ColumnRole.Unknown : ColumnRole.Attributes, owner ?? default, ColumnUnit.None, null);
        }

        var unit = HeaderWords.TakeUnit(words);
        var height = HeaderWords.TakeWindHeight(words);
        var name = string.Concat(words);
        return HeaderWords.Quantity(name) is { } element
            ? new HeaderName(text, ColumnRole.Value, element, unit, height)
            : new HeaderName(text, HeaderWords.Role(name), default, unit, null);
    }

    /// <summary>Runs of letters and digits in lower case; the degree sign and the percent sign as words.</summary>
    private static List<string> Words(string text)
    {
        var words = new List<string>();
        var word = new System.Text.StringBuilder();
        foreach (var c in text.Replace("%", " pct ", StringComparison.Ordinal) + " ")
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                word.Append(char.ToLowerInvariant(c));
            }
            else if (word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }

        return words;
    }
}
