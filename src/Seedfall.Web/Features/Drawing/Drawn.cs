using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>What a shape on the sheet is.</summary>
public enum DrawnKind
{
    /// <summary>The outer edge of all turf.</summary>
    Edge,

    /// <summary>A bed, building, paving or water: no grass.</summary>
    Hole,

    /// <summary>A patch of the notes.</summary>
    Patch,
}

/// <summary>One shape on the sheet, in the sheet's meters.</summary>
/// <param name="Key">Stable on one page: <c>edge</c>, <c>hole-1</c>, <c>patch-front</c>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Name">What it is called on the page.</param>
/// <param name="Ring">Corners in order; empty where it is not drawn.</param>
public sealed record DrawnShape(string Key, DrawnKind Kind, string Name, IReadOnlyList<GroundPoint> Ring)
{
    /// <summary>What a hole is; null for anything else.</summary>
    public FeatureKind? Hole { get; init; }

    /// <summary>Id of a patch in the notes; null for anything else.</summary>
    public string? PatchId { get; init; }

    /// <summary>How the corners were taken; null where nobody said.</summary>
    public Measuring? Taken { get; init; }

    /// <summary>True with enough corners for an area.</summary>
    public bool IsDrawn => Ring.Count >= 3;
}

/// <summary>The drawing of one lawn: the edge first, then holes, then patches.</summary>
/// <param name="Shapes">Everything on the sheet; a patch not drawn yet is there without corners.</param>
/// <param name="Origin">Where the sheet's zero point lies on the earth; null for a sheet never placed.</param>
/// <param name="Picture">The picture under the sheet.</param>
public sealed record Drawn(IReadOnlyList<DrawnShape> Shapes, GeoPoint? Origin, PicturePlacing? Picture)
{
    public const string EdgeKey = "edge";

    /// <summary>What the edge is called.</summary>
    public const string EdgeName = "Edge of the lawn";

    public IEnumerable<DrawnShape> Of(DrawnKind kind) => Shapes.Where(s => s.Kind == kind);

    /// <summary>True where nothing has corners.</summary>
    public bool IsBlank => Shapes.All(s => s.Ring.Count == 0);

    /// <summary>Holes wholly in a shape, whose ground is no grass.</summary>
    public IReadOnlyList<DrawnShape> HolesIn(DrawnShape shape) =>
        shape.IsDrawn ? [.. Of(DrawnKind.Hole).Where(h => h.IsDrawn && RingRelation.LiesIn(h.Ring, shape.Ring))] : [];

    /// <summary>A shape as an outline of its grass: the ring, and for a patch or the edge the holes in it.</summary>
    public PatchShape.Outline OutlineOf(DrawnShape shape) =>
        new(shape.Ring, shape.Kind == DrawnKind.Hole ? [] : HoleInset.Apart(shape.Ring, [.. HolesIn(shape).Select(h => h.Ring)]));
}
