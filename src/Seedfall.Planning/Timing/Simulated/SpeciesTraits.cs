using Seedfall.Engine.Simulation.Cover;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>A grass of the trade's table as the simulator takes it.</summary>
public static class SpeciesTraits
{
    /// <summary>Seeds in a pound from which a grass counts as fine-leaved.</summary>
    private const double FineSeedsPerPound = 350_000.0;

    /// <summary>Ground a seedling covers at its first full leaf, m2: 0.1 to 0.3 cm2 (from memory), fine-leaved grasses the least.</summary>
    private const double FineSeedlingM2 = 0.1e-4;

    private const double BroadSeedlingM2 = 0.2e-4;

    /// <summary>How it germinates and puts out leaves. Laboratory times that follow from it are never shown as emergence dates.</summary>
    public static GerminationTraits Germination(SpeciesFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return new GerminationTraits(
            facts.BaseTemperatureC.Value,
            facts.OptimumC.Low,
            facts.OptimumC.High,
            facts.CeilingC.Value,
            facts.HydrothermalTime.Value,
            facts.BasePotential50.Value,
            facts.BasePotentialSpread.Value,
            facts.Phyllochron.Value);
    }

    /// <summary>How it covers ground.</summary>
    public static CoverTraits Cover(SpeciesFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return new CoverTraits(facts.CoverRateAt15.Value, facts.Habit == SpreadHabit.Rhizome, facts.SeedsPerPound.Value > FineSeedsPerPound ? FineSeedlingM2 : BroadSeedlingM2);
    }
}
