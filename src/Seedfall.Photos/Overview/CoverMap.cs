using Seedfall.Photos.Cover;

namespace Seedfall.Photos.Overview;

/// <summary>What is known of one cell of ground.</summary>
public enum CellState
{
    /// <summary>Not within the marks, or not in the photo.</summary>
    Outside,

    /// <summary>Seen by too few photo pixels, or too flat: its cover is not to be relied on.</summary>
    TooCoarse,

    Measured,
}

/// <summary>One cell of the cover map.</summary>
/// <param name="Cover">Share of the ground seen green, 0 to 1; 0 where it lies outside.</param>
/// <param name="PhotoPixels">Photo pixels it rests on.</param>
/// <param name="LongestM">Ground covered by one of those pixels in its longest direction, m.</param>
/// <param name="ElevationDeg">How steeply it was looked at.</param>
/// <param name="Inside">Share of the cell that lies within the marks and the photo.</param>
public readonly record struct CoverCell(CellState State, double Cover, double PhotoPixels, double LongestM, double ElevationDeg, double Inside);

/// <summary>From when on a cell is seen too coarsely.</summary>
public sealed record CoverMapSettings
{
    /// <summary>Wanted side of a cell, m. Cells of a rectangle are made to fit it.</summary>
    public double CellM { get; init; } = 0.25;

    /// <summary>Fewest photo pixels a cell must rest on: with 25 the chance error of its cover is at most 0.1.</summary>
    public double LeastPixels { get; init; } = 25.0;

    /// <summary>Longest ground one photo pixel may cover, of the cell's side.</summary>
    public double MostPixelShare { get; init; } = 0.5;

    /// <summary>Flattest look, degrees: below, leaves hide nearly all ground behind them.</summary>
    public double LeastElevationDeg { get; init; } = 8.0;
}

/// <summary>Cover over marked ground in a grid of equal cells; row 0 is nearest to the camera.</summary>
public sealed class CoverMap
{
    private const int MostCells = 250_000;
    private const int MostSamplesAside = 24;
    private readonly CoverCell[] _cells;

    private CoverMap(MarkedView view, PlanPoint origin, int columns, int rows, double cellAcrossM, double cellAwayM, CoverCell[] cells)
    {
        (View, Origin, Columns, Rows, CellAcrossM, CellAwayM, _cells) = (view, origin, columns, rows, cellAcrossM, cellAwayM, cells);
        double Ground(CellState state) => cells.Where(c => c.State == state).Sum(c => c.Inside) * cellAcrossM * cellAwayM;
        (MeasuredM2, TooCoarseM2) = (Ground(CellState.Measured), Ground(CellState.TooCoarse));
        Cover = MeasuredM2 > 0.0 ? cells.Where(c => c.State == CellState.Measured).Sum(c => c.Cover * c.Inside) * cellAcrossM * cellAwayM / MeasuredM2 : null;
    }

    public MarkedView View { get; }

    /// <summary>Ground at the near left corner of the first cell.</summary>
    public PlanPoint Origin { get; }

    public int Columns { get; }

    public int Rows { get; }

    public double CellAcrossM { get; }

    public double CellAwayM { get; }

    /// <summary>Ground measured, m2.</summary>
    public double MeasuredM2 { get; }

    /// <summary>Ground within the marks that was seen too coarsely, m2.</summary>
    public double TooCoarseM2 { get; }

    /// <summary>Mean cover of the measured ground, every square meter counted alike; null where none is measured.</summary>
    public double? Cover { get; }

    public CoverCell this[int column, int row] => _cells[row * Columns + column];

    /// <summary>Cover from the mask of the plan view. What each cell rests on is still counted in pixels of the photo.</summary>
    public static CoverMap Of(CoverMask mask, PlanGrid grid, MarkedView view, CoverMapSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(mask);
        ArgumentNullException.ThrowIfNull(grid);
        return (mask.Width, mask.Height) == (grid.Width, grid.Height)
            ? Of(mask, view, 1.0, (across, away) => grid.Point(new(across, away)), settings)
            : throw new ArgumentException($"expected a mask of {grid.Width} x {grid.Height}, found {mask.Width} x {mask.Height}", nameof(mask));
    }

    /// <summary>Cover from the mask of a photo, or of a smaller copy of it. Samples lie evenly over the ground, not over the photo, so near and far ground count alike.</summary>
    public static CoverMap Of(CoverMask mask, MarkedView view, CoverMapSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(mask);
        ArgumentNullException.ThrowIfNull(view);
        var (scaleX, scaleY) = ((double)mask.Width / view.PhotoWidth, (double)mask.Height / view.PhotoHeight);
        return Of(mask, view, Math.Min(scaleX, scaleY), (across, away) => view.Map(across, away) is var (x, y) ? new(scaleX * x, scaleY * y) : default, settings);
    }

    /// <summary>The ground at the middle of a cell.</summary>
    public PlanPoint Middle(int column, int row) => new(Origin.AcrossM + (column + 0.5) * CellAcrossM, Origin.AwayM + (row + 0.5) * CellAwayM);

    private static CoverMap Of(CoverMask mask, MarkedView view, double scale, Func<double, double, ImagePoint> inMask, CoverMapSettings? settings)
    {
        ArgumentNullException.ThrowIfNull(view);
        var wanted = settings ?? new CoverMapSettings();
        var corners = view.Frame.Corners;
        var origin = new PlanPoint(corners.Min(c => c.AcrossM), corners.Min(c => c.AwayM));
        var (acrossM, awayM) = (corners.Max(c => c.AcrossM) - origin.AcrossM, corners.Max(c => c.AwayM) - origin.AwayM);
        var cellM = Math.Max(wanted.CellM, Math.Sqrt(acrossM * awayM / MostCells));
        var (columns, rows) = (Math.Max(1, (int)Math.Round(acrossM / cellM)), Math.Max(1, (int)Math.Round(awayM / cellM)));
        var (cellAcross, cellAway) = (acrossM / columns, awayM / rows);
        var reading = new MaskReading(mask, view, scale, inMask, MostSamplesAside);
        var cells = new CoverCell[columns * rows];
        for (var i = 0; i < cells.Length; i++)
        {
            var middle = new PlanPoint(origin.AcrossM + (i % columns + 0.5) * cellAcross, origin.AwayM + (i / columns + 0.5) * cellAway);
            cells[i] = reading.Cell(middle, cellAcross, cellAway, wanted);
        }

        return new(view, origin, columns, rows, cellAcross, cellAway, cells);
    }
}
