using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>How what was seen stands to a cause. Never a diagnosis.</summary>
public enum CauseStanding
{
    /// <summary>Points strongly to it.</summary>
    PointsStrongly,

    /// <summary>Points to it.</summary>
    PointsTo,

    /// <summary>Fits it.</summary>
    Fits,

    /// <summary>Part points to it and part speaks against it.</summary>
    Contradicts,
}

/// <summary>One line of evidence.</summary>
public sealed record EvidenceLine(string FindingId, string Words, double Weight, string Source);

/// <summary>One cause worth testing.</summary>
/// <param name="Weight">Sum of the weights, with its working.</param>
/// <param name="For">What speaks for it, weightiest first; never empty.</param>
/// <param name="Against">What speaks against it, weightiest first.</param>
/// <param name="Cautions">The usual cautions where the cause leads to a spray.</param>
public sealed record SuggestedCause(
    SuspectedCause Cause,
    CauseFacts Facts,
    CauseStanding Standing,
    Figure Weight,
    IReadOnlyList<EvidenceLine> For,
    IReadOnlyList<EvidenceLine> Against,
    IReadOnlyList<Caution> Cautions)
{
    /// <summary>The suggestion in one sentence.</summary>
    public string Sentence => Standing switch
    {
        CauseStanding.PointsStrongly => $"What was seen points strongly to {Facts.Name}.",
        CauseStanding.PointsTo => $"What was seen points to {Facts.Name}.",
        CauseStanding.Fits => $"What was seen fits {Facts.Name}.",
        _ => $"What was seen contradicts itself: part points to {Facts.Name}, part speaks against it. Look again.",
    };
}

/// <summary>What a walk-over suggests.</summary>
/// <param name="Suggestions">Causes worth testing, weightiest first; empty where not enough was seen.</param>
/// <param name="SpokenAgainst">Names of causes the findings clearly speak against.</param>
/// <param name="Next">The next most telling step; null where every step was taken.</param>
public sealed record CauseReport(IReadOnlyList<SuggestedCause> Suggestions, IReadOnlyList<string> SpokenAgainst, NextTest? Next);

/// <summary>Causes suggested by evidence: the sum of the weights of <see cref="EvidenceTable"/>, cause by cause.</summary>
public static class SuggestedCauses
{
    /// <summary>Sums at and above which it points strongly, points, fits; in the units of <see cref="Evidence"/>. Seedfall's own.</summary>
    internal const double Strong = 3.0, Pointing = 1.5, Fitting = 1.0;

    /// <summary>Evidence on both sides at least this heavy contradicts itself.</summary>
    internal const double Clash = 1.0;

    /// <summary>What was found on this patch, weighed.</summary>
    public static CauseReport Of(Patch patch)
    {
        var surveyed = SurveyedPatch.Of(patch);
        var survey = patch.Survey ?? new PatchSurvey();
        var lines = EvidenceTable.All.Select(row => (row.Cause, Line: Weigh(row, surveyed, survey))).Where(x => x.Line is not null).ToLookup(x => x.Cause, x => x.Line!);
        SuggestedCause[] suggestions = [.. Enum.GetValues<SuspectedCause>().Select(c => Suggestion(patch, c, [.. lines[c]])).OfType<SuggestedCause>().OrderByDescending(s => s.Weight.Value).ThenBy(s => s.Cause)];
        var against = Enum.GetValues<SuspectedCause>().Where(c => suggestions.All(s => s.Cause != c) && lines[c].Sum(l => l.Weight) <= -Clash).Select(c => CauseFacts.Of(c).Name);
        return new(suggestions, [.. against], NextTest.Of(surveyed, survey, cause => lines[cause].Sum(l => l.Weight), [.. suggestions.Select(s => s.Cause)]));
    }

    private static EvidenceLine? Weigh(Evidence row, Patch patch, PatchSurvey survey)
    {
        var seen = row.Finding.Look(patch, survey);
        var weight = seen switch { true => row.Seen, false => row.NotSeen, null => 0.0 };
        return weight == 0.0 ? null : new(row.Finding.Id, seen == true ? row.Finding.Seen : row.Finding.NotSeen, weight, row.Source);
    }

    private static SuggestedCause? Suggestion(Patch patch, SuspectedCause cause, IReadOnlyList<EvidenceLine> lines)
    {
        EvidenceLine[] pro = [.. lines.Where(l => l.Weight > 0.0).OrderByDescending(l => l.Weight)];
        EvidenceLine[] contra = [.. lines.Where(l => l.Weight < 0.0).OrderBy(l => l.Weight)];
        var sum = pro.Sum(l => l.Weight) + contra.Sum(l => l.Weight);
        var clash = pro.Sum(l => l.Weight) >= Clash && contra.Sum(l => l.Weight) <= -Clash;
        if (pro.Length == 0 || (sum < Fitting && !clash))
        {
            return null;
        }

        var facts = CauseFacts.Of(cause);
        var standing = clash && sum < Strong ? CauseStanding.Contradicts : sum >= Strong ? CauseStanding.PointsStrongly : sum >= Pointing ? CauseStanding.PointsTo : CauseStanding.Fits;
        return new(cause, facts, standing, Sum(patch, cause, facts, sum, [.. pro, .. contra]), pro, contra, CauseCautions.For(facts.Treatment));
    }

    private static Figure Sum(Patch patch, SuspectedCause cause, CauseFacts facts, double sum, IReadOnlyList<EvidenceLine> lines) => new(
        $"survey.{patch.Id}.cause.{cause}", $"Weight of the evidence for {facts.Name}", QuantityKind.Number, Math.Round(sum, 6), new Working(
            "w = sum of the weights",
            [.. lines.Select((l, i) => new WorkingInput($"w{i + 1}", l.Words, l.Weight, ""))],
            $"weights are Seedfall's own weighing of: {string.Join("; ", lines.Select(l => l.Source).Distinct())}",
            Sureness.CommonPractice,
            FormattableString.Invariant($"From {Strong:0.#} it points strongly, from {Pointing:0.#} it points, from {Fitting:0.#} it fits. A suggestion to test, not a diagnosis.")));
}
