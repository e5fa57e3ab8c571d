namespace Seedfall.Weather.Soils;

/// <summary>One layer of a soil as the survey has it; null where it says nothing.</summary>
/// <param name="TopCm">Upper edge, cm below the surface.</param>
/// <param name="BottomCm">Lower edge, cm.</param>
/// <param name="SandPct">Sand, percent.</param>
/// <param name="SiltPct">Silt, percent.</param>
/// <param name="ClayPct">Clay, percent.</param>
/// <param name="OrganicPct">Organic matter, percent.</param>
/// <param name="Ph">pH in water 1:1.</param>
/// <param name="AvailableWater">Available water, cm per cm.</param>
/// <param name="ConductivityUmS">Saturated conductivity, micrometers per second.</param>
public sealed record SoilHorizon(double TopCm, double BottomCm, double? SandPct, double? SiltPct, double? ClayPct, double? OrganicPct, double? Ph, double? AvailableWater, double? ConductivityUmS);

/// <summary>One soil of a map unit.</summary>
/// <param name="Name">Name of the soil, or of what covers it, for example Urban land.</param>
/// <param name="SharePct">Share of the map unit, percent; null where not told.</param>
/// <param name="Kind">Series, miscellaneous area and so on, as the survey writes it.</param>
/// <param name="Drainage">Drainage class.</param>
/// <param name="HydrologicGroup">Hydrologic group A to D.</param>
/// <param name="SlopePct">Usual slope, percent.</param>
/// <param name="Horizons">Layers from the top down; empty for water, pavement and rock.</param>
public sealed record SoilComponent(string Name, double? SharePct, string? Kind, string? Drainage, string? HydrologicGroup, double? SlopePct, IReadOnlyList<SoilHorizon> Horizons);

/// <summary>The map unit at a place.</summary>
/// <param name="Key">The survey's key of the unit.</param>
/// <param name="Name">Its name, for example "Example loam, 2 to 6 percent slopes".</param>
/// <param name="Components">Its soils, largest share first.</param>
public sealed record SoilMapUnit(string Key, string Name, IReadOnlyList<SoilComponent> Components);

/// <summary>What an answer of the soil survey came to.</summary>
public enum SoilMapOutcome
{
    /// <summary>A map unit with at least one natural soil.</summary>
    Found,

    /// <summary>A map unit of water, pavement, fill or rock only.</summary>
    NotSoil,

    /// <summary>No map unit at this place.</summary>
    Nothing,

    /// <summary>The answer could not be read.</summary>
    Refused,
}

/// <summary>An answer as read.</summary>
/// <param name="Outcome">What it came to.</param>
/// <param name="Unit">The map unit, where there is one.</param>
/// <param name="Problem">Why it was refused.</param>
public sealed record SoilMapAnswer(SoilMapOutcome Outcome, SoilMapUnit? Unit, FileProblem? Problem);
