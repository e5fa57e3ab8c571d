using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Rules;

/// <summary>How a grass fills gaps.</summary>
public enum SpreadHabit
{
    /// <summary>Tillers only.</summary>
    Bunch,

    /// <summary>Spreads by rhizomes.</summary>
    Rhizome,
}

/// <summary>The trade's figures for one grass, each with its source. Read from <c>data/species.json</c>.</summary>
public sealed record SpeciesFacts
{
    public required GrassSpecies Species { get; init; }

    /// <summary>Name as the trade writes it, for example <c>Kentucky bluegrass</c>.</summary>
    public required string Name { get; init; }

    public required SpreadHabit Habit { get; init; }

    public required SourcedValue SeedsPerPound { get; init; }

    /// <summary>New-lawn rate, lb per 1,000 sq ft.</summary>
    public required SourcedRange NewLawnPoundsPerM { get; init; }

    /// <summary>Days from seed to first green under fair conditions.</summary>
    public required SourcedRange GerminationDays { get; init; }

    /// <summary>Days from seed to an established stand.</summary>
    public required SourcedRange EstablishmentDays { get; init; }

    /// <summary>Base temperature for germination, degC.</summary>
    public required SourcedValue BaseTemperatureC { get; init; }

    /// <summary>Thermal time to half germination in the laboratory, degC d; never shown as an emergence date.</summary>
    public required SourcedValue LabThermalTime50 { get; init; }

    /// <summary>Temperatures between which germination is no faster, degC.</summary>
    public required SourcedRange OptimumC { get; init; }

    /// <summary>Temperature at which germination ends, degC.</summary>
    public required SourcedValue CeilingC { get; init; }

    /// <summary>Hydrothermal time constant, MPa degC d.</summary>
    public required SourcedValue HydrothermalTime { get; init; }

    /// <summary>Base water potential of the median seed, MPa, below 0.</summary>
    public required SourcedValue BasePotential50 { get; init; }

    /// <summary>Standard deviation of the base water potential between seeds, MPa.</summary>
    public required SourcedValue BasePotentialSpread { get; init; }

    /// <summary>Degree-days per leaf above 0 degC.</summary>
    public required SourcedValue Phyllochron { get; init; }

    /// <summary>Relative growth of living cover at 15 degC, 1/d.</summary>
    public required SourcedValue CoverRateAt15 { get; init; }

    /// <summary>Least hours of direct sun it is worth seeding for.</summary>
    public required SourcedValue LeastSunHours { get; init; }

    /// <summary>Mowing height, inches.</summary>
    public required SourcedRange MowingInches { get; init; }

    /// <summary>Nitrogen per year, lb per 1,000 sq ft.</summary>
    public required SourcedRange NitrogenPoundsPerMYear { get; init; }

    /// <summary>Typical purity of a good uncoated lot, share.</summary>
    public required SourcedValue UsualPurity { get; init; }

    /// <summary>Typical germination of a good lot, share.</summary>
    public required SourcedValue UsualGermination { get; init; }
}
