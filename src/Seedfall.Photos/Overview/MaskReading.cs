using Seedfall.Photos.Cover;

namespace Seedfall.Photos.Overview;

/// <summary>Reads the cover of marked ground out of a mask.</summary>
/// <param name="scale">Pixels measured to a pixel of the photo the marks were put on.</param>
/// <param name="inMask">Where ground lies in the mask.</param>
internal sealed class MaskReading(CoverMask mask, MarkedView view, double scale, Func<double, double, ImagePoint> inMask, int mostAside)
{
    internal CoverCell Cell(PlanPoint middle, double acrossM, double awayM, CoverMapSettings settings)
    {
        if (view.ToPhoto(middle) is null)
        {
            return default;
        }

        var (perAcross, perAway) = view.PixelsPerMeter(middle);

        // At least four aside, so that the share inside slanting edges is known to a few percent.
        var columns = Math.Max(4, PhotoReading.Count(perAcross * acrossM, mostAside));
        var rows = Math.Max(4, PhotoReading.Count(perAway * awayM, mostAside));
        var (inside, told, green) = (0, 0, 0.0);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var (across, away) = (middle.AcrossM + ((column + 0.5) / columns - 0.5) * acrossM, middle.AwayM + ((row + 0.5) / rows - 0.5) * awayM);
                if ((view.Frame.IsRectangle || Rings.Contains(view.Frame.Corners, across, away)) && Index(across, away) is { } at)
                {
                    inside++;
                    var chance = mask.Chance[at];
                    (told, green) = chance == CoverMask.LeftOut ? (told, green) : (told + 1, green + chance / (double)CoverMask.Sure);
                }
            }
        }

        var seen = view.At(middle);
        var (share, known) = (inside / (double)(columns * rows), told / (double)Math.Max(1, inside));
        var pixels = seen.PixelsPerSquareMeter * acrossM * awayM * share * known * scale * scale;
        var longestM = seen.LongestM / scale;
        var fine = pixels >= settings.LeastPixels && longestM <= settings.MostPixelShare * Math.Max(acrossM, awayM) && seen.ElevationDeg >= settings.LeastElevationDeg;
        var state = share == 0.0 ? CellState.Outside : fine && told > 0 ? CellState.Measured : CellState.TooCoarse;
        return new(state, told == 0 ? 0.0 : green / told, pixels, longestM, seen.ElevationDeg, share);
    }

    /// <summary>Null where the ground is not in the photo.</summary>
    private int? Index(double acrossM, double awayM)
    {
        var (photoX, photoY) = view.Map(acrossM, awayM);
        var at = inMask(acrossM, awayM);
        var (column, row) = (Math.Floor(at.X), Math.Floor(at.Y));
        return photoX >= 0.0 && photoY >= 0.0 && photoX <= view.PhotoWidth && photoY <= view.PhotoHeight && column >= 0.0 && row >= 0.0 && column < mask.Width && row < mask.Height
            ? (int)row * mask.Width + (int)column
            : null;
    }
}
