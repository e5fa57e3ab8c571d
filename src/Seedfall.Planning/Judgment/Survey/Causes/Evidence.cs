namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>
/// What one finding says of one cause, in units like the natural logarithm of a likelihood ratio: 2 is very telling, 1 telling,
/// 0.5 somewhat; negative speaks against. The numbers are Seedfall's own weighing of what the source says.
/// </summary>
/// <param name="Cause">The cause.</param>
/// <param name="Finding">What was seen, or looked for and not seen.</param>
/// <param name="Seen">Weight where it was seen.</param>
/// <param name="NotSeen">Weight where it was looked for and not seen.</param>
/// <param name="Source">Who says that they go together.</param>
public sealed record Evidence(SuspectedCause Cause, Finding Finding, double Seen, double NotSeen, string Source);
