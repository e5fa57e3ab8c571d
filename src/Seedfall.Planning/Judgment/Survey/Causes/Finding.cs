using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>One thing a walk-over can show.</summary>
/// <param name="Id">Stable short id, for example <c>tug.lifted</c>.</param>
/// <param name="Step">The step that shows it.</param>
/// <param name="Seen">In words, where it was seen.</param>
/// <param name="NotSeen">In words, where it was looked for and not seen.</param>
/// <param name="Look">True where seen, false where looked for and not seen, null where not looked for.</param>
public sealed record Finding(string Id, WalkStep Step, string Seen, string NotSeen, Func<Patch, PatchSurvey, bool?> Look);
