using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Judgment;

public enum VerdictKind
{
    /// <summary>Feed and water what lives, seed fills the rest.</summary>
    Recover,

    /// <summary>Too little lives or too much is weed: renovate.</summary>
    StartOver,

    /// <summary>Not now: dormant turf, too late, or a herbicide interval; with dates.</summary>
    Wait,

    /// <summary>The cause is still there.</summary>
    CureFirst,
}

/// <summary>One reason for a verdict.</summary>
/// <param name="Id">Stable dotted id, for example <c>verdict.front.cover</c>.</param>
/// <param name="Sentence">The reason in one plain sentence.</param>
/// <param name="Figure">The number behind it, where there is one.</param>
public sealed record Reason(string Id, string Sentence, Figure? Figure = null);

/// <summary>The verdict on one patch.</summary>
public sealed record PatchVerdict(string PatchId, VerdictKind Kind, IReadOnlyList<Reason> Reasons);

/// <summary>The verdict on the lawn: the worst of its patches that binds the season, with reasons.</summary>
/// <param name="Kind">The verdict.</param>
/// <param name="Sentence">The verdict in one sentence for the owner.</param>
/// <param name="Reasons">Why, the deciding reason first; never empty.</param>
/// <param name="Patches">Verdict by patch.</param>
/// <param name="WaitUntil">For <see cref="VerdictKind.Wait"/>: the first day the work may go on.</param>
/// <param name="WaitFor">For <see cref="VerdictKind.Wait"/>: what that day brings, for example dormant seeding.</param>
public sealed record Verdict(
    VerdictKind Kind,
    string Sentence,
    IReadOnlyList<Reason> Reasons,
    IReadOnlyList<PatchVerdict> Patches,
    DateOnly? WaitUntil = null,
    string? WaitFor = null);
