using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Plan;

/// <summary>Something not entered, what was taken instead, and what it changes.</summary>
/// <param name="Id">Stable dotted id, for example <c>assumed.front.sun</c>.</param>
/// <param name="Statement">What was assumed, in one sentence.</param>
/// <param name="Effect">What it changes on the plan.</param>
/// <param name="Replace">How to find out and replace it.</param>
public sealed record Assumption(string Id, string Statement, string Effect, string Replace);

/// <summary>A usual caution shown wherever such work is planned.</summary>
public sealed record Caution(string Id, string Title, IReadOnlyList<string> Sentences);

/// <summary>A rule of the label or the law that stops part of the plan.</summary>
/// <param name="Id">Stable dotted id, for example <c>label.yearly-maximum</c>.</param>
/// <param name="Rule">The rule's name.</param>
/// <param name="Statement">What is refused and by how much it breaks the rule.</param>
/// <param name="Instead">What to do instead.</param>
/// <param name="Source">Label, statute or paper.</param>
public sealed record Wall(string Id, string Rule, string Statement, string Instead, string Source);

/// <summary>A line worth knowing that is neither assumption, caution nor wall.</summary>
public sealed record Advice(string Id, string Statement, string Source, Sureness Sureness);
