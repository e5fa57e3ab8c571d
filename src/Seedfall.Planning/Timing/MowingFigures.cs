using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Timing;

/// <summary>The new grass's first two mowings, and when seedlings may first be sprayed: from growth, and from the log where it says more.</summary>
internal static class MowingFigures
{
    /// <summary>Least days from emergence to a spray on seedlings: four weeks (from memory, of mesotrione after emergence).</summary>
    internal const int DaysBeforeSpraying = 28;

    private const string Growth = "leaf appearance of the species table; three leaves as the first mowing and 105 degC d to the second assumed";

    /// <summary>Figures for a seed-down day of the calendar; those that most seasons never reach are left out.</summary>
    internal static IEnumerable<Figure> For(TimingFacts facts, int seedDown)
    {
        if (facts.UsualEmergence(seedDown) is not { } usualUp)
        {
            yield break;
        }

        var up = Up(facts, usualUp, seedDown);
        var mowed = Mowed(facts, up);
        if (Mowing(facts, up, mowed, 1) is { } firstDay)
        {
            yield return Figure(facts, "timing.first-mow", "First mowing of the new grass", firstDay, mowed.Count > 0, "median day by which sum(T) since emergence reaches L", facts.Slowest.LeavesDegreeDays, "L");
        }

        if (Mowing(facts, up, mowed, 2) is { } secondDay)
        {
            yield return Figure(facts, "timing.stand", "Second mowing of the new stand", secondDay, mowed.Count > 1, "median day by which sum(T) since the first mowing reaches M", StandNeed.SecondMowingDegreeDays, "M");
        }

        if (SeedlingsSprayed(facts, seedDown, up, mowed) is { } sprayed)
        {
            yield return sprayed;
        }
    }

    /// <summary>The later of the mowing that label or usage asks for and four weeks from emergence; null where most seasons end before that mowing.</summary>
    private static Figure? SeedlingsSprayed(TimingFacts facts, int seedDown, int up, IReadOnlyList<int> mowed)
    {
        var asked = SeedlingMowings.Of(facts.Label);
        return Mowing(facts, up, mowed, asked.Count) is not { } day ? null : new Figure("timing.seedlings-sprayed", "Seedlings may be sprayed from", QuantityKind.Date, Date(facts, Math.Max(day, up + DaysBeforeSpraying)), new Working(
            "the later of: mowing N of the new grass; emergence + 28 days",
            [new("n", "mowings of the new grass written down", mowed.Count, ""), new("N", $"mowings asked for, {(asked.Entered ? "by the label" : "as usual")}", asked.Count, ""), new("E", "days from seed-down to emergence", up - seedDown, "days")],
            $"{asked.Source}; four weeks after emergence from memory. The label in hand binds",
            mowed.Count >= asked.Count ? Sureness.CommonPractice : Sureness.Assumed,
            asked.Entered
                ? $"By the label of {facts.Label!.ActiveIngredient}, as entered. Another product has a count of its own."
                : "Some labels ask for three or four mowings: count what yours asks."));
    }

    /// <summary>Day of a mowing of the new grass: as written down, else from growth since the one before; emergence for mowing 0.</summary>
    private static int? Mowing(TimingFacts facts, int up, IReadOnlyList<int> mowed, int number)
    {
        var day = (int?)up;
        for (var n = 1; n <= number && day is { } before; n++)
        {
            day = n <= mowed.Count ? mowed[n - 1]
                : n == 1 ? facts.UsualGrowth(before, need => need.LeavesDegreeDays)
                : facts.UsualGrowth(before, _ => StandNeed.SecondMowingDegreeDays);
        }

        return day;
    }

    /// <summary>Mowings after emergence, one a day, as days of the calendar.</summary>
    internal static IReadOnlyList<int> Mowed(TimingFacts facts, int up) =>
        [.. facts.Log.During<LogEntry.Mowed>(facts.Calendar.First, facts.Calendar.Last).Select(entry => facts.Calendar.Index(entry.Day)).Where(day => day > up).Distinct()];

    /// <summary>When half the seedlings are up: as reckoned, but not before the first green was seen. A simulation has learned from that already.</summary>
    private static int Up(TimingFacts facts, int usual, int seedDown)
    {
        var green = facts.Log.During<LogEntry.FirstGreen>(facts.Calendar.Date(seedDown), facts.Calendar.Last).FirstOrDefault();
        return green is null ? usual : Math.Max(usual, facts.Calendar.Index(green.Day));
    }

    private static Figure Figure(TimingFacts facts, string id, string label, int day, bool written, string formula, double need, string symbol) => new(
        id, label, QuantityKind.Date, Date(facts, day), written
            ? new Working("as written in the field log", [], "field log", Sureness.Measured)
            : new Working(formula, [new("n", "past seasons", facts.Members.Count, ""), new(symbol, "degree-days needed", need, "degC d")], Growth, Sureness.Assumed, "Rules of thumb; mow by the height of the grass, not by the date."));

    private static int Date(TimingFacts facts, int day) => facts.Calendar.Date(day).DayNumber;
}
