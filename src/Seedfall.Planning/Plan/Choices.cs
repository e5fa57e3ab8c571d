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

    /// <summary>Share of the new-lawn rate used when overseeding, 0.5 to 0.67; null means 0.5.</summary>
    public Fraction? OverseedShare { get; init; }

    /// <summary>Seed mix as weight shares by species; null means chosen for sun, region and use.</summary>
    public IReadOnlyDictionary<Ground.GrassSpecies, double>? MixByWeight { get; init; }

    /// <summary>The day the plan is looked at; decides the next action. Null means the first day of the plan.</summary>
    public DateOnly? Today { get; init; }
}
