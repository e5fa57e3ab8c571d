using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Sheets;

namespace Seedfall.Planning.Tests.Ground;

public sealed class SheetTests
{
    private static readonly GroundSheet Sheet = new()
    {
        Origin = new(40.4, -86.9),
        Boundary = Box(0, 0, 40, 30),
        Features = [new("House", FeatureKind.House, Box(12, 10, 26, 20)), new("Drive", FeatureKind.Drive, Box(26, 0, 30, 12))],
    };

    [Fact]
    public void Patches_side_by_side_are_sound_and_overlapping_ones_are_named()
    {
        Assert.Empty(LawnRules.Problems(Drawn(Box(0, 0, 12, 30), Box(12, 0, 26, 10))));
        var problem = Assert.Single(LawnRules.Problems(Drawn(Box(0, 0, 12, 30), Box(10, 0, 26, 10))));
        Assert.Equal("patches[1].shape.outline", problem.Path);
        Assert.Contains("20 m2 that also lie in a", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_sheet_outlines_say_nothing_of_each_other() =>
        Assert.Empty(LawnRules.Problems(Drawn(Box(0, 0, 12, 30), Box(10, 0, 26, 10)) with { Sheet = null }));

    [Fact]
    public void What_stands_out_or_was_not_cut_out_is_told_on_the_plan()
    {
        var told = PatchGround.Summarize(Drawn(Box(30, 0, 45, 30), Box(8, 12, 20, 30))).Assumptions;
        var outside = Assert.Single(told, a => a.Id == "assumed.a.boundary");
        Assert.Contains("(150 m2)", outside.Statement, StringComparison.Ordinal);
        var house = Assert.Single(told, a => a.Id == "assumed.b.feature-1");
        Assert.Contains("(64 m2)", house.Statement, StringComparison.Ordinal);
        Assert.DoesNotContain(told, a => a.Id.StartsWith("assumed.b.boundary", StringComparison.Ordinal));
    }

    [Fact]
    public void Features_inside_become_holes_and_those_across_the_edge_are_named()
    {
        var cut = SheetHoles.Cut(new(Box(5, 5, 35, 25), []), Sheet.Features);
        Assert.Equal(["House"], cut.Cut);
        Assert.Equal("Drive", Assert.Single(cut.Crossing).Name);
        Assert.Equal(600.0 - 140.0, PatchArea.Of(cut.Outline).SquareMeters, 9);
        Assert.Empty(OutlineFaults.Of(cut.Outline));
        var again = SheetHoles.Cut(cut.Outline, Sheet.Features);
        Assert.Equal(cut.Outline.Holes.Count, again.Outline.Holes.Count);
        Assert.Equal("Drive", Assert.Single(again.Crossing).Name);
    }

    [Theory]
    [InlineData("sheet.origin", 52.0, 13.0)]
    [InlineData("sheet.origin", -86.9, 40.4)]
    [InlineData("sheet.origin", double.NaN, 0.0)]
    public void An_origin_far_from_the_lawn_is_refused(string path, double latitude, double longitude) =>
        Assert.Equal(path, Assert.Single(LawnRules.Problems(Drawn(Box(0, 0, 5, 5)) with { Sheet = Sheet with { Origin = new(latitude, longitude) } })).Path);

    [Fact]
    public void A_sheet_that_crosses_itself_or_has_nameless_parts_is_refused()
    {
        GroundPoint[] bow = [new(0, 0), new(10, 10), new(10, 0), new(0, 10)];
        var lawn = Drawn(Box(0, 0, 5, 5)) with { Sheet = Sheet with { Boundary = bow, Features = [new(" ", FeatureKind.Bed, bow)] } };
        Assert.Equal(["sheet.boundary", "sheet.features[0].name", "sheet.features[0].ring"], LawnRules.Problems(lawn).Select(p => p.Path));
    }

    [Fact]
    public void Faults_are_told_with_their_places()
    {
        GroundPoint[] ring = [new(0, 0), new(10, 10), new(10, 0), new(0, 10)];
        var fault = Assert.Single(OutlineFaults.Of(new(ring, [])));
        Assert.Equal((OutlineFaultKind.CrossesItself, 1, 3), (fault.Kind, fault.Side, fault.OtherSide));
        Assert.Equal(new GroundPoint(5, 5), fault.At);

        var holes = OutlineFaults.Of(new(Box(0, 0, 10, 10), [Box(8, 2, 12, 4), Box(20, 20, 22, 22), Box(1, 1, 4, 4), Box(2, 2, 3, 3)]));
        Assert.Equal(2, holes.Count(f => f.Kind == OutlineFaultKind.HoleMeetsEdge));
        Assert.Single(holes, f => f is { Kind: OutlineFaultKind.HoleOutside, Ring: 2 });
        Assert.Single(holes, f => f is { Kind: OutlineFaultKind.HolesOverlap, Ring: 4, Other: 3 });
    }

    [Theory]
    [InlineData(13, 5, "which miss each other by 6.5617 ft (2 m)")]
    [InlineData(40, 12, "which miss each other by 26.2467 ft (8 m)")]
    public void A_corner_that_cannot_be_is_named(double fromA, double fromB, string found)
    {
        var taped = new PatchShape.Taped(Length.FromMeters(20), [new(Length.FromMeters(15), Length.FromMeters(15), BaseSide.Left), new(Length.Zero, Length.FromMeters(20), BaseSide.Left), new(Length.FromMeters(fromA), Length.FromMeters(fromB), BaseSide.Left)]);
        var problem = Assert.Single(LawnRules.Problems(Some.Lawn(Some.Patch("front", 1) with { Shape = taped })));
        Assert.Equal("patches[0].shape.taped.corners[2]", problem.Path);
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Impossible_pieces_are_named()
    {
        Assert.Equal("patches[0].shape.pieces[1].shape.sides", Path(new PatchShape.Pieces([new(new PatchShape.Circle(Length.FromMeters(9)), false), new(new PatchShape.Sides(Length.FromMeters(9), Length.FromMeters(3), Length.FromMeters(4)), false)])));
        Assert.Equal("patches[0].shape.pieces", Path(new PatchShape.Pieces([new(new PatchShape.Circle(Length.FromMeters(5)), false), new(new PatchShape.Circle(Length.FromMeters(6)), true)])));
        Assert.Equal("patches[0].shape.pieces", Path(new PatchShape.Pieces([])));
        Assert.Equal("patches[0].shape.slice.share", Path(new PatchShape.Slice(Length.FromMeters(5), Fraction.None)));
    }

    private static string Path(PatchShape shape) => Assert.Single(LawnRules.Problems(Some.Lawn(Some.Patch("front", 1) with { Shape = shape }))).Path;

    private static Lawn Drawn(params GroundPoint[][] rings) => Some.Lawn([.. rings.Select((r, i) => Some.Patch("ab"[i].ToString(), 1) with { Shape = new PatchShape.Outline(r, []) })]) with { Sheet = Sheet };

    private static GroundPoint[] Box(double west, double south, double east, double north) => [new(west, south), new(east, south), new(east, north), new(west, north)];
}
