using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>What one grass needs, from seed-down, to stand before winter.</summary>
/// <param name="Species">The grass.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="BaseC">Base temperature of emergence, degC.</param>
/// <param name="EmergenceDegreeDays">Degree-days above the base to half field emergence, degC d.</param>
/// <param name="GrowthDegreeDays">Degree-days above 0 degC from emergence to three leaves and two mowings, degC d.</param>
/// <param name="WarmestC">Soil above this over the first five days is too hot to seed, degC.</param>
internal sealed record StandNeed(GrassSpecies Species, string Name, double BaseC, double EmergenceDegreeDays, double GrowthDegreeDays, double WarmestC)
{
    /// <summary>Leaves a seedling should have before hard frost.</summary>
    internal const double Leaves = 3.0;

    /// <summary>Mowings it should have had.</summary>
    internal const double Mowings = 2.0;

    /// <summary>Growth between two mowings, degC d above 0 degC: about a week at 15 degC. Assumed.</summary>
    internal const double DegreeDaysPerMowing = 105.0;

    /// <summary>75 degF: bluegrass is held back by steady warmth (Larsen et al. 2004 at 25 degC), fine fescues are best near 59 degF.</summary>
    private const double CoolLimitC = 23.9;

    /// <summary>80 degF: ryegrass and tall fescue germinate fast up to about 81 degF (Sharifiamina et al. 2016).</summary>
    private const double WarmLimitC = 26.7;

    internal static StandNeed Of(GrassSpecies species, TradeTables tables)
    {
        var facts = tables.For(species);
        return new StandNeed(
            species,
            facts.Name,
            facts.BaseTemperatureC.Value,
            FieldEmergence.ThermalTime(facts, tables),
            (Leaves * facts.Phyllochron.Value) + (Mowings * DegreeDaysPerMowing),
            species is GrassSpecies.PerennialRyegrass or GrassSpecies.TallFescue ? WarmLimitC : CoolLimitC);
    }
}
