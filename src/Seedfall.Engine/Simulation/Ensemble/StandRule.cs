namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>
/// What counts as an established stand: plants per area with enough leaves before hard frost. The numbers are judged (common
/// practice: tillering begins at about three leaves; a thickened lawn wants some four hundred new plants per square foot).
/// </summary>
/// <param name="PlantsPerM2">Plants per m2 of bare ground.</param>
/// <param name="Leaves">Leaves a plant needs to count.</param>
/// <param name="HardFrostC">Air temperature that ends the season for seedlings, degC.</param>
/// <param name="FieldSurvival">Share of live seed that would stand with water never short: birds, burial, damping-off (0.3 to 0.6 from memory).</param>
public sealed record StandRule(double PlantsPerM2 = 4300.0, double Leaves = 2.5, double HardFrostC = -20.0 / 9.0, double FieldSurvival = 0.45);

/// <summary>A grass as sown.</summary>
/// <param name="Traits">How it germinates.</param>
/// <param name="LiveSeedsPerM2">Pure live seeds sown, per m2 of ground to fill.</param>
public sealed record SownGrass(Plant.GerminationTraits Traits, double LiveSeedsPerM2);

/// <summary>What one season made of one seed-down date.</summary>
/// <param name="PlantsPerM2">Plants alive with enough leaves at the season's end.</param>
/// <param name="EmergenceDays">Days from seed-down until half the seed of the slowest grass is up; null where it never is.</param>
public readonly record struct StandOutcome(double PlantsPerM2, double? EmergenceDays);
