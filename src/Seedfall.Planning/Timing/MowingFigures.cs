using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Timing;

/// <summary>The new grass's first two mowings, and when seedlings may first be sprayed: from growth, and from the log where it says more.</summary>
internal static class MowingFigures
{
    /// <summary>Mowings most broadleaf labels ask for before seedlings are sprayed (Purdue; an older rule said three to four).</summary>
    internal const int MowingsBeforeSpraying = 2;

    /// <summary>Least days from emergence to a spray on seedlings: four weeks (from memory, of mesotrione after emergence).</summary>
    internal const int DaysBeforeSpraying = 28;

    private const string Growth = "leaf appearance of the species table; three leaves as the first mowing and 105 degC d to the second assumed";

    private const string Labels = "Purdue Extension: most broadleaf labels ask for two mowings; four weeks after emergence from memory. The label in hand binds";

    /// <summary>Figures for a seed-down day of the calendar; those that most seasons never reach are left out.</summary>
    internal static IEnumerable<Figure> For(TimingFacts facts, int seedDown)
    {
        if (facts.UsualEmergence(seedDown) is not { } usualUp)
        {
            yield break;
        }

        var up = Up(facts, usualUp, seedDown);
        var mowed = Mowed(facts, up);
        var first = mowed.Count > 0 ? mowed[0] : facts.UsualGrowth(up, need => need.LeavesDegreeDays);
        if (first is not { } firstDay)
        {
            yield break;
        }

        yield return Figure(facts, "timing.first-mow", "First mowing of the new grass", firstDay, mowed.Count > 0, "median day by which sum(T) since emergence reaches L", facts.Slowest.LeavesDegreeDays, "L");
        if ((mowed.Count > 1 ? mowed[1] : facts.UsualGrowth(firstDay, _ => StandNeed.SecondMowingDegreeDays)) is not { } secondDay)
        {
            yield break;
        }

        yield return Figure(facts, "timing.stand", "Second mowing of the new stand", secondDay, mowed.Count > 1, "median day by which sum(T) since the first mowing reaches M", StandNeed.SecondMowingDegreeDays, "M");
        yield return new Figure("timing.seedlings-sprayed", "Seedlings may be sprayed from", QuantityKind.Date, Date(facts, Math.Max(secondDay, up + DaysBeforeSpraying)), new Working(
            "the later of: second mowing; emergence + 28 days",
            [new("n", "mowings of the new grass written down", mowed.Count, ""), new("N", "mowings asked for", MowingsBeforeSpraying, ""), new("E", "days from seed-down to emergence", up - seedDown, "days")],
            Labels,
            mowed.Count >= MowingsBeforeSpraying ? Sureness.CommonPractice : Sureness.Assumed,
            "Some labels ask for three or four mowings: count what yours asks."));
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
