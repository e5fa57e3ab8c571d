using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>Figures of several proofs told apart by phase and days, so that each id in a plan means one number.</summary>
internal static class ProofNaming
{
    private const string Common = "water.timetable.";

    internal static TimetableProof Of(TimetableProof proof, string part) => proof switch
    {
        TimetableProof.Found found => found with { MinutesAway = Of(found.MinutesAway, part), Bound = Of(found.Bound, part) },
        TimetableProof.Impossible none => none with { Limits = [.. none.Limits.Select(limit => Of(limit, part))] },
        _ => proof,
    };

    internal static BindingLimit Of(BindingLimit limit, string part) =>
        limit with { Enough = Of(limit.Enough, part), NotEnough = limit.NotEnough is { } not ? Of(not, part) : null };

    private static Figure Of(Figure figure, string part) => figure with { Id = figure.Id.Replace(Common, $"{Common}{part}.", StringComparison.Ordinal) };
}
