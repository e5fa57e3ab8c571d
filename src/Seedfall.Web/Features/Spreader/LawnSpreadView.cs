using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Web.Features.Spreader;

/// <summary>One job of a lawn with one spreader.</summary>
/// <param name="Spreader">Null where none is kept yet.</param>
/// <param name="Named">Null where the plan has nothing to spread.</param>
public sealed record LawnSpreadView(SpreadLawn Lawn, IReadOnlyList<KeptSpreader> Spreaders, KeptSpreader? Spreader, NamedJob? Named)
{
    /// <summary>What to do next; null without spreader or job.</summary>
    public SpreadStep? Step { get; } = Spreader is { } spreader && Named is { } named ? HalfCorrectHalf.Next(spreader, named.Job) : null;
}
