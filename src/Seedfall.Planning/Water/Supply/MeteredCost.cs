using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Supply;

/// <summary>A season's water on a meter with price steps.</summary>
internal static class MeteredCost
{
    /// <summary>Days of a billing period. Assumed: about a month.</summary>
    internal const int PeriodDays = 30;

    /// <summary>
    /// Cost of a season's water on top of the household's, billing period by billing period from the first watering day: the volume is
    /// spread over the days as the phases' rainless need is.
    /// </summary>
    /// <param name="volume">Water for the season.</param>
    /// <param name="phases">First day, days and rainless liters of each phase.</param>
    /// <param name="meter">Price steps.</param>
    /// <param name="household">The household's own use in a period.</param>
    internal static Figure Of(Figure volume, IReadOnlyList<(DateOnly From, int Days, double Liters)> phases, MeterPrice meter, Volume household)
    {
        var first = phases.Min(p => p.From);
        var whole = phases.Sum(p => p.Liters);
        var periods = new SortedDictionary<int, double>();
        foreach (var (from, days, liters) in phases)
        {
            for (var day = 0; day < days; day++)
            {
                var period = (from.DayNumber + day - first.DayNumber) / PeriodDays;
                periods[period] = periods.GetValueOrDefault(period) + (whole > 0.0 ? volume.Value * liters / days / whole : 0.0);
            }
        }

        return Over(periods, meter, household, new Figure("water.season.cost", "Cost of the season's water", QuantityKind.Money, 0.0, new Working(
            "", [], "price steps entered for this meter; periods of 30 days from the first watering assumed", Sureness.Computed)), "water for the lawn");
    }

    /// <summary>Cost of so many liters in each billing period, on top of the household's.</summary>
    /// <param name="periods">Liters by period, counted from 0; at least one.</param>
    /// <param name="meter">Price steps.</param>
    /// <param name="household">The household's own use in a period.</param>
    /// <param name="blank">Id, label, source and note of the figure.</param>
    /// <param name="water">What the liters are, in words.</param>
    internal static Figure Over(SortedDictionary<int, double> periods, MeterPrice meter, Volume household, Figure blank, string water)
    {
        var costs = periods.Values.Select(liters => meter.CostOf(household, new Volume(liters))).ToList();
        return blank with
        {
            Value = costs.Sum(c => c.Value),
            Working = blank.Working with
            {
                Formula = "C = sum over billing periods of bill(h + v) - bill(h)",
                Inputs =
                [
                    new("h", "household use in a period", household.Gallons, "gal"),
                    .. periods.Select(p => new WorkingInput($"v{p.Key + 1}", FormattableString.Invariant($"{water} in period {p.Key + 1}"), new Volume(p.Value).Gallons, "gal")),
                    .. costs[0].Working.Inputs.Where(input => input.Symbol.StartsWith('p')),
                ],
            },
        };
    }
}
