using Seedfall.Engine.Units;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// The ground whose temperature is asked for. The default is the ground of a weather station: open, level, short grass,
/// loam, rain only.
/// </summary>
public sealed record SoilTempSite
{
    /// <summary>Open, level, short grass on loam, rain only.</summary>
    public static SoilTempSite Reference { get; } = new();

    /// <summary>Share of the day's sun kept off by trees and buildings.</summary>
    public Fraction Shade { get; init; }

    /// <summary>Share of the ground without living or dead cover; null: natural grass, sparser the drier the place.</summary>
    public Fraction? Bare { get; init; }

    /// <summary>Thatch, as a depth.</summary>
    public Depth Thatch { get; init; }

    /// <summary>Straw, peat or compost laid on the seedbed, as a depth.</summary>
    public Depth Mulch { get; init; }

    /// <summary>Sand, share of the mineral soil.</summary>
    public Fraction Sand { get; init; } = Fraction.Of(0.40);

    /// <summary>Clay, share of the mineral soil.</summary>
    public Fraction Clay { get; init; } = Fraction.Of(0.20);

    /// <summary>Organic matter, share of the soil's mass.</summary>
    public Fraction OrganicMatter { get; init; } = Fraction.Of(0.025);

    /// <summary>True where the lawn is watered so that it does not go short.</summary>
    public bool Irrigated { get; init; }
}
