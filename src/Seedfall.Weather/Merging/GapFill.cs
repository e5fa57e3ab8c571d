using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Merging;

/// <summary>
/// Rows to days. Temperatures missing for at most three days run in a straight line between the days around them, rain
/// missing for at most three days is 0; such days are marked. Longer gaps stay out.
/// </summary>
internal static class GapFill
{
    internal const int LongestFilledDays = 3;

    internal sealed record Result(WeatherDay[] Days, List<WeatherGap> Gaps);

    /// <param name="rows">One row a day, ascending.</param>
    internal static Result Fill(List<Row> rows)
    {
        var first = rows.FindIndex(IsComplete);
        var last = rows.FindLastIndex(IsComplete);
        if (first < 0)
        {
            return new Result([], []);
        }

        var slots = Slots(rows, first, last);
        MarkFillable(slots, s => s.HasTemperatures, (s, ok) => s.TemperaturesOk = ok);
        MarkFillable(slots, s => s.HasRain, (s, ok) => s.RainOk = ok);
        return new Result([.. Days(slots)], Gaps(slots));
    }

    private static bool IsComplete(Row row) => row.Has(Element.TmaxC) && row.Has(Element.TminC) && row.Has(Element.RainMm);

    private static Slot[] Slots(List<Row> rows, int first, int last)
    {
        var firstDay = rows[first].Day;
        var slots = new Slot[rows[last].Day - firstDay + 1];
        for (var i = 0; i < slots.Length; i++)
        {
            slots[i] = new Slot { Row = new Row { Day = firstDay + i, Hour = -1 } };
        }

        for (var i = first; i <= last; i++)
        {
            var slot = slots[rows[i].Day - firstDay];
            slot.Row = rows[i];
            slot.HasTemperatures = rows[i].Has(Element.TmaxC) && rows[i].Has(Element.TminC);
            slot.HasRain = rows[i].Has(Element.RainMm);
        }

        return slots;
    }

    private static void MarkFillable(Slot[] slots, Func<Slot, bool> has, Action<Slot, bool> mark)
    {
        for (var i = 0; i < slots.Length;)
        {
            var end = i;
            while (end < slots.Length && !has(slots[end]))
            {
                end++;
            }

            var ok = end - i <= LongestFilledDays;
            for (; i < end; i++)
            {
                mark(slots[i], ok);
            }

            if (i < slots.Length)
            {
                mark(slots[i++], true);
            }
        }
    }

    private static IEnumerable<WeatherDay> Days(Slot[] slots)
    {
        for (var i = 0; i < slots.Length; i++)
        {
            if (slots[i].IsUsable)
            {
                yield return Day(slots, i);
            }
        }
    }

    private static WeatherDay Day(Slot[] slots, int i)
    {
        var slot = slots[i];
        var row = slot.Row;
        var (max, min) = slot.HasTemperatures ? (row[Element.TmaxC], row[Element.TminC]) : Between(slots, i);
        return new WeatherDay(DateOnly.FromDayNumber(row.Day), max, min, slot.HasRain ? row[Element.RainMm] : 0.0)
        {
            MeanC = row.Maybe(Element.MeanC),
            SolarMJ = Tidied(row, Element.SolarMJ),
            HumidityMaxPct = Tidied(row, Element.HumidityMaxPct),
            HumidityMinPct = Tidied(row, Element.HumidityMinPct),
            HumidityMeanPct = Tidied(row, Element.HumidityMeanPct),
            WindMs = row.Maybe(Element.WindMs),
            Soil5CmC = row.Maybe(Element.Soil5CmC),
            SoilMoisture5Cm = row.Maybe(Element.SoilMoisture5Cm),
            Quality = slot.IsFilled || row.WasFilled ? DayQuality.Interpolated : DayQuality.Measured,
        };
    }

    private static double? Tidied(in Row row, Element e) => row.Maybe(e) is { } value ? Elements.Tidy(e, value) : null;

    /// <summary>Both temperatures in a straight line between the nearest days that have them; lowest stays at or below highest.</summary>
    private static (double Max, double Min) Between(Slot[] slots, int i)
    {
        var (before, after) = (i, i);
        while (!slots[before].HasTemperatures)
        {
            before--;
        }

        while (!slots[after].HasTemperatures)
        {
            after++;
        }

        var share = (double)(i - before) / (after - before);
        var (a, b) = (slots[before].Row, slots[after].Row);
        return (Blend(a[Element.TmaxC], b[Element.TmaxC], share), Blend(a[Element.TminC], b[Element.TminC], share));
    }

    /// <summary>Written so that rounding keeps a lower line at or below a higher one, with the same bits on every machine.</summary>
    private static double Blend(double a, double b, double share) => a * (1.0 - share) + b * share;

    private static List<WeatherGap> Gaps(Slot[] slots)
    {
        var gaps = new List<WeatherGap>();
        for (var i = 0; i < slots.Length;)
        {
            if (slots[i].Lacks is null)
            {
                i++;
                continue;
            }

            var end = i;
            while (end < slots.Length && slots[end].Lacks is not null && slots[end].IsUsable == slots[i].IsUsable)
            {
                end++;
            }

            var kind = slots[i..end].GroupBy(s => s.Lacks!.Value).MaxBy(g => g.Count())!.Key;
            gaps.Add(new WeatherGap(Date(slots[i]), Date(slots[end - 1]), end - i, kind, slots[i].IsUsable));
            i = end;
        }

        return gaps;
    }

    private static DateOnly Date(Slot slot) => DateOnly.FromDayNumber(slot.Row.Day);

    /// <summary>One calendar day and what is known of it.</summary>
    private sealed class Slot
    {
        internal Row Row { get; set; }

        internal bool HasTemperatures { get; set; }

        internal bool HasRain { get; set; }

        internal bool TemperaturesOk { get; set; }

        internal bool RainOk { get; set; }

        internal bool IsUsable => TemperaturesOk && RainOk;

        internal bool IsFilled => IsUsable && !(HasTemperatures && HasRain);

        internal GapKind? Lacks => Row.IsEmpty ? GapKind.NoRows : !HasTemperatures ? GapKind.Temperature : !HasRain ? GapKind.Rain : null;
    }
}
