using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>Formulation classes in the order they enter a tank (wettables first, solutions and surfactants last).</summary>
public enum FormulationClass
{
    WettablePowder,
    DryFlowable,
    SuspensionConcentrate,
    EmulsifiableConcentrate,
    SolublePowder,
    Solution,
    Surfactant,
}

/// <summary>
/// A pre-emergent as the label in hand says. The label is the law: what is not entered is not assumed in the user's favor.
/// All its rates and its strength are of one measure; <see cref="LawnRules"/> refuses a label that mixes them.
/// </summary>
public sealed record HerbicideLabel
{
    /// <summary>For example <c>mesotrione</c>; never a brand.</summary>
    public required string ActiveIngredient { get; init; }

    public FormulationClass Formulation { get; init; } = FormulationClass.SuspensionConcentrate;

    /// <summary>Active ingredient in the product; null means not entered.</summary>
    public ProductStrength? Strength { get; init; }

    /// <summary>The rate to apply; by weight where the formulation is dry.</summary>
    public required ProductRate Rate { get; init; }

    /// <summary>The label's highest rate for one application.</summary>
    public ProductRate? MaximumRate { get; init; }

    /// <summary>The label's highest amount in one year.</summary>
    public ProductRate? MaximumPerYear { get; init; }

    /// <summary>Already applied this year, from the record; null means nothing.</summary>
    public ProductRate? AppliedThisYear { get; init; }

    /// <summary>Grasses the label names as safe at seeding.</summary>
    public IReadOnlyList<GrassSpecies> LabeledAtSeeding { get; init; } = [];

    /// <summary>Grasses the label bars.</summary>
    public IReadOnlyList<GrassSpecies> Barred { get; init; } = [];

    /// <summary>Days to wait after this product before seeding; 0 where the label allows it at seeding; null means not entered.</summary>
    public int? SeedingIntervalDays { get; init; }

    /// <summary>Days after emergence before it may be repeated; null means no repeat is planned.</summary>
    public int? RepeatAfterEmergenceDays { get; init; }

    /// <summary>Mowings of the new grass before it may go on seedlings; 0 where the label asks for none; null means not entered.</summary>
    public int? MowingsBeforeSeedlings { get; init; }

    /// <summary>The label's least carrier.</summary>
    public VolumePerArea? MinimumCarrier { get; init; }

    /// <summary>The label's highest wind.</summary>
    public Speed? MaximumWind { get; init; }

    /// <summary>The label's least wind.</summary>
    public Speed? MinimumWind { get; init; }

    /// <summary>Hours without rain the label asks for afterward; null means not entered.</summary>
    public double? RainFreeHours { get; init; }

    /// <summary>The label's lowest air temperature.</summary>
    public Temperature? LowestAir { get; init; }

    /// <summary>The label's highest air temperature.</summary>
    public Temperature? HighestAir { get; init; }

    /// <summary>True when the label bars hose-end sprayers.</summary>
    public bool HoseEndBarred { get; init; }

    /// <summary>EPA or other registration number.</summary>
    public string? RegistrationNumber { get; init; }

    /// <summary>Re-entry statement as the label words it; null means "until sprays have dried: check your label".</summary>
    public string? Reentry { get; init; }
}

/// <summary>Something else that goes on with or beside the pre-emergent: soil conditioner, wetting agent, surfactant.</summary>
public sealed record TankPartner
{
    /// <summary>Generic class, for example <c>wetting agent</c>.</summary>
    public required string Name { get; init; }

    public FormulationClass Formulation { get; init; } = FormulationClass.Solution;

    public required ProductRate Rate { get; init; }

    /// <summary>True when it shares the tank with the pre-emergent; false when it goes on by itself.</summary>
    public bool WithPreEmergent { get; init; }
}

/// <summary>Something sprayed on the lawn before the plan.</summary>
public sealed record PastSpray
{
    public required string ActiveIngredient { get; init; }

    public required DateOnly Date { get; init; }

    /// <summary>The label's wait before seeding, in days; null means not entered.</summary>
    public int? LabelSeedingIntervalDays { get; init; }

    /// <summary>Amount applied; null means not known.</summary>
    public ProductRate? Rate { get; init; }
}
