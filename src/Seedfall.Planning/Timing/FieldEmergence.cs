using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>
/// Thermal time from seed-down until half the seedlings stand in the field. Laboratory half-germination times predict field
/// emergence poorly (R2 = 0.42 over pasture grasses, Moot et al. 2000) and are never shown as dates.
/// </summary>
internal static class FieldEmergence
{
    /// <summary>
    /// Field over laboratory thermal time. Unwatered ryegrass took 15.5 days to half emergence over five autumn sowings (Lincoln
    /// 1996): 2.5 times its laboratory time at an assumed 14 degC. On watered lawns tall fescue takes about 10 days and bluegrass up to
    /// 14 (K-State): 1.8 and 2.1 times at an assumed 20 degC. Between them, 2.
    /// </summary>
    internal const double FieldOverLaboratory = 2.0;

    /// <summary>Above this soil temperature emergence is credited no further speed, degC.</summary>
    internal const double NoFasterAboveC = 25.0;

    internal const string Source =
        "laboratory thermal time (Larsen and Bibby 2005 and the species table) times 2, between days to half emergence of unwatered autumn sowings (Lincoln 1996) and of watered lawns (K-State), soil temperatures assumed";

    /// <summary>Degree-days above the species' base from seed-down to half emergence in the field, degC d.</summary>
    internal static double ThermalTime(SpeciesFacts facts, TradeTables tables) => FieldOverLaboratory * Laboratory(facts, tables);

    /// <summary>How sure that is: a derived value, hence assumed.</summary>
    internal static Sureness Sureness => Sureness.Assumed;

    /// <summary>
    /// The fine fescues' printed laboratory time is shorter than ryegrass's, against field experience: ryegrass's is taken
    /// instead, times the ratio of their usual days to germination.
    /// </summary>
    private static double Laboratory(SpeciesFacts facts, TradeTables tables)
    {
        if (!IsFineFescue(facts.Species))
        {
            return facts.LabThermalTime50.Value;
        }

        var ryegrass = tables.For(GrassSpecies.PerennialRyegrass);
        var byDays = ryegrass.LabThermalTime50.Value * facts.GerminationDays.Middle / ryegrass.GerminationDays.Middle;
        return Math.Max(facts.LabThermalTime50.Value, byDays);
    }

    private static bool IsFineFescue(GrassSpecies species) => species is
        GrassSpecies.CreepingRedFescue or GrassSpecies.ChewingsFescue or GrassSpecies.HardFescue or GrassSpecies.SheepFescue;
}
