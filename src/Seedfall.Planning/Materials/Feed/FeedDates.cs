using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>Feedings on days that a closed season allows.</summary>
internal static class FeedDates
{
    private const int LeastDaysAfterStarter = 14;

    /// <summary>The step on a day the blackout allows: the late feeding moves ahead of it, starters do not move; null where no day is left.</summary>
    /// <param name="pack">The rules.</param>
    /// <param name="step">The feeding as wanted.</param>
    /// <param name="earlier">Day of the feeding before it; null for the first.</param>
    internal static FeedStep? Moved(RulePack pack, FeedStep step, DateOnly? earlier)
    {
        if (pack.FertilizerBlackout is not { } blackout || !blackout.Covers(step.Date))
        {
            return step;
        }

        if (step.DaysAfter is not null)
        {
            return null;
        }

        var day = step.Date;
        while (blackout.Covers(day) && step.Date.DayNumber - day.DayNumber < 366)
        {
            day = day.AddDays(-1);
        }

        return earlier is { } first && day.DayNumber - first.DayNumber < LeastDaysAfterStarter ? null : step with { Date = day };
    }

    /// <summary>All steps on the days they are planned for; one no day is left for stays where it was wanted.</summary>
    internal static IReadOnlyList<FeedStep> Settled(RulePack pack, IReadOnlyList<FeedStep> steps)
    {
        var settled = new List<FeedStep>();
        foreach (var step in steps)
        {
            settled.Add(Moved(pack, step, settled.Count > 0 ? settled[^1].Date : null) ?? step);
        }

        return settled;
    }
}
