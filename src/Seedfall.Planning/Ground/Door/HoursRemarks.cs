using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Allowed hours that say less than they seem to: the same twice, one inside another, overlapping, or open only by night.</summary>
internal static class HoursRemarks
{
    internal static IEnumerable<Advice> Of(WaterSupply? supply)
    {
        IReadOnlyList<WateringWindow> hours = supply?.Allowed ?? [];
        for (var i = 0; i < hours.Count; i++)
        {
            for (var j = i + 1; j < hours.Count; j++)
            {
                if (Pair(hours[i], hours[j]) is { } statement)
                {
                    yield return Remark($"water.hours.{i + 1}-{j + 1}", statement);
                }
            }
        }

        if (supply is { Timer: not true, Timers.Count: 0 } && WateringHours.Limited(supply) && WateringHours.Week.All(day => WateringHours.Usable(supply, day, byHand: true).Count == 0))
        {
            yield return Remark("water.hours.night", "Watering is allowed only while nobody is up to open a tap, from 22:00 to 5:00, and no timer is known: put a timer on the tap, or ask for a new-seed permit.");
        }
    }

    private static string? Pair(WateringWindow a, WateringWindow b)
    {
        var days = a.Days & b.Days;
        if (days == WeekDays.None || a.From >= b.To || b.From >= a.To)
        {
            return null;
        }

        if (a == b)
        {
            return $"Watering hours are entered twice: {Text(a)}. Once is enough; was another day or another time meant?";
        }

        if (Inside(a, b) || Inside(b, a))
        {
            var (inner, outer) = Inside(a, b) ? (a, b) : (b, a);
            return $"Watering hours {Text(inner)} lie wholly inside {Text(outer)} and add nothing; was another day or another time meant?";
        }

        var both = new WateringWindow(days, a.From < b.From ? a.From : b.From, a.To > b.To ? a.To : b.To);
        return $"Watering hours {Text(a)} and {Text(b)} overlap: they are taken as one stretch, {Text(both)}.";
    }

    private static bool Inside(WateringWindow inner, WateringWindow outer) =>
        (inner.Days & ~outer.Days) == WeekDays.None && inner.From >= outer.From && inner.To <= outer.To;

    private static string Text(WateringWindow hours) =>
        FormattableString.Invariant($"{hours.From:HH\\:mm} to {hours.To:HH\\:mm} {(hours.Days == WeekDays.All ? "every day" : "on " + string.Join(", ", WateringHours.Week.Where(d => (hours.Days & d) != 0).Select(d => d.ToString()[..3])))}");

    private static Advice Remark(string id, string statement) => new(id, statement, "the hours entered", Sureness.Computed);
}
