namespace Seedfall.Planning.Plan;

/// <summary>One part of the plan as its planner returns it: the value, or the walls that stopped it, and what was assumed.</summary>
/// <param name="Value">Null only where a wall stopped the section or there is nothing to plan.</param>
public sealed record Section<T>(T? Value, IReadOnlyList<Wall> Walls, IReadOnlyList<Assumption> Assumptions)
    where T : class
{
    /// <summary>A section with nothing assumed and no wall.</summary>
    public static Section<T> Of(T value) => new(value, [], []);
}
