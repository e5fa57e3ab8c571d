using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Overview;

public sealed class PlanViewTests
{
    [Fact]
    public void A_chessboard_on_the_ground_lies_square_in_the_plan()
    {
        static (byte, byte, byte) Board(PlanPoint p) => ((int)Math.Floor(p.AcrossM) + (int)Math.Floor(p.AwayM)) % 2 == 0 ? ((byte)40, (byte)120, (byte)30) : ((byte)150, (byte)120, (byte)80);
        var camera = Camera.Phone;
        var plan = Plan(camera, camera.Picture(Board), 8.0, 10.0, 20.0);
        Assert.Equal((160, 200, 20.0), (plan.Image.Width, plan.Image.Height, plan.Grid.PixelsPerMeter));

        // Away from the lines between squares, nearer than 7 m, every pixel has its square's own color.
        var wrong = 0;
        for (var row = 60; row < 200; row++)
        {
            for (var column = 0; column < 160; column++)
            {
                var (across, away) = ((column + 0.5) / 20.0, (200 - row - 0.5) / 20.0);
                var (_, g, b) = Board(new(across, away));
                var inSquare = OffLine(across) > 0.1 && OffLine(away) > 0.15;
                wrong += inSquare && plan.Inside[row * 160 + column] && Math.Abs(plan.Image.Rgb[3 * (row * 160 + column) + 2] - b) > 2 ? 1 : 0;
            }
        }

        Assert.Equal(0, wrong);
    }

    [Fact]
    public void Near_and_far_ground_count_alike()
    {
        // Straw beyond 5 m: half of the ground, but a small part of the photo.
        var camera = Camera.Phone with { AcrossM = 3.0, AwayM = -5.5 };
        var plan = Plan(camera, camera.Picture(p => p.AwayM < 5.0 ? ((byte)0, (byte)0, (byte)0) : ((byte)255, (byte)255, (byte)255)), 6.0, 10.0, 25.0);
        var seen = plan.Inside.Select((inside, i) => (inside, White: plan.Image.Rgb[3 * i] / 255.0)).Where(p => p.inside).Average(p => p.White);
        Assert.Equal(0.5, seen, 0.01);
    }

    [Fact]
    public void What_the_photo_does_not_show_is_not_inside()
    {
        var camera = Camera.Phone with { AcrossM = -2.0 };
        var plan = Plan(camera, camera.Picture(_ => (60, 120, 40)), 8.0, 10.0, 10.0);
        var nearRight = plan.Inside[(plan.Image.Height - 1) * plan.Image.Width + plan.Image.Width - 1];
        Assert.False(nearRight);
        Assert.Contains(true, plan.Inside);
        Assert.All(plan.Inside.Select((inside, i) => (inside, i)).Where(p => p.inside), p => Assert.Equal(120, plan.Image.Rgb[3 * p.i + 1]));
    }

    [Fact]
    public void Averages_are_taken_in_light_not_in_bytes()
    {
        // A fine board of black and white is half the light: sRGB 188 (IEC 61966-2-1), not 128.
        var camera = new Camera(1000, 1000, 2.0, 90.0, 800.0, 1.0, 1.0);
        var plan = Plan(camera, camera.Picture(p => ((int)Math.Floor(p.AcrossM * 100.0) + (int)Math.Floor(p.AwayM * 100.0)) % 2 == 0 ? ((byte)0, (byte)0, (byte)0) : ((byte)255, (byte)255, (byte)255)), 2.0, 2.0, 5.0);
        Assert.Equal(188.0, plan.Image.Rgb.Average(v => (double)v), 3.0);
    }

    [Fact]
    public void A_large_lawn_is_drawn_coarser_not_larger()
    {
        var camera = Camera.Phone;
        var plan = Plan(camera, camera.Picture(_ => (60, 120, 40)), 8.0, 10.0, 1000.0);
        Assert.Equal((1280, 1600, 160.0), (plan.Image.Width, plan.Image.Height, plan.Grid.PixelsPerMeter));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanGrid.Of(MarkFrame.Rectangle(8.0, 10.0), double.NaN));
    }

    [Fact]
    public void Ground_and_picture_map_onto_each_other()
    {
        var grid = PlanGrid.Of(MarkFrame.Rectangle(8.0, 10.0), 20.0);
        Assert.Equal(new ImagePoint(0.0, 200.0), grid.Point(new(0.0, 0.0)));
        Assert.Equal(new ImagePoint(160.0, 0.0), grid.Point(new(8.0, 10.0)));
        Assert.Equal(new PlanPoint(2.5, 7.5), grid.Ground(50.0, 50.0));
    }

    [Fact]
    public void A_map_from_the_plan_view_finds_the_same_spot_as_one_from_the_photo()
    {
        var camera = Camera.Phone with { AcrossM = 3.0, AwayM = -5.0 };
        bool Bare(PlanPoint p) => double.Hypot(p.AcrossM - 3.0, p.AwayM - 2.0) < 1.0;
        var view = camera.View(6.0, 4.0);
        var plan = PlanView.Of(camera.Picture(p => Bare(p) ? ((byte)150, (byte)120, (byte)80) : ((byte)50, (byte)130, (byte)40)), view, PlanGrid.Of(view.Frame, 100.0));
        var spot = Assert.Single(ThinSpots.In(CoverMap.Of(GreenCover.Measure(plan.Image).Mask, plan.Grid, view)).Spots);
        Assert.Equal(Math.PI, spot.AreaM2, 0.05 * Math.PI);
        Assert.Equal(ThinSpots.In(CoverMap.Of(camera.Mask(p => !Bare(p)), view)).AreaM2, spot.AreaM2, 0.03 * Math.PI);
    }

    private static PlanView Plan(Camera camera, PixelImage picture, double acrossM, double awayM, double pixelsPerMeter) =>
        PlanView.Of(picture, camera.View(acrossM, awayM), PlanGrid.Of(MarkFrame.Rectangle(acrossM, awayM), pixelsPerMeter));

    private static double OffLine(double meters) => Math.Abs(meters - Math.Round(meters));
}
