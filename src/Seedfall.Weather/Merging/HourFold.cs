namespace Seedfall.Weather.Merging;

/// <summary>
/// Hours to days. A day needs at least 22 of its 24 hours of a quantity, else it lacks that quantity. Highest and lowest are
/// the extremes of the hours' own extremes (of their means where the file has none); rain is summed; sun is summed with a
/// missing hour taken as the mean of its neighbors; the rest are means.
/// </summary>
internal static class HourFold
{
    internal const int HoursNeeded = 22;

    /// <param name="hours">Hours of one place, ascending, no hour twice.</param>
    internal static List<Row> ToDays(ReadOnlySpan<Row> hours)
    {
        var days = new List<Row>();
        for (var i = 0; i < hours.Length;)
        {
            var end = i;
            while (end < hours.Length && hours[end].Day == hours[i].Day)
            {
                end++;
            }

            days.Add(ToDay(hours[i..end]));
            i = end;
        }

        return days;
    }

    private static Row ToDay(ReadOnlySpan<Row> hours)
    {
        var day = new Row { Day = hours[0].Day, Hour = -1, File = hours[0].File, Line = hours[0].Line };
        Extremes(hours, ref day);
        SetMean(hours, Element.MeanC, Element.MeanC, ref day);
        SetMean(hours, Element.HumidityMeanPct, Element.HumidityMeanPct, ref day);
        SetMean(hours, Element.WindMs, Element.WindMs, ref day);
        SetMean(hours, Element.Soil5CmC, Element.Soil5CmC, ref day);
        SetMean(hours, Element.SoilMoisture5Cm, Element.SoilMoisture5Cm, ref day);
        if (Count(hours, Element.RainMm) >= HoursNeeded)
        {
            day.Set(Element.RainMm, Sum(hours, Element.RainMm));
        }

        if (Count(hours, Element.SolarMJ) >= HoursNeeded)
        {
            day.Set(Element.SolarMJ, SolarSum(hours));
        }

        return day;
    }

    private static void Extremes(ReadOnlySpan<Row> hours, ref Row day)
    {
        var (high, low, humidityHigh, humidityLow) = (double.MinValue, double.MaxValue, double.MinValue, double.MaxValue);
        var (temperatures, humidities) = (0, 0);
        foreach (ref readonly var hour in hours)
        {
            if ((hour.Maybe(Element.TmaxC) ?? hour.Maybe(Element.MeanC)) is { } max && (hour.Maybe(Element.TminC) ?? hour.Maybe(Element.MeanC)) is { } min)
            {
                (high, low, temperatures) = (Math.Max(high, max), Math.Min(low, min), temperatures + 1);
            }

            if (hour.Maybe(Element.HumidityMeanPct) is { } humidity)
            {
                (humidityHigh, humidityLow, humidities) = (Math.Max(humidityHigh, humidity), Math.Min(humidityLow, humidity), humidities + 1);
            }
        }

        if (temperatures >= HoursNeeded)
        {
            day.Set(Element.TmaxC, high);
            day.Set(Element.TminC, low);
        }

        if (humidities >= HoursNeeded)
        {
            day.Set(Element.HumidityMaxPct, humidityHigh);
            day.Set(Element.HumidityMinPct, humidityLow);
        }
    }

    private static void SetMean(ReadOnlySpan<Row> hours, Element from, Element to, ref Row day)
    {
        var count = Count(hours, from);
        if (count >= HoursNeeded)
        {
            day.Set(to, Sum(hours, from) / count);
        }
    }

    private static int Count(ReadOnlySpan<Row> hours, Element e)
    {
        var count = 0;
        foreach (ref readonly var hour in hours)
        {
            count += hour.Has(e) ? 1 : 0;
        }

        return count;
    }

    private static double Sum(ReadOnlySpan<Row> hours, Element e)
    {
        var sum = 0.0;
        foreach (ref readonly var hour in hours)
        {
            sum += hour.Maybe(e) ?? 0.0;
        }

        return sum;
    }

    private static double SolarSum(ReadOnlySpan<Row> hours)
    {
        Span<double?> byHour = stackalloc double?[24];
        byHour.Clear();
        foreach (ref readonly var hour in hours)
        {
            byHour[hour.Hour] = hour.Maybe(Element.SolarMJ);
        }

        var sum = 0.0;
        for (var h = 0; h < 24; h++)
        {
            sum += byHour[h] ?? 0.5 * (Near(byHour, h, -1) + Near(byHour, h, 1));
        }

        return sum;
    }

    /// <summary>The nearest hour's value in one direction; 0 beyond the day, where it is night.</summary>
    private static double Near(Span<double?> byHour, int hour, int step)
    {
        for (var h = hour + step; h is >= 0 and < 24; h += step)
        {
            if (byHour[h] is { } value)
            {
                return value;
            }
        }

        return 0.0;
    }
}
