using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Validation.Choice;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>The seedings on which ways to choose a date are compared, and the calendar day they are compared with.</summary>
public static class ChoiceScenes
{
    /// <summary>Live seeds of each of three grasses, per m2: 500 per sq ft (assumed).</summary>
    private const double LiveSeedsPerM2 = 500.0 / 0.09290304;

    private static readonly GrassSpecies[] Mix = [GrassSpecies.KentuckyBluegrass, GrassSpecies.PerennialRyegrass, GrassSpecies.TallFescue];

    private static readonly PatchConditions Ground = new()
    {
        Texture = SoilTexture.Loam,
        TurfShare = 0.2,
        SeedDepthMm = SeedbedGround.RakedMm,
        MulchKgM2 = 0.34,
        MulchCover = 0.5,
    };

    /// <summary>The same seeding watered three times a day, once a day, and by rain alone.</summary>
    public static IReadOnlyList<ChoiceScene> All(TradeTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        var sown = Mix.Select(species => new SownGrass(SpeciesTraits.Germination(tables.For(species)), LiveSeedsPerM2)).ToList();
        ChoiceScene Scene(string name, string text, WateringRounds rounds) => new(name, text, Ground, sown, rounds, SimulatedStands.Rule);
        return
        [
            Scene("three-rounds", "watered at 7, 11 and 15 h, 0.075 in (1.9 mm) each, unless it rained", new WateringRounds([7, 11, 15], 1.9)),
            Scene("one-round", "watered once a day, 0.1 in (2.5 mm) at 7 h, unless it rained", new WateringRounds([7], 2.54)),
            Scene("rain-only", "never watered", WateringRounds.RainOnly),
        ];
    }

    /// <summary>The middle of the usual window of a latitude, of the year 2001.</summary>
    public static DateOnly UsualDay(double latitudeDeg) => new SeasonCalendar(2001, latitudeDeg < 0.0).Date(CalendarWindow.For(latitudeDeg).Best);
}
