using Seedfall.Engine.Units;

namespace Seedfall.Planning.Plan;

/// <summary>How the seed goes on.</summary>
public enum SeedingMethod
{
    Broadcast,
    SlitSeed,
}

/// <summary>What the adviser chooses for one season; null means Seedfall's own choice.</summary>
public sealed record Choices
{
    /// <summary>Calendar year of the autumn (the southern autumn lies in the same year).</summary>
    public required int Season { get; init; }

    /// <summary>Seed-down day; null means the best of the window.</summary>
    public DateOnly? SeedDown { get; init; }

    public SeedingMethod Method { get; init; } = SeedingMethod.Broadcast;

    /// <summary>Rounds a day on the seedbed, 0 (rain alone) to 4; null means as many as soil and air ask for.</summary>
    public int? SeedbedRounds { get; init; }

    /// <summary>Net depth of a seedbed round; null means what the rounds must make up for.</summary>
    public Depth? RoundDepth { get; init; }

    /// <summary>Share of the new-lawn rate used when overseeding, 0.5 to 0.67; null means 0.5.</summary>
    public Fraction? OverseedShare { get; init; }

    /// <summary>Seed mix as weight shares by species; null means chosen for sun, region and use.</summary>
    public IReadOnlyDictionary<Ground.GrassSpecies, double>? MixByWeight { get; init; }

    /// <summary>The day the plan is looked at; decides the next action. Null means the first day of the plan.</summary>
    public DateOnly? Today { get; init; }
}
