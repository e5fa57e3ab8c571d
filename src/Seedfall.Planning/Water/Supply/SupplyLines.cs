using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water.Supply;

/// <summary>Taps, the pipe they share, the well behind them and the timers, as the proof reckons with them.</summary>
/// <param name="Taps">The first tap and the further ones.</param>
/// <param name="Main">Flow of all taps together, the household's own kept off; null for a single tap.</param>
/// <param name="Timers">Timers as described; empty where none is, even where there is one.</param>
/// <param name="Timed">True where a timer can start rounds.</param>
/// <param name="Figures">Flow of the taps together, what is kept for the household, what the well gives.</param>
internal sealed record SupplyLines(
    IReadOnlyList<TimetableTap> Taps, FlowRate? Main, IReadOnlyList<TimetableTimer> Timers, bool Timed, IReadOnlyList<Figure> Figures)
{
    internal const string FirstTap = "tap";

    /// <summary>Share of a tap left to the lawn however much is kept back: a reserve above that is a slip. Assumed.</summary>
    private const double LeastShare = 0.05;

    /// <summary>Hours a day a well is looked at.</summary>
    private const double Day = 24.0;

    internal static SupplyLines Of(WaterSupply? supply, TapFacts first)
    {
        var further = supply?.OtherTaps ?? [];
        var (reserved, hours) = (supply?.Reserved ?? FlowRate.Zero, Hours(supply));
        var wells = further.Count + 1;
        WellLimit? well = supply?.Well is { } whole ? new WellLimit(whole.Stored * (1.0 / wells), whole.Recovery * (1.0 / wells)) : null;
        var firstTap = new TimetableTap(further.Count == 0 ? FirstTap : "first tap", first.Flow) { Reserved = Kept(first.Flow, reserved), Household = hours, Well = well };
        TimetableTap[] taps = [firstTap, .. further.Select(tap => new TimetableTap(tap.Name, tap.Flow) { Well = well })];
        var together = SharedMain.Flow([.. taps.Select(t => t.Flow)], supply?.Together);
        FlowRate? main = further.Count == 0 ? null : new FlowRate(together.Value) - Kept(new FlowRate(together.Value), reserved);
        return new SupplyLines(taps, main, supply?.Timers ?? [], supply?.Timer == true || supply?.Timers.Count > 0, FiguresOf(supply, taps, together, reserved));
    }

    /// <summary>Most that may be drawn at a tap, the household's reserve kept off; at the first tap where none is named.</summary>
    internal FlowRate Free(string? tap)
    {
        var at = Taps.FirstOrDefault(t => t.Name == tap) ?? Taps[0];
        var free = at.Flow - at.Reserved;
        return Main is { } main && main < free ? main : free;
    }

    /// <summary>One more tap as strong as the first, on a pipe strong enough.</summary>
    internal SupplyLines WithTap() => this with
    {
        Taps = [.. Taps, Taps[0] with { Name = $"tap {Taps.Count + 1}", Household = [], Reserved = FlowRate.Zero }],
        Main = Main is { } main ? main + Taps[0].Flow : null,
    };

    /// <summary>A timer on every tap, able to hold whatever is asked of it.</summary>
    internal SupplyLines WithTimers() => this with { Timed = true, Timers = [] };

    private static FlowRate Kept(FlowRate flow, FlowRate reserved) => reserved < flow * (1.0 - LeastShare) ? reserved : flow * (1.0 - LeastShare);

    private static IReadOnlyList<HouseholdUse> Hours(WaterSupply? supply) =>
        [.. supply?.Household.Select(use => new HouseholdUse(new MinuteSpan(Minute(use.From), Minute(use.To)), use.Flow)) ?? []];

    private static int Minute(TimeOnly time) => time == new TimeOnly(23, 59) ? WateringHours.MinutesPerDay : (int)time.ToTimeSpan().TotalMinutes;

    private static IReadOnlyList<Figure> FiguresOf(WaterSupply? supply, IReadOnlyList<TimetableTap> taps, Figure together, FlowRate reserved)
    {
        List<Figure> figures = taps.Count > 1 ? [together] : [];
        if (reserved > FlowRate.Zero)
        {
            figures.Add(new Figure("water.reserved", "Kept for the household at all hours", QuantityKind.FlowRate, reserved.LitersPerMinute, new Working(
                "R as entered", [new("R", "kept free", reserved.GallonsPerMinute, "gpm")], "entered for this lawn", Sureness.Measured)));
        }

        if (supply?.Well is { } well)
        {
            figures.Add(WellYield.Within(well, Day));
            if (WellYield.LongestRun(well, taps[0].Flow) is { } longest)
            {
                figures.Add(longest);
            }
        }

        return figures;
    }
}
