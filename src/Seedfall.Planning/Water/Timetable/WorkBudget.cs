namespace Seedfall.Planning.Water.Timetable;

/// <summary>Solver work left, in its own deterministic units; counted, never timed, so that every run stops at the same place.</summary>
internal sealed class WorkBudget(double units)
{
    /// <summary>What building and reading a model costs beside the search. Measured, about.</summary>
    private const double PerCall = 0.002;

    private double left = units;

    /// <summary>No work at all: simple rules alone.</summary>
    internal static WorkBudget None => new(0.0);

    internal bool Spent => left <= 0.0;

    /// <summary>What one call may use of what is left.</summary>
    internal double Share(double most) => Math.Min(left, most);

    internal void Take(double used) => left -= used + PerCall;
}
