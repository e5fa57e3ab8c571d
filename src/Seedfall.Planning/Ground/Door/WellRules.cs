using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground.Door;

/// <summary>The well, and what the household keeps for itself.</summary>
internal static class WellRules
{
    /// <summary>A well always holds something above its pump; with nothing in it no run could start.</summary>
    private const double MostStoredLiters = 1_000_000.0;

    internal static void Check(WaterSupply water, Findings found)
    {
        if (water.Well is { } well)
        {
            found.Above("water.well.stored", well.Stored.Liters, MostStoredLiters, "L");
            found.Range("water.well.recovery", well.Recovery.LitersPerMinute, 0.0, TapRules.MostTapLitersPerMinute, "L/min");
        }

        Reserved(water, found);
        for (var i = 0; i < water.Household.Count; i++)
        {
            WaterRules.Hours(water.Household[i].From, water.Household[i].To, $"water.household[{i}]", found);
            found.Above($"water.household[{i}].flow", water.Household[i].Flow.LitersPerMinute, TapRules.MostTapLitersPerMinute, "L/min");
        }
    }

    /// <summary>What is kept at all hours must leave something for the lawn.</summary>
    private static void Reserved(WaterSupply water, Findings found)
    {
        found.Range("water.reserved", water.Reserved?.LitersPerMinute, 0.0, TapRules.MostTapLitersPerMinute, "L/min");
        if (water.Reserved is { } kept && TapRules.FirstLpm(water) is { } first)
        {
            var all = water.Together is { LitersPerMinute: > 0.0 and var together } ? together : water.OtherTaps.Select(t => t.Flow.LitersPerMinute).Append(first).Max();
            if (kept.LitersPerMinute <= TapRules.MostTapLitersPerMinute && kept.LitersPerMinute >= all)
            {
                found.Add("water.reserved", Findings.Text(kept.LitersPerMinute, "L/min"), $"less than the {Findings.Text(all, "L/min")} there is, so that some is left for the lawn");
            }
        }
    }
}
