using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water.Supply;

/// <summary>What a well gives in a stretch of hours.</summary>
public static class WellYield
{
    private const double MinutesPerHour = 60.0;

    /// <summary>V = S + R t: what stands ready and what comes back, the well full at the start.</summary>
    /// <param name="well">Stored water above the pump, and recovery.</param>
    /// <param name="hours">Hours; not negative.</param>
    public static Figure Within(WellLimit well, double hours)
    {
        ArgumentNullException.ThrowIfNull(well);
        ArgumentOutOfRangeException.ThrowIfNegative(hours);
        return new Figure("water.well.yield", "Water the well gives", QuantityKind.Volume, well.Stored.Liters + (well.Recovery.LitersPerMinute * MinutesPerHour * hours), new Working(
            "V = S + R t",
            [new("S", "standing above the pump", well.Stored.Gallons, "gal"), new("R", "recovery", well.Recovery.GallonsPerMinute, "gpm"), new("t", "hours", hours, "h")],
            "arithmetic on this well's test",
            Sureness.Computed,
            "A well that is full gives back nothing: hours at rest beyond that do not count."));
    }

    /// <summary>Minutes a draw can run before the well is dry: S / (Q - R); null where it never is.</summary>
    public static Figure? LongestRun(WellLimit well, FlowRate draw)
    {
        ArgumentNullException.ThrowIfNull(well);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draw.LitersPerMinute, nameof(draw));
        var netLpm = draw.LitersPerMinute - well.Recovery.LitersPerMinute;
        return netLpm <= 0.0 ? null : new Figure("water.well.longest-run", "Longest run from a full well", QuantityKind.Minutes, well.Stored.Liters / netLpm, new Working(
            "t = S / (Q - R)",
            [new("S", "standing above the pump", well.Stored.Gallons, "gal"), new("Q", "draw", draw.GallonsPerMinute, "gpm"), new("R", "recovery", well.Recovery.GallonsPerMinute, "gpm")],
            "arithmetic on this well's test",
            Sureness.Computed));
    }
}
