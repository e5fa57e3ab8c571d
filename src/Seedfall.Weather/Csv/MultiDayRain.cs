using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>
/// Rain that an observer found after several days (GHCN elements MDPR, its sum, and DAPR, its days): spread evenly over those
/// days where they have no rain of their own, so that a short gap is not filled with dry days.
/// </summary>
internal sealed class MultiDayRain
{
    private const int MostDays = 10;

    private readonly List<(int LastDay, double Total, int Days)> _sums = [];

    /// <param name="lastDay">Day of the reading.</param>
    /// <param name="total">Sum in the unit of the rain column.</param>
    /// <param name="days">Days in the sum; 0 where not said.</param>
    internal void See(int lastDay, double total, int days)
    {
        if (lastDay > 0 && total >= 0 && days is >= 1 and <= MostDays)
        {
            _sums.Add((lastDay, total, days));
        }
    }

    internal void Spread(FileDraft file)
    {
        if (_sums.Count == 0)
        {
            return;
        }

        var byDay = new Dictionary<int, int>(file.Rows.Count);
        for (var i = 0; i < file.Rows.Count; i++)
        {
            byDay.TryAdd(file.Rows[i].Day, i);
        }

        foreach (var (lastDay, total, days) in _sums)
        {
            for (var day = lastDay - days + 1; day <= lastDay; day++)
            {
                Put(file, byDay, day, total / days);
            }
        }
    }

    private static void Put(FileDraft file, Dictionary<int, int> byDay, int day, double rain)
    {
        if (!byDay.TryGetValue(day, out var index) || file.Rows[index].Has(Element.RainMm))
        {
            return;
        }

        var row = file.Rows[index];
        row.Set(Element.RainMm, rain);
        row.WasFilled = true;
        file.Rows[index] = row;
        file.Tally("Rain known only as the sum of several days, spread evenly over them", FormattableString.Invariant($"{DateOnly.FromDayNumber(day):yyyy-MM-dd}"));
    }
}
