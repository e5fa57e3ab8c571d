using CsCheck;
using NetTopologySuite.Geometries;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using static Seedfall.Checks.Published.Trade.TradeData;
using Length = Seedfall.Engine.Units.Length;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Areas, layers and straw.</summary>
public sealed class AreaChecks
{
    private static readonly GeometryFactory Factory = new();

    private static Length Feet(double feet) => Length.FromFeet(feet);

    private static double SquareFeet(PatchShape shape) => PatchArea.Of(shape).SquareFeet;

    [Fact]
    public void Rectangle_circle_and_triangle()
    {
        // Oklahoma State University: 60 x 25 ft is 1,500; diameter 80 ft is 5,024 with pi 3.14; triangle 30 x 26 / 2 is 390 sq ft.
        Close(1500, SquareFeet(new PatchShape.Rectangle(Feet(60), Feet(25))));
        Close(5024, SquareFeet(new PatchShape.Circle(Feet(80))));
        Close(5026.5, SquareFeet(new PatchShape.Circle(Feet(80))), 1e-4);
        Close(390, SquareFeet(new PatchShape.Triangle(Feet(30), Feet(26))));
    }

    [Fact]
    public void Offsets_by_trapezoids_and_by_Simpson()
    {
        Length[] widths = [.. ((double[])[0, 12, 18, 20, 16, 10, 0]).Select(Feet)];
        // Arithmetic, not outside evidence.
        Close(760, OffsetArea.Trapezoid(Feet(10), widths).SquareFeet);
        Close(786.7, OffsetArea.Simpson(Feet(10), widths).SquareFeet);
        Close(786.7, SquareFeet(new PatchShape.Offsets(Feet(10), widths)));
    }

    [Fact]
    public void A_circle_by_offsets_is_closer_by_Simpson()
    {
        Length[] widths = [.. Enumerable.Range(0, 11).Select(i => Feet(2 * Math.Sqrt(400 - Math.Pow(-20 + 4 * i, 2))))];
        // Arithmetic on the circle's 1,256.6 sq ft: 3.3 % and 1.3 % short.
        Close(1256.6 * (1 - 0.033), OffsetArea.Trapezoid(Feet(4), widths).SquareFeet);
        Close(1256.6 * (1 - 0.013), OffsetArea.Simpson(Feet(4), widths).SquareFeet);
    }

    [Fact]
    public void A_slope_of_20_percent_has_2_percent_more_ground() =>
        // Arithmetic, not outside evidence.
        Close(1.0198, SlopeArea.Factor(20), 1e-4);

    [Fact]
    public void Sixteen_radii_as_a_polygon_fan()
    {
        // An installer's hand-out: 16 radii summing to 157.8 ft. A regular fan of the mean radius is arithmetic: 16/2 r^2 sin(22.5 deg).
        var radius = 157.8 / 16;
        GroundPoint[] ring = [.. Enumerable.Range(0, 16).Select(i => new GroundPoint(radius * Math.Cos(i * Math.PI / 8), radius * Math.Sin(i * Math.PI / 8)))];
        Close(8 * radius * radius * Math.Sin(Math.PI / 8), PolygonArea.Of(ring, []).SquareMeters, 1e-9);
    }

    [Theory]
    [InlineData(0.125, 0.386)]
    [InlineData(0.25, 0.772)]
    [InlineData(0.375, 1.157)]
    [InlineData(0.5, 1.543)]
    public void Layers_in_cubic_yards_on_a_thousand_square_feet(double inches, double yards) =>
        // Arithmetic, not outside evidence; 0.77 for a quarter inch is printed second-hand.
        Close(yards, CoverRates.LayerVolume(Area.FromThousandSquareFeet(1), Depth.FromInches(inches)).CubicYards);

    [Fact]
    public void Three_tons_of_straw_an_acre_are_138_pounds_a_thousand()
    {
        // York County Conservation District: 3 tons per acre; the conversion is arithmetic. Lawn straw is half of that.
        Close(137.7, MassPerArea.FromPoundsPerAcre(6000).PoundsPerThousandSquareFeet);
        // Extension bulletins, read second-hand: 60 to 80 lb per 1,000 sq ft.
        Assert.InRange(CoverRates.ByWeight(CoverKind.Straw).Rate.PoundsPerThousandSquareFeet, 60, 80);
    }

    [Fact]
    public void Polygons_with_holes_agree_with_NetTopologySuite() => StarWithHole.Sample(
        star =>
        {
            var (ring, hole) = star;
            var outside = Factory.CreatePolygon(Ring(ring), [Ring(hole)]);
            Close(outside.Area, PolygonArea.Of(ring, [hole]).SquareMeters, 1e-9);
        });

    [Fact]
    public void Rings_that_cross_are_found_where_NetTopologySuite_finds_them_invalid() => Scatter.Sample(
        ring => Assert.Equal(Factory.CreatePolygon(Ring(ring)).IsValid, RingCrossing.Within(ring) is null));

    private static LinearRing Ring(IReadOnlyList<GroundPoint> points) =>
        Factory.CreateLinearRing([.. points.Append(points[0]).Select(p => new Coordinate(p.EastM, p.NorthM))]);

    private static GroundPoint[] Around(double[] radii, double scale, double east, double north) =>
        [.. radii.Select((r, i) => new GroundPoint(east + scale * r * Math.Cos(2 * Math.PI * i / radii.Length), north + scale * r * Math.Sin(2 * Math.PI * i / radii.Length)))];

    /// <summary>Star-shaped outlines round a far center, with a smaller copy as hole.</summary>
    private static readonly Gen<(GroundPoint[] Ring, GroundPoint[] Hole)> StarWithHole =
        from radii in Gen.Double[5, 40].Array[3, 30]
        from east in Gen.Double[-500_000, 500_000]
        from north in Gen.Double[-5_000_000, 5_000_000]
        select (Around(radii, 1.0, east, north), Around(radii, 0.3, east, north));

    /// <summary>Points anywhere on a fine grid: most such rings cross themselves, the small ones often do not.</summary>
    private static readonly Gen<GroundPoint[]> Scatter =
        Gen.Select(Gen.Int[0, 400], Gen.Int[0, 400]).Select(p => new GroundPoint(p.Item1 / 8.0, p.Item2 / 8.0)).Array[3, 7]
            .Where(ring => ring.Distinct().Count() == ring.Length);
}
