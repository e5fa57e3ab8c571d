using Seedfall.Engine.Units;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Fit hours put together, and the others counted.</summary>
internal static class SprayStretches
{
    /// <summary>Runs of hours that follow one another, all fit, long enough for the work.</summary>
    internal static IReadOnlyList<SprayStretch> In(IReadOnlyList<SprayHour> hours, double workHours)
    {
        var found = new List<SprayStretch>();
        for (var i = 0; i < hours.Count;)
        {
            var end = i;
            while (end < hours.Count && hours[end].Verdict == SprayVerdict.Go && (end == i || hours[end].Hour.Start == hours[end - 1].Hour.Start.AddHours(1.0)))
            {
                end++;
            }

            if (end - i >= workHours)
            {
                found.Add(new(hours[i].Hour.Start, hours[end - 1].Hour.Start.AddHours(1.0), new Speed(hours.Skip(i).Take(end - i).Max(h => h.Moment.NozzleMs ?? 0.0))));
            }

            i = Math.Max(end, i + 1);
        }

        return found;
    }

    /// <summary>First reasons of the hours of daylight that are not fit.</summary>
    internal static IReadOnlyList<SprayAgainst> Against(IReadOnlyList<SprayHour> hours) =>
    [
        .. hours.Where(h => h.Daylight && h.Verdict != SprayVerdict.Go)
            .GroupBy(h => h.Reasons[0].Id, StringComparer.Ordinal)
            .Select(g => new SprayAgainst(g.Key, g.Count()))
            .OrderByDescending(a => a.Hours).ThenBy(a => a.Id, StringComparer.Ordinal),
    ];
}
