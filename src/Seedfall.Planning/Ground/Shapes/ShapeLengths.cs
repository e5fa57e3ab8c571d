using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Shapes;

/// <summary>The lengths a shape is built of, so that each can be wrong on its own.</summary>
internal static class ShapeLengths
{
    /// <summary>The shape with every length put through a function of its number and value; outlines and areas have none.</summary>
    internal static PatchShape With(PatchShape shape, Func<int, Length, Length> each)
    {
        var next = 0;
        return Map(shape, length => each(next++, length));
    }

    /// <summary>All lengths in the order <see cref="With"/> numbers them.</summary>
    internal static IReadOnlyList<Length> Of(PatchShape shape)
    {
        var all = new List<Length>();
        With(shape, (_, length) =>
        {
            all.Add(length);
            return length;
        });
        return all;
    }

    private static PatchShape Map(PatchShape shape, Func<Length, Length> each) => shape switch
    {
        PatchShape.Rectangle r => new PatchShape.Rectangle(each(r.Long), each(r.Wide)),
        PatchShape.Circle c => new PatchShape.Circle(each(c.Diameter)),
        PatchShape.Triangle t => new PatchShape.Triangle(each(t.Base), each(t.Height)),
        PatchShape.Sides s => new PatchShape.Sides(each(s.First), each(s.Second), each(s.Third)),
        PatchShape.Slice s => s with { Radius = each(s.Radius) },
        PatchShape.Bow b => new PatchShape.Bow(each(b.Chord), each(b.Rise)),
        PatchShape.Strip s => new PatchShape.Strip(each(s.Along), each(s.Wide)),
        PatchShape.Offsets o => new PatchShape.Offsets(each(o.Step), [.. o.Widths.Select(each)]),
        PatchShape.Pieces p => new PatchShape.Pieces([.. p.All.Select(piece => piece with { Shape = (PatchShape.Simple)Map(piece.Shape, each) })]),
        PatchShape.Taped t => new PatchShape.Taped(each(t.Base), [.. t.Corners.Select(c => c with { FromA = each(c.FromA), FromB = each(c.FromB) })]),
        _ => shape,
    };
}
