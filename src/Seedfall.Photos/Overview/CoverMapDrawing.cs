using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Overview;

/// <summary>The cover map drawn over the plan view: the picture dimmed to gray, each cell tinted by its cover.</summary>
public static class CoverMapDrawing
{
    private const double Tint = 0.55;

    /// <summary>Tints from bare to green, each up to the share beside it.</summary>
    public static IReadOnlyList<(double UpTo, byte R, byte G, byte B)> Tints { get; } =
        [(0.25, 120, 72, 28), (0.50, 201, 169, 78), (0.75, 158, 184, 70), (1.0, 40, 130, 10)];

    /// <summary>As large as the plan view. Cells too coarse to rely on are hatched gray.</summary>
    public static PixelImage Draw(PixelImage plan, PlanGrid grid, CoverMap map)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(map);
        var rgb = plan.Rgb.ToArray();
        for (var at = 0; at < plan.Width * plan.Height; at++)
        {
            var (x, y) = (at % plan.Width, at / plan.Width);
            var ground = grid.Ground(x + 0.5, y + 0.5);
            var (column, row) = ((int)((ground.AcrossM - map.Origin.AcrossM) / map.CellAcrossM), (int)((ground.AwayM - map.Origin.AwayM) / map.CellAwayM));
            var cell = map[Math.Clamp(column, 0, map.Columns - 1), Math.Clamp(row, 0, map.Rows - 1)];
            if (cell.State != CellState.Outside)
            {
                Paint(rgb.AsSpan(3 * at, 3), cell, hatch: (x + y) % 12 < 4);
            }
        }

        return new PixelImage(plan.Width, plan.Height, rgb);
    }

    private static void Paint(Span<byte> pixel, CoverCell cell, bool hatch)
    {
        var gray = 0.30 * pixel[0] + 0.59 * pixel[1] + 0.11 * pixel[2];
        var (r, g, b) = cell.State == CellState.TooCoarse
            ? hatch ? ((byte)235, (byte)235, (byte)235) : ((byte)90, (byte)90, (byte)90)
            : Of(cell.Cover);
        (pixel[0], pixel[1], pixel[2]) = (Mixed(r), Mixed(g), Mixed(b));

        byte Mixed(byte tint) => (byte)(Tint * tint + (1.0 - Tint) * gray);
    }

    private static (byte R, byte G, byte B) Of(double cover)
    {
        var tint = Tints.First(t => cover <= t.UpTo || t.UpTo >= 1.0);
        return (tint.R, tint.G, tint.B);
    }
}
