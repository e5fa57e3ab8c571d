namespace Seedfall.Planning.Ground;

/// <summary>What lies in or beside the grass and is no grass.</summary>
public enum FeatureKind
{
    /// <summary>A planting bed.</summary>
    Bed,

    /// <summary>The house or another building.</summary>
    House,

    /// <summary>A drive or another place cars stand on.</summary>
    Drive,

    /// <summary>A walk, terrace or deck.</summary>
    Path,

    /// <summary>A pond, brook, ditch or pool: nothing is sprayed or spread toward it.</summary>
    Water,

    /// <summary>A tree, a play set, anything else.</summary>
    Other,
}

/// <summary>One thing on the sheet that is not lawn.</summary>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Kind">What it is: decides what water and spray thrown on it mean.</param>
/// <param name="Ring">Its outline in the sheet's meters; need not repeat its first point.</param>
public sealed record SheetFeature(string Name, FeatureKind Kind, IReadOnlyList<GroundPoint> Ring);

/// <summary>
/// One lawn drawn on one sheet: where the sheet's zero point lies, the edge of the property's turf, and what is no grass.
/// Where a lawn has a sheet, every patch outline (<see cref="PatchShape.Outline"/>) is in the sheet's meters; without one
/// each outline has its own zero point and says nothing of where patches lie toward each other.
/// </summary>
public sealed record GroundSheet
{
    /// <summary>Where the sheet's zero point lies; null for a sheet that was never placed on the earth.</summary>
    public GeoPoint? Origin { get; init; }

    /// <summary>The outer edge of all turf; empty where none was drawn.</summary>
    public IReadOnlyList<GroundPoint> Boundary { get; init; } = [];

    /// <summary>Beds, buildings, paving, water.</summary>
    public IReadOnlyList<SheetFeature> Features { get; init; } = [];
}
