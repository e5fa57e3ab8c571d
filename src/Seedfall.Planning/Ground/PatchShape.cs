using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>How a patch's area was taken. Closed: only the shapes below exist.</summary>
public abstract record PatchShape
{
    private PatchShape()
    {
    }

    /// <summary>A shape that a few lengths fix, and that can be a piece of a larger figure.</summary>
    public abstract record Simple : PatchShape
    {
        private protected Simple()
        {
        }
    }

    /// <summary>Length times width.</summary>
    public sealed record Rectangle(Length Long, Length Wide) : Simple;

    /// <summary>A circle by its diameter.</summary>
    public sealed record Circle(Length Diameter) : Simple;

    /// <summary>A triangle by base and height.</summary>
    public sealed record Triangle(Length Base, Length Height) : Simple;

    /// <summary>A triangle by its three sides: nothing has to be square to anything.</summary>
    public sealed record Sides(Length First, Length Second, Length Third) : Simple;

    /// <summary>A slice of a circle with its point at the center: half, quarter or any share of the round.</summary>
    public sealed record Slice(Length Radius, Fraction Share) : Simple;

    /// <summary>The bow between a straight line and an arc: the line's length and how far the arc stands out from its middle.</summary>
    public sealed record Bow(Length Chord, Length Rise) : Simple;

    /// <summary>A strip of even width, straight or curved: length along its middle, and width.</summary>
    public sealed record Strip(Length Along, Length Wide) : Simple;

    /// <summary>Widths measured across a base line at equal steps, the first and last included.</summary>
    public sealed record Offsets(Length Step, IReadOnlyList<Length> Widths) : Simple;

    /// <summary>Simple shapes added together and taken away again.</summary>
    public sealed record Pieces(IReadOnlyList<ShapePiece> All) : PatchShape;

    /// <summary>Corners in order round the edge, each by its distances from the two ends of a taped base line.</summary>
    /// <param name="Base">Length of the base line from end A to end B.</param>
    /// <param name="Corners">Corners in order; an end of the base line is a corner only where it is listed.</param>
    public sealed record Taped(Length Base, IReadOnlyList<TapedCorner> Corners) : PatchShape;

    /// <summary>A closed outline in meters east and north of any fixed point, with holes; rings need not repeat their first point.</summary>
    public sealed record Outline(IReadOnlyList<GroundPoint> Ring, IReadOnlyList<IReadOnlyList<GroundPoint>> Holes) : PatchShape;

    /// <summary>An area known from elsewhere and typed in.</summary>
    public sealed record Typed(Area Area) : PatchShape;
}

/// <summary>A piece of a figure.</summary>
/// <param name="Shape">Its shape.</param>
/// <param name="TakenAway">True where it is a bed, a bay or anything that is not grass.</param>
public sealed record ShapePiece(PatchShape.Simple Shape, bool TakenAway);

/// <summary>The side of the base line a corner lies on, looking from end A to end B.</summary>
public enum BaseSide
{
    Left,
    Right,
}

/// <summary>A corner by two taped distances.</summary>
/// <param name="FromA">Distance from end A of the base line; zero for A itself.</param>
/// <param name="FromB">Distance from end B of the base line; zero for B itself.</param>
/// <param name="Side">The side it lies on.</param>
public sealed record TapedCorner(Length FromA, Length FromB, BaseSide Side);

/// <summary>A point on the lawn's own plan.</summary>
/// <param name="EastM">Meters east of the plan's origin.</param>
/// <param name="NorthM">Meters north of the plan's origin.</param>
public readonly record struct GroundPoint(double EastM, double NorthM);
