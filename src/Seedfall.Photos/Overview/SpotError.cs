namespace Seedfall.Photos.Overview;

/// <summary>How far a thin spot's area may be off, about nine times of ten.</summary>
internal static class SpotError
{
    /// <summary>Where in a cell the edge of a spot really runs, of the cell's side.</summary>
    private const double EdgeInCell = 0.25;

    /// <summary>
    /// Half width of the range, m2: the edge may lie off all round, <c>dE = P hypot(cell / 4, pixel / 2)</c>, with <c>P</c> the length
    /// of the edge and <c>pixel</c> the ground under one photo pixel; and each mark may be off, <c>dM^2 = sum(dA_i^2)</c> over the
    /// eight ways to move one mark; <c>d = hypot(dE, dM)</c>.
    /// </summary>
    internal static double M2(CoverMap map, IReadOnlyList<PlanPoint> ring, IReadOnlyList<IReadOnlyList<PlanPoint>> holes, PlanPoint middle, double markErrorShare)
    {
        var edgeM = Rings.Length(ring) + holes.Sum(Rings.Length);
        var pixelM = map.View.At(middle).LongestM;
        var edge = edgeM * double.Hypot(EdgeInCell * Math.Max(map.CellAcrossM, map.CellAwayM), 0.5 * pixelM);
        return double.Hypot(edge, ByMarks(map.View, ring, markErrorShare * map.View.PhotoWidth));
    }

    private static double ByMarks(MarkedView view, IReadOnlyList<PlanPoint> ring, double markErrorPx)
    {
        var (area, square) = (Rings.Area(ring), 0.0);
        ImagePoint[] seen = [.. ring.Select(p => view.ToPhoto(p)).OfType<ImagePoint>()];
        for (var mark = 0; mark < 4; mark++)
        {
            foreach (var (x, y) in ((double, double)[])[(markErrorPx, 0.0), (0.0, markErrorPx)])
            {
                if (view.Nudged(mark, x, y) is { } nudged)
                {
                    var moved = Rings.Area([.. seen.Select(p => nudged.ToPlan(p)).OfType<PlanPoint>()]);
                    square += (moved - area) * (moved - area);
                }
            }
        }

        return Math.Sqrt(square);
    }
}
