using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;

namespace Seedfall.Engine.Validation.Choice;

/// <summary>The seeding that every rule is tried on.</summary>
/// <param name="Name">As printed.</param>
/// <param name="Text">The scene in a sentence.</param>
/// <param name="Ground">The patch.</param>
/// <param name="Sown">The mix.</param>
/// <param name="Rounds">Its watering.</param>
/// <param name="Rule">What counts as a stand.</param>
public sealed record ChoiceScene(string Name, string Text, PatchConditions Ground, IReadOnlyList<SownGrass> Sown, WateringRounds Rounds, StandRule Rule);

/// <summary>What one rule did in one season.</summary>
/// <param name="Day">Days from the first on which seed may go down; null where the rule never named one.</param>
/// <param name="Stood">1 where the stand was had, else 0.</param>
/// <param name="PlantsPerM2">Plants at the season's end.</param>
public readonly record struct RuleSeason(int? Day, double Stood, double PlantsPerM2);

/// <summary>One season of one station under every rule.</summary>
/// <param name="Year">The season.</param>
/// <param name="Rules">By name in <see cref="SeedDownRules"/>.</param>
public sealed record ChoiceSeason(int Year, IReadOnlyDictionary<string, RuleSeason> Rules);
