using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>What one grass needs, from seed-down, to stand before winter.</summary>
/// <param name="Species">The grass.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="BaseC">Base temperature of emergence, degC.</param>
/// <param name="EmergenceDegreeDays">Degree-days above the base to half field emergence, degC d.</param>
/// <param name="LeavesDegreeDays">Degree-days above 0 degC from emergence to three leaves, when the first mowing falls, degC d.</param>
/// <param name="HotC">Mean soil over the first two weeks at which half the seedings fail of heat, degC.</param>
internal sealed record StandNeed(GrassSpecies Species, string Name, double BaseC, double EmergenceDegreeDays, double LeavesDegreeDays, double HotC)
{
    /// <summary>Leaves a seedling has at its first mowing, about three weeks after seed-down.</summary>
    internal const double Leaves = 3.0;

    /// <summary>Growth from the first mowing to the second, degC d above 0 degC: about a week at 15 degC. Assumed.</summary>
    internal const double SecondMowingDegreeDays = 105.0;

    /// <summary>45 degF: soil in which top growth ends and no second mowing comes. Common practice.</summary>
    internal const double GrowthEndsC = 65.0 / 9.0;

    /// <summary>Days over which the soil must not be too hot.</summary>
    internal const int HotDays = 14;

    /// <summary>How gradually heat spoils a seeding, degC. Assumed.</summary>
    internal const double HotSpreadC = 1.5;

    /// <summary>76 degF, just below the steady 77 at which bluegrass falls into dormancy (Larsen et al. 2004); fine fescues are best at 59 degF.</summary>
    private const double CoolGrassHotC = 24.5;

    /// <summary>78 degF: ryegrass and tall fescue germinate fast up to about 81 degF, but seedlings sicken in warm wet ground. Assumed.</summary>
    private const double WarmGrassHotC = 25.6;

    internal static StandNeed Of(GrassSpecies species, TradeTables tables)
    {
        var facts = tables.For(species);
        return new StandNeed(
            species,
            facts.Name,
            facts.BaseTemperatureC.Value,
            FieldEmergence.ThermalTime(facts, tables),
            Leaves * facts.Phyllochron.Value,
            species is GrassSpecies.PerennialRyegrass or GrassSpecies.TallFescue ? WarmGrassHotC : CoolGrassHotC);
    }
}
