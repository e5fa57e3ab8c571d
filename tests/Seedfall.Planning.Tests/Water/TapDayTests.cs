using Seedfall.Engine.Workings;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Water;

/// <summary>Patches' rounds as they run on one tap; times reckoned by hand.</summary>
public sealed class TapDayTests
{
    private static readonly DateOnly Saturday = new(2026, 8, 15);

    private static readonly Working None = new("", [], "test", Sureness.Measured);

    [Fact]
    public void Sets_run_one_after_another_and_a_shared_one_once_for_its_thirstiest_patch()
    {
        var day = TapDay.Week(WaterLawn.Lawn(WaterLawn.Supply()), [Patch("Front", ("rotors", 17, 1)), Patch("Side", ("sprays", 4, 1)), Patch("Swing", ("sprays", 6, 1))])[0];
        Assert.Equal([(new TimeOnly(7, 0), "rotors", 17), (new TimeOnly(7, 17), "sprays", 6)], day.Runs.Select(r => (r.Start, r.SetName, r.Minutes)));
        Assert.Equal(["Side", "Swing"], day.Runs[1].PatchNames);
        Assert.Equal([2], TapRound.Of(day.Runs).Select(r => r.Runs.Count));
    }

    [Fact]
    public void A_hose_moved_by_hand_takes_all_its_positions_before_the_next_set()
    {
        var day = TapDay.Week(WaterLawn.Lawn(WaterLawn.Supply()), [Patch("Front", ("hose", 20, 4)), Patch("Side", ("sprays", 5, 1))])[0];
        Assert.Equal(80, day.Runs[0].AllMinutes);
        Assert.Equal(new TimeOnly(8, 20), day.Runs[1].Start);
    }

    [Fact]
    public void A_run_that_outlasts_the_allowed_hours_is_marked()
    {
        var supply = WaterLawn.Supply() with { Allowed = [WaterLawn.Window(WeekDays.Saturday, 6, 8)] };
        var day = TapDay.Week(WaterLawn.Lawn(supply), [Patch("Front", ("hose", 20, 2)), Patch("Side", ("sprays", 25, 1))])[0];
        Assert.Equal([true, false], day.Runs.Select(r => r.Allowed));
        var permit = TapDay.Week(WaterLawn.Lawn(supply with { NewSeedPermit = true }), [Patch("Side", ("sprays", 90, 1))])[0];
        Assert.True(Assert.Single(permit.Runs).Allowed);
    }

    [Fact]
    public void Patches_that_are_not_watered_leave_the_others_alone()
    {
        var idle = new PatchWatering("side", "Side", WateringLack.Seed, null, null, []);
        Assert.Empty(TapDay.Week(WaterLawn.Lawn(WaterLawn.Supply()), [idle]));
        Assert.Single(TapDay.Week(WaterLawn.Lawn(WaterLawn.Supply()), [idle, Patch("Front", ("rotors", 9, 1))])[0].Runs);
    }

    /// <summary>A patch with one round at 7 on Saturday.</summary>
    private static PatchWatering Patch(string name, params (string Set, int Minutes, int Positions)[] runs)
    {
        var depth = new Figure("depth", "Depth", QuantityKind.Depth, 2.0, None);
        var round = new DailyRound(new TimeOnly(7, 0), depth, [.. runs.Select(r => new DailyRun(r.Set, new Figure(r.Set, r.Set, QuantityKind.Minutes, r.Minutes, None)))]);
        var plan = new DailyPlan("", [], [round], [new DailyOutlook(Saturday, 1, depth, false, [round])], [], [], []);
        return new PatchWatering(name, name, WateringLack.None, Saturday, plan, [.. runs.Select(r => new DailySet(r.Set, 10.0, 1.0, 50.0, r.Positions))]);
    }
}
