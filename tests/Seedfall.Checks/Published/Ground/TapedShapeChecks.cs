using CsCheck;
using NetTopologySuite.Geometries;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Shapes;
using Seedfall.Planning.Ground.Sheets;
using Length = Seedfall.Engine.Units.Length;

namespace Seedfall.Checks.Published.Ground;

/// <summary>Shapes a tape builds, against classic examples and NetTopologySuite.</summary>
public sealed class TapedShapeChecks
{
    private static readonly GeometryFactory Factory = new();

    private static Length Feet(double feet) => Length.FromFeet(feet);

    private static double SquareFeet(PatchShape shape) => PatchArea.Of(shape).SquareFeet;

    [Fact]
    public void Triangles_by_three_sides()
    {
        // Heron, Metrica I.8: sides 13, 14, 15 give 84. And 3, 4, 5 give 6.
        Assert.Equal(84.0, SquareFeet(new PatchShape.Sides(Feet(13), Feet(14), Feet(15))), 9);
        Assert.Equal(6.0, SquareFeet(new PatchShape.Sides(Feet(5), Feet(3), Feet(4))), 9);
        Assert.Null(TriangleBySides.Area(Feet(5), Feet(3), Feet(8.001)));
        Assert.Null(TriangleBySides.Area(Feet(5), Feet(3), Feet(8)));

        // A needle, against the same area by base and height: 100 ft base, tip 0.001 ft above its middle.
        var side = Math.Sqrt(50.0 * 50.0 + 1e-6);
        Assert.Equal(0.05, SquareFeet(new PatchShape.Sides(Feet(100), Feet(side), Feet(side))), 1e-7);
    }

    [Fact]
    public void A_yard_of_pieces_as_extension_bulletins_teach_it()
    {
        // Oklahoma State University's figures for single shapes: 60 x 25 ft is 1,500, a circle 80 ft across 5,026.5, a triangle
        // 30 x 26 / 2 is 390 sq ft; the sum is arithmetic.
        var yard = new PatchShape.Pieces(
        [
            new(new PatchShape.Circle(Feet(80)), false), new(new PatchShape.Rectangle(Feet(60), Feet(25)), true), new(new PatchShape.Triangle(Feet(30), Feet(26)), false),
        ]);
        Assert.Equal(5026.5 - 1500.0 + 390.0, SquareFeet(yard), 0.05);
    }

    [Fact]
    public void Parts_of_circles()
    {
        // Plane geometry: half a circle three ways; a quarter; a bow of a third of the round by its closed form.
        Assert.Equal(0.5 * Math.PI * 400, SquareFeet(new PatchShape.Slice(Feet(20), Fraction.Of(0.5))), 9);
        Assert.Equal(0.5 * Math.PI * 400, SquareFeet(new PatchShape.Bow(Feet(40), Feet(20))), 9);
        Assert.Equal(0.25 * Math.PI * 400, SquareFeet(new PatchShape.Slice(Feet(20), Fraction.Of(0.25))), 9);
        Assert.Equal(400.0 * (Math.PI / 3.0 - Math.Sqrt(3.0) / 4.0), SquareFeet(new PatchShape.Bow(Feet(20.0 * Math.Sqrt(3.0)), Feet(10))), 9);

        // A flat bow is two thirds of chord times rise (Archimedes, Quadrature of the Parabola, in the limit).
        Assert.Equal(2.0 / 3.0 * 100.0 * 0.01, SquareFeet(new PatchShape.Bow(Feet(100), Feet(0.01))), 1e-6);

        Assert.Equal(20.0 * Math.PI + 40.0, ShapeEdge.Outer(new PatchShape.Bow(Feet(40), Feet(20)))!.Value.Feet, 9);
        Assert.Equal(20.0 * Math.PI + 40.0, ShapeEdge.Outer(new PatchShape.Slice(Feet(20), Fraction.Of(0.5)))!.Value.Feet, 9);
    }

    [Fact]
    public void Corners_from_two_distances_rebuild_the_outline() => Outlines.Sample(ring =>
    {
        // Distances measured on a known outline with NetTopologySuite, then trilaterated: the same area and perimeter come back.
        var (a, b) = (new Coordinate(0, 0), new Coordinate(17, 0));
        TapedCorner[] corners = [.. ring.Select(p => new TapedCorner(
            Length.FromMeters(new Coordinate(p.EastM, p.NorthM).Distance(a)), Length.FromMeters(new Coordinate(p.EastM, p.NorthM).Distance(b)), p.NorthM >= 0 ? BaseSide.Left : BaseSide.Right))];
        var taped = new PatchShape.Taped(Length.FromMeters(17), corners);
        Assert.All(TapedRing.Points(taped).Zip(ring), pair =>
        {
            Assert.Equal(pair.Second.EastM, pair.First!.Value.EastM, 1e-6);

            // Near the base line the height above it follows from a difference of nearly equal lengths.
            Assert.Equal(pair.Second.NorthM, pair.First.Value.NorthM, 1e-5);
        });
        var outside = Polygon(ring, []);
        Assert.Equal(outside.Area, PatchArea.Of(taped).SquareMeters, 1e-3);
        Assert.Equal(outside.ExteriorRing.Length, ShapeEdge.Outer(taped)!.Value.Meters, 1e-3);
    });

    [Fact]
    public void Shared_ground_is_what_NetTopologySuite_says() => Gen.Select(Outlines, Outlines, Gen.Double[-30, 30], Gen.Double[-30, 30], Gen.Bool).Sample((first, second, east, north, holed) =>
    {
        GroundPoint[] moved = [.. second.Select(p => new GroundPoint(p.EastM + east, p.NorthM + north))];
        GroundPoint[][] holes = holed ? [[.. moved.Select(p => new GroundPoint(east + 0.4 * (p.EastM - east), north + 0.4 * (p.NorthM - north)))]] : [];
        var expected = Polygon(first, []).Intersection(Polygon(moved, holes)).Area;
        Assert.Equal(expected, OverlapArea.Of(new(first, []), new(moved, holes)).SquareMeters, 1e-6);
    });

    [Fact]
    public void Perimeters_are_what_NetTopologySuite_says() => Outlines.Sample(ring =>
        Assert.Equal(Polygon(ring, []).ExteriorRing.Length, ShapeEdge.Outer(new PatchShape.Outline(ring, []))!.Value.Meters, 1e-9));

    [Fact]
    public void Every_fault_agrees_with_NetTopologySuite() => Gen.Select(Scatter, Scatter).Sample((ring, hole) =>
    {
        var sound = OutlineFaults.Of(new(ring, [hole])).Count == 0;
        var outside = Polygon(ring, [hole]);

        // Ours also refuses a hole that touches the edge in one point, which the standard allows.
        if (sound)
        {
            Assert.True(outside.IsValid);
        }
        else if (outside.IsValid)
        {
            Assert.True(outside.ExteriorRing.Intersects(outside.GetInteriorRingN(0)));
        }
    });

    private static Polygon Polygon(IReadOnlyList<GroundPoint> ring, IReadOnlyList<IReadOnlyList<GroundPoint>> holes) => Factory.CreatePolygon(Ring(ring), [.. holes.Select(Ring)]);

    private static LinearRing Ring(IReadOnlyList<GroundPoint> ring) => Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.EastM, p.NorthM))]);

    private static readonly Gen<GroundPoint[]> Outlines = Gen.Double[5, 40].Array[3, 24].Select(radii =>
        radii.Select((r, i) => new GroundPoint(r * Math.Cos(2 * Math.PI * i / radii.Length + 0.1), r * Math.Sin(2 * Math.PI * i / radii.Length + 0.1))).ToArray());

    private static readonly Gen<GroundPoint[]> Scatter =
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200]).Select(p => new GroundPoint(p.Item1 / 8.0, p.Item2 / 8.0)).Array[3, 5]
            .Where(ring => ring.Distinct().Count() == ring.Length);
}
