using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>The step to take next.</summary>
/// <param name="Step">The step.</param>
/// <param name="Why">Why this one, in one sentence.</param>
public sealed record NextTest(WalkStep Step, string Why)
{
    private const int MostAsked = 3;

    /// <summary>
    /// The step not taken yet whose answers can move the causes in question most: for each the widest swing its findings at that
    /// step could bring, times how likely it stands now (1 / (1 + e^-w)), summed. In question are the weightiest three suggested,
    /// or all where none is. Null where no step is left.
    /// </summary>
    /// <param name="patch">The patch as surveyed.</param>
    /// <param name="survey">Its survey.</param>
    /// <param name="weight">Sum of the weights so far.</param>
    /// <param name="suggested">Causes suggested, weightiest first.</param>
    internal static NextTest? Of(Patch patch, PatchSurvey survey, Func<SuspectedCause, double> weight, IReadOnlyList<SuspectedCause> suggested)
    {
        HashSet<SuspectedCause> asked = [.. suggested.Count > 0 ? suggested.Take(MostAsked) : Enum.GetValues<SuspectedCause>()];
        var open = WalkSteps.Order.Where(step => !WalkSteps.Taken(step, survey)).ToArray();
        var best = open
            .Select(step => (Step: step, Telling: Telling(step, patch, survey, weight, asked)))
            .Where(x => x.Telling.Total > 0.0)
            .OrderByDescending(x => x.Telling.Total)
            .ThenBy(x => x.Step)
            .FirstOrDefault();
        return best.Telling.Total > 0.0
            ? new(best.Step, suggested.Count > 0 ? $"It can tell most about {best.Telling.Of}." : "Not enough was seen yet; this step tells causes apart best.")
            : open.Length > 0 ? new(open[0], "The verdict still wants it.") : null;
    }

    private static (double Total, string Of) Telling(WalkStep step, Patch patch, PatchSurvey survey, Func<SuspectedCause, double> weight, HashSet<SuspectedCause> asked)
    {
        var swings = EvidenceTable.All
            .Where(row => asked.Contains(row.Cause) && row.Finding.Step == step && row.Finding.Look(patch, survey) != true)
            .GroupBy(row => row.Cause)
            .Select(rows => (Cause: rows.Key, Swing: Swing([.. rows]) / (1.0 + Math.Exp(-weight(rows.Key)))))
            .OrderByDescending(x => x.Swing)
            .ToArray();
        return swings.Length == 0 ? (0.0, "") : (swings.Sum(s => s.Swing), string.Join(" and ", swings.Take(2).Select(s => CauseFacts.Of(s.Cause).Name)));
    }

    private static double Swing(IReadOnlyList<Evidence> rows) =>
        Math.Max(0.0, rows.Max(r => r.Seen)) - Math.Min(0.0, rows.Min(r => Math.Min(r.Seen, r.NotSeen)));
}
