namespace Seedfall.Weather.Merging;

/// <summary>Values of one day that contradict each other, left out before the day is used.</summary>
internal static class RowTidying
{
    /// <summary>A 24-hour mean may lie this far outside the extremes by rounding alone, degC.</summary>
    private const double MeanSlackC = 0.5;

    internal static void Tidy(List<Row> rows, List<string> notes)
    {
        var (means, humidities) = (0, 0);
        foreach (ref var row in System.Runtime.InteropServices.CollectionsMarshal.AsSpan(rows))
        {
            means += DropMean(ref row) ? 1 : 0;
            humidities += DropHumidity(ref row) ? 1 : 0;
        }

        if (means > 0)
        {
            notes.Add(FormattableString.Invariant($"Mean temperature outside the day's extremes left out on {means} days."));
        }

        if (humidities > 0)
        {
            notes.Add(FormattableString.Invariant($"Lowest humidity above the highest, both left out on {humidities} days."));
        }
    }

    private static bool DropMean(ref Row row)
    {
        if (row.Maybe(Element.MeanC) is not { } mean || row.Maybe(Element.TmaxC) is not { } max || row.Maybe(Element.TminC) is not { } min
            || (mean <= max + MeanSlackC && mean >= min - MeanSlackC))
        {
            return false;
        }

        row.Remove(Element.MeanC);
        return true;
    }

    private static bool DropHumidity(ref Row row)
    {
        if (row.Maybe(Element.HumidityMaxPct) is not { } max || row.Maybe(Element.HumidityMinPct) is not { } min || min <= max)
        {
            return false;
        }

        row.Remove(Element.HumidityMaxPct);
        row.Remove(Element.HumidityMinPct);
        return true;
    }
}
