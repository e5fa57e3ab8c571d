using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>How a patch's area was taken. Closed: only the shapes below exist.</summary>
public abstract record PatchShape
{
    private PatchShape()
    {
    }

    /// <summary>Length times width.</summary>
    public sealed record Rectangle(Length Long, Length Wide) : PatchShape;

    /// <summary>A circle by its diameter.</summary>
    public sealed record Circle(Length Diameter) : PatchShape;

    /// <summary>A triangle by base and height.</summary>
    public sealed record Triangle(Length Base, Length Height) : PatchShape;

    /// <summary>Widths measured across a base line at equal steps, the first and last included.</summary>
    public sealed record Offsets(Length Step, IReadOnlyList<Length> Widths) : PatchShape;

    /// <summary>A closed outline in meters east and north of any fixed point, with holes; rings need not repeat their first point.</summary>
    public sealed record Outline(IReadOnlyList<GroundPoint> Ring, IReadOnlyList<IReadOnlyList<GroundPoint>> Holes) : PatchShape;

    /// <summary>An area known from elsewhere and typed in.</summary>
    public sealed record Typed(Area Area) : PatchShape;
}

/// <summary>A point on the lawn's own plan.</summary>
/// <param name="EastM">Meters east of the plan's origin.</param>
/// <param name="NorthM">Meters north of the plan's origin.</param>
public readonly record struct GroundPoint(double EastM, double NorthM);
