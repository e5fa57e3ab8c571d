using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Overview;

/// <summary>Reads the light of marked ground out of its photo.</summary>
internal sealed class PhotoReading(PixelImage photo, MarkedView view)
{
    // The marks may have been put on a smaller or larger copy of the photo.
    private readonly double _scaleX = (double)photo.Width / view.PhotoWidth;
    private readonly double _scaleY = (double)photo.Height / view.PhotoHeight;

    /// <summary>Mean light of a square of ground; null where its middle is not in the photo.</summary>
    internal (double R, double G, double B)? Mean(PlanPoint middle, double sideM, int mostAside)
    {
        var (perAcross, perAway) = view.PixelsPerMeter(middle);
        var (columns, rows) = (Count(perAcross * sideM * _scaleX, mostAside), Count(perAway * sideM * _scaleY, mostAside));
        var (r, g, b, taken) = (0.0, 0.0, 0.0, 0);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var (x, y) = view.Map(middle.AcrossM + ((column + 0.5) / columns - 0.5) * sideM, middle.AwayM + ((row + 0.5) / rows - 0.5) * sideM);
                if (Light(x * _scaleX, y * _scaleY) is var (lr, lg, lb))
                {
                    (r, g, b, taken) = (r + lr, g + lg, b + lb, taken + 1);
                }
            }
        }

        return taken == 0 ? null : (r / taken, g / taken, b / taken);
    }

    internal static int Count(double pixels, int most) => Math.Clamp((int)Math.Ceiling(pixels), 1, most);

    /// <summary>Light between the four nearest pixels; null outside the photo.</summary>
    private (double R, double G, double B)? Light(double x, double y)
    {
        if (!(x >= 0.0 && y >= 0.0 && x <= photo.Width && y <= photo.Height))
        {
            return null;
        }

        var (fx, fy) = (Math.Clamp(x - 0.5, 0.0, photo.Width - 1.0), Math.Clamp(y - 0.5, 0.0, photo.Height - 1.0));
        var (x0, y0) = ((int)fx, (int)fy);
        var (x1, y1) = (Math.Min(x0 + 1, photo.Width - 1), Math.Min(y0 + 1, photo.Height - 1));
        var (tx, ty) = (fx - x0, fy - y0);
        return (Channel(0), Channel(1), Channel(2));

        double Channel(int c)
        {
            double At(int column, int row) => LinearLight.Of(photo.Rgb[3 * (row * photo.Width + column) + c]);
            return (1.0 - ty) * ((1.0 - tx) * At(x0, y0) + tx * At(x1, y0)) + ty * ((1.0 - tx) * At(x0, y1) + tx * At(x1, y1));
        }
    }
}
