using Seedfall.Photos.Overview;

namespace Seedfall.Photos.Tests.Overview;

public sealed class CoverMapTests
{
    [Fact]
    public void Cover_is_of_the_ground_not_of_the_photo()
    {
        var camera = Camera.Phone with { AcrossM = 2.0, AwayM = -4.0 };
        var mask = camera.Mask(p => p.AwayM < 3.0);
        var map = CoverMap.Of(mask, camera.View(4.0, 6.0));
        Assert.Equal(0.5, map.Cover!.Value, 0.01);
        Assert.Equal(24.0, map.MeasuredM2 + map.TooCoarseM2, 1e-6);

        // The same count of green over all marked photo pixels says far more: the near half fills most of the picture.
        var marked = Enumerable.Range(0, 1000 * 750).Where(i => camera.Meet(i % 1000 + 0.5, i / 1000 + 0.5) is { AcrossM: > 0.0 and < 4.0, AwayM: > 0.0 and < 6.0 }).ToList();
        Assert.InRange(marked.Average(i => mask.IsGreen(i % 1000, i / 1000) ? 1.0 : 0.0), 0.65, 0.85);
    }

    [Fact]
    public void Cells_fit_a_rectangle()
    {
        var map = CoverMap.Of(Camera.Phone.Mask(_ => true), Camera.Phone.View(3.1, 4.9));
        Assert.Equal((12, 20), (map.Columns, map.Rows));
        Assert.Equal(3.1, map.Columns * map.CellAcrossM, 1e-12);
        Assert.Equal(4.9, map.Rows * map.CellAwayM, 1e-12);
    }

    [Fact]
    public void Far_cells_rest_on_few_pixels_and_say_so()
    {
        var map = CoverMap.Of(Camera.Phone.Mask(_ => true), Camera.Phone.View(8.0, 30.0));
        var middle = map.Columns / 2;
        var (near, far) = (map[middle, 8], map[middle, map.Rows - 1]);
        Assert.Equal(CellState.Measured, near.State);
        Assert.Equal(CellState.TooCoarse, far.State);
        Assert.True(near.PhotoPixels > 50.0 * far.PhotoPixels);
        Assert.True(map.TooCoarseM2 > 0.0);

        // Pixels of a cell, counted one by one in the photo: right to half a pixel all round.
        var (cell, at) = (map[middle, 12], map.Middle(middle, 12));
        var counted = Enumerable.Range(0, 1000 * 750).Count(i => Camera.Phone.Meet(i % 1000 + 0.5, i / 1000 + 0.5) is { } p
            && Math.Abs(p.AcrossM - at.AcrossM) < 0.5 * map.CellAcrossM && Math.Abs(p.AwayM - at.AwayM) < 0.5 * map.CellAwayM);
        Assert.Equal(counted, cell.PhotoPixels, 4.0 * Math.Sqrt(counted) / 2.0);
    }

    [Fact]
    public void A_mask_half_the_size_of_the_photo_gives_the_same_cover()
    {
        var camera = Camera.Phone with { AcrossM = 3.0, AwayM = -5.0 };
        var half = camera with { Width = 500, Height = 375, FocalPx = 390.0 };
        bool Green(PlanPoint p) => double.Hypot(p.AcrossM - 3.0, p.AwayM - 1.5) > 1.2;
        var (full, small) = (CoverMap.Of(camera.Mask(Green), camera.View(6.0, 3.0)), CoverMap.Of(half.Mask(Green), camera.View(6.0, 3.0)));
        Assert.Equal(full.Cover!.Value, small.Cover!.Value, 0.01);
        Assert.Equal(full[10, 2].PhotoPixels, 4.0 * small[10, 2].PhotoPixels, 1.0);
    }

    [Fact]
    public void What_could_not_be_told_does_not_count()
    {
        var camera = Camera.Phone with { AcrossM = 2.0, AwayM = -4.0 };
        var map = CoverMap.Of(camera.Mask(_ => true, leftOut: p => p.AcrossM < 2.0), camera.View(4.0, 4.0));
        Assert.Equal(1.0, map.Cover!.Value, 0.01);
        Assert.Equal(CellState.TooCoarse, map[0, 8].State);
    }
}
