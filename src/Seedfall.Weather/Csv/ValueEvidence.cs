using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>What the numbers of a table betray about their unit, gathered before any is converted.</summary>
internal sealed class ValueEvidence
{
    private readonly bool[] _hasPoint = new bool[Elements.Count];
    private readonly bool[] _hasFraction = new bool[Elements.Count];
    private readonly double[] _highest = [.. Enumerable.Repeat(double.MinValue, Elements.Count)];

    internal void See(Element e, CellValue cell)
    {
        _hasPoint[(int)e] |= cell.HasPoint;
        _hasFraction[(int)e] |= cell.Value != Math.Truncate(cell.Value);
        _highest[(int)e] = Math.Max(_highest[(int)e], cell.Value);
    }

    /// <summary>True where at least one number of the quantity is written with a decimal point.</summary>
    internal bool HasPoint(Element e) => _hasPoint[(int)e];

    /// <summary>True where at least one number of the quantity is not whole.</summary>
    internal bool HasFraction(Element e) => _hasFraction[(int)e];

    internal double Highest(Element e) => _highest[(int)e];

    internal static Facts Of(List<Row> rows)
    {
        var max = Sorted(rows, r => r.Maybe(Element.TmaxC));
        var ranges = Sorted(rows, r => r.Has(Element.TmaxC) && r.Has(Element.TminC) ? r[Element.TmaxC] - r[Element.TminC] : null);
        var min = Sorted(rows, r => r.Maybe(Element.TminC));
        var rain = rows.Where(r => r.Has(Element.RainMm)).ToList();
        return new Facts(
            max.Count == 0 ? null : max[(int)((max.Count - 1) * 0.98)],
            ranges.Count == 0 ? null : ranges.Average(),
            min.Count == 0 ? null : min.Average(),
            max.Count,
            MonthCount(rows),
            rain.Count == 0 ? null : rain.Sum(r => r[Element.RainMm]) * 365.25 / rain.Count,
            rain.Count);
    }

    private static List<double> Sorted(List<Row> rows, Func<Row, double?> value)
    {
        var values = rows.Select(value).OfType<double>().ToList();
        values.Sort();
        return values;
    }

    private static int MonthCount(List<Row> rows) =>
        rows.Where(r => r.Has(Element.TmaxC)).Select(r => DateOnly.FromDayNumber(r.Day).Month).Distinct().Count();

    /// <summary>Figures in the file's own, still unknown unit; null where there is nothing to take them from.</summary>
    /// <param name="HighTmax">The highest temperature that 98 % of the days stay at or below.</param>
    /// <param name="MeanRange">Mean of highest less lowest temperature.</param>
    /// <param name="MeanTmin">Mean of the lowest temperatures.</param>
    /// <param name="TemperatureDays">Days with a highest temperature.</param>
    /// <param name="Months">Calendar months seen.</param>
    /// <param name="RainPerYear">Rain of a year.</param>
    /// <param name="RainDays">Days with a rain reading.</param>
    internal sealed record Facts(
        double? HighTmax, double? MeanRange, double? MeanTmin, int TemperatureDays, int Months, double? RainPerYear, int RainDays)
    {
        /// <summary>True where every month was seen, so that a summer is among the days.</summary>
        internal bool HasWholeYear => Months == 12 && TemperatureDays >= 300;

        internal bool HasYearOfRain => RainDays >= 300 && Months == 12;
    }
}
