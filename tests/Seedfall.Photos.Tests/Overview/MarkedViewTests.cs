using CsCheck;
using Seedfall.Photos.Overview;

namespace Seedfall.Photos.Tests.Overview;

public sealed class MarkedViewTests
{
    /// <summary>Cameras of every height, tilt and turn that see the four corners before them.</summary>
    private static readonly Gen<Camera> Cameras =
        Gen.Select(Gen.Double[1.0, 6.0], Gen.Double[12.0, 90.0], Gen.Double[500.0, 1500.0], Gen.Double[-25.0, 25.0])
            .Select((height, down, focal, turn) => new Camera(1000, 750, height, down, focal, 4.0, -3.0, turn));

    [Fact]
    public void Marks_of_any_camera_give_its_own_mapping_back() => Gen.Select(Cameras, Gen.Double[0.5, 7.5], Gen.Double[0.5, 9.5]).Sample((camera, across, away) =>
    {
        var (view, ground) = (camera.View(8.0, 10.0), new PlanPoint(across, away));
        var (seen, truth) = (view.ToPhoto(ground)!.Value, camera.Project(ground));
        Assert.Equal(truth.X, seen.X, 1e-6 * (1.0 + Math.Abs(truth.X)));
        Assert.Equal(truth.Y, seen.Y, 1e-6 * (1.0 + Math.Abs(truth.Y)));
        var back = view.ToPlan(seen)!.Value;
        Assert.Equal(across, back.AcrossM, 1e-7);
        Assert.Equal(away, back.AwayM, 1e-7);
    });

    [Fact]
    public void The_four_marks_fall_on_their_corners() => Cameras.Sample(camera =>
    {
        var view = camera.View(8.0, 10.0);
        Assert.All(view.Marks.Zip(view.Frame.Corners), pair =>
        {
            var ground = view.ToPlan(pair.First)!.Value;
            Assert.Equal(0.0, double.Hypot(ground.AcrossM - pair.Second.AcrossM, ground.AwayM - pair.Second.AwayM), 1e-8);
        });
    });

    [Fact]
    public void Straight_down_every_pixel_covers_the_same_square()
    {
        // A pinhole camera of focal length f at height h sees (f / h)^2 pixels to the square meter: similar triangles.
        var view = new Camera(1000, 750, 2.0, 90.0, 800.0, 1.0, 1.0).View(2.0, 2.0);
        foreach (var ground in (PlanPoint[])[new(0.1, 0.1), new(1.0, 1.0), new(1.9, 0.4)])
        {
            var seen = view.At(ground);
            Assert.Equal(160_000.0, seen.PixelsPerSquareMeter, 0.01);
            Assert.Equal(0.0025, seen.LongestM, 1e-9);
            Assert.Equal(90.0, seen.ElevationDeg, 0.01);
        }
    }

    [Theory]
    [InlineData(15.0)]
    [InlineData(30.0)]
    [InlineData(60.0)]
    public void Where_the_camera_looks_the_steepness_is_its_tilt(double downDeg)
    {
        var camera = Camera.Phone with { DownDeg = downDeg };
        var seen = camera.View(8.0, 10.0).At(camera.Meet(500.0, 375.0)!.Value);
        var distanceM = camera.HeightM / Math.Sin(downDeg * Math.PI / 180.0);
        Assert.Equal(downDeg, seen.ElevationDeg, 1e-6);

        // One pixel there: d / f across the line of sight, that over the sine of the tilt along the ground.
        Assert.Equal(distanceM / camera.FocalPx / Math.Sin(downDeg * Math.PI / 180.0), seen.LongestM, 1e-9);
    }

    [Fact]
    public void Above_the_horizon_there_is_no_ground()
    {
        var view = Camera.Phone.View(8.0, 10.0);
        Assert.Null(view.ToPlan(new(500.0, 10.0)));
        Assert.NotNull(view.ToPlan(new(500.0, 700.0)));
        Assert.Null(view.ToPhoto(new(4.0, -50.0)));
    }

    [Theory]
    [InlineData(MarkProblem.NotFour, 0.0, 0.0, 10.0, 0.0, 10.0, 10.0)]
    [InlineData(MarkProblem.NotFour, 100.0, 700.0, 900.0, 700.0, double.NaN, 300.0, 300.0, 300.0)]
    [InlineData(MarkProblem.TooClose, 100.0, 700.0, 900.0, 700.0, 700.0, 300.0, 701.0, 301.0)]
    [InlineData(MarkProblem.TooClose, 100.0, 700.0, 900.0, 700.0, 700.0, 300.0, 100.0, 700.0)]
    [InlineData(MarkProblem.InLine, 100.0, 700.0, 500.0, 700.0, 900.0, 700.0, 300.0, 300.0)]
    [InlineData(MarkProblem.InLine, 100.0, 700.0, 900.0, 700.0, 700.0, 690.0, 300.0, 695.0)]
    [InlineData(MarkProblem.Crossed, 100.0, 700.0, 900.0, 700.0, 300.0, 300.0, 700.0, 300.0)]
    [InlineData(MarkProblem.Dented, 100.0, 700.0, 900.0, 700.0, 500.0, 600.0, 500.0, 200.0)]
    [InlineData(MarkProblem.WrongWayRound, 900.0, 700.0, 100.0, 700.0, 300.0, 300.0, 700.0, 300.0)]
    public void Marks_that_cannot_be_are_refused_by_name(MarkProblem expected, params double[] numbers)
    {
        var (view, problem) = MarkedView.Of(1000, 750, [.. numbers.Chunk(2).Select(n => new ImagePoint(n[0], n[1]))], MarkFrame.Rectangle(8.0, 10.0));
        Assert.Null(view);
        Assert.Equal(expected, problem);
    }

    [Fact]
    public void Any_four_marks_give_a_view_or_a_name() => Gen.Double[-50.0, 1050.0].Array[8].Sample(n =>
    {
        var (view, problem) = MarkedView.Of(1000, 750, [.. n.Chunk(2).Select(p => new ImagePoint(p[0], p[1]))], MarkFrame.Rectangle(8.0, 10.0));
        Assert.True(view is null != problem is null);
        if (view is not null)
        {
            Assert.All(view.Frame.Corners, c => Assert.True(double.IsFinite(view.At(c).LongestM)));
        }
    });

    [Fact]
    public void Four_sides_and_a_diagonal_by_tape_fix_the_corners()
    {
        // The 3-4-5 triangle twice: a rectangle of 4 by 3.
        var frame = MarkFrame.Taped(4.0, 3.0, 4.0, 3.0, 5.0)!;
        Assert.Equal(12.0, frame.AreaM2, 1e-9);
        Assert.Equal(new PlanPoint(4.0, 3.0), frame.Corners[2] with { AcrossM = Math.Round(frame.Corners[2].AcrossM, 9), AwayM = Math.Round(frame.Corners[2].AwayM, 9) });
        Assert.Null(MarkFrame.Taped(4.0, 3.0, 4.0, 3.0, 8.0));
        Assert.Null(MarkFrame.Taped(1.0, 3.0, 9.0, 3.0, 5.0));
    }

    [Fact]
    public void Tapes_round_any_convex_shape_give_it_back() => Gen.Double[-0.9, 0.9].Array[8].Sample(n =>
    {
        PlanPoint[] corners = [new(0.0, 0.0), new(8.0 + n[0], 0.0), new(8.0 + n[2], 10.0 + n[3]), new(n[4], 10.0 + n[5])];
        double Tape(int a, int b) => double.Hypot(corners[a].AcrossM - corners[b].AcrossM, corners[a].AwayM - corners[b].AwayM);
        var frame = MarkFrame.Taped(Tape(0, 1), Tape(1, 2), Tape(2, 3), Tape(3, 0), Tape(0, 2))!;
        Assert.All(corners.Zip(frame.Corners), p => Assert.Equal(0.0, double.Hypot(p.First.AcrossM - p.Second.AcrossM, p.First.AwayM - p.Second.AwayM), 1e-9));
    });
}
