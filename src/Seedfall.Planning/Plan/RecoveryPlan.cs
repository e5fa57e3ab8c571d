using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Records;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Plan;

/// <summary>A patch as the plan sees it.</summary>
/// <param name="Area">Ground area, slope-corrected.</param>
/// <param name="LivingCover">Living cover used.</param>
public sealed record PatchSummary(string Id, string Name, Figure Area, Figure LivingCover)
{
    /// <summary>Lower end of the range the area lies in nine times in ten.</summary>
    public required Figure AreaLow { get; init; }

    /// <summary>Upper end of that range.</summary>
    public required Figure AreaHigh { get; init; }

    /// <summary>Length of the outer edge; null where the measures taken do not fix it.</summary>
    public Figure? Edge { get; init; }

    /// <summary>Length of the edge round beds and other holes; null without any.</summary>
    public Figure? BedEdge { get; init; }
}

/// <summary>What to do next, in one sentence, with the task it belongs to.</summary>
public sealed record NextAction(string Sentence, DateOnly? Date, string? TaskId);

/// <summary>
/// The whole recovery plan of one lawn in one season. A function of lawn, choices, weather and tables: the same inputs
/// give the same plan. A section that a wall stops is null and the wall stands in <see cref="Walls"/>.
/// </summary>
public sealed record RecoveryPlan
{
    public required string LawnId { get; init; }

    public required string LawnName { get; init; }

    public required int Season { get; init; }

    public required Place Place { get; init; }

    /// <summary>IANA zone the task times are in.</summary>
    public required string TimeZone { get; init; }

    /// <summary>ISO 4217 code the costs are in.</summary>
    public required string Currency { get; init; }

    public required string RulePackName { get; init; }

    public required IReadOnlyList<PatchSummary> Patches { get; init; }

    public required Figure TotalArea { get; init; }

    public required Verdict Verdict { get; init; }

    public required SeasonTiming Timing { get; init; }

    public required NextAction Next { get; init; }

    public required WaterProof Water { get; init; }

    public SeedPlan? Seed { get; init; }

    public FeedPlan? Feed { get; init; }

    public SprayPlan? Spray { get; init; }

    public CoverPlan? Cover { get; init; }

    public required IReadOnlyList<MaterialLine> Materials { get; init; }

    /// <summary>Sum of the known costs; null where none is known.</summary>
    public Figure? TotalCost { get; init; }

    public required IReadOnlyList<PlanTask> Tasks { get; init; }

    public required IReadOnlyList<Wall> Walls { get; init; }

    /// <summary>Recorded applications of the season's year that a nitrogen or phosphorus rule is against, or that what is written leaves open.</summary>
    public IReadOnlyList<LawFinding> AgainstLaw { get; init; } = [];

    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Weather files and tables the plan rests on.</summary>
    public required IReadOnlyList<string> Sources { get; init; }
}
