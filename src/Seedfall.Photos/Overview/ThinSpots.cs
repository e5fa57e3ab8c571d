namespace Seedfall.Photos.Overview;

/// <summary>Ground with too little green.</summary>
/// <param name="Ring">Its outline, counterclockwise, with few points.</param>
/// <param name="Holes">Green islands in it.</param>
/// <param name="AreaM2">Its ground.</param>
/// <param name="LowM2">Least it is likely to be.</param>
/// <param name="HighM2">Most it is likely to be.</param>
/// <param name="Cover">Mean cover in it, 0 to 1.</param>
/// <param name="Middle">Middle of its outline.</param>
public sealed record ThinSpot(
    IReadOnlyList<PlanPoint> Ring, IReadOnlyList<IReadOnlyList<PlanPoint>> Holes, double AreaM2, double LowM2, double HighM2, double Cover, PlanPoint Middle);

/// <summary>What counts as a thin spot.</summary>
public sealed record ThinSpotSettings
{
    /// <summary>Cover below which ground is thin, 0 to 1.</summary>
    public double Threshold { get; init; } = 0.5;

    /// <summary>Smaller spots are passed over, m2; about three square feet.</summary>
    public double LeastM2 { get; init; } = 0.28;

    /// <summary>How far a finger misses a mark, of the photo's width.</summary>
    public double MarkErrorShare { get; init; } = 0.004;
}

/// <summary>The thin spots of a cover map, the largest first.</summary>
/// <param name="SmallCount">Spots passed over as too small.</param>
/// <param name="SmallM2">Ground in them.</param>
public sealed record ThinSpots(IReadOnlyList<ThinSpot> Spots, int SmallCount, double SmallM2)
{
    public double AreaM2 => Spots.Sum(s => s.AreaM2);

    /// <summary>All spots at their least: the causes of error push them the same way.</summary>
    public double LowM2 => Spots.Sum(s => s.LowM2);

    public double HighM2 => Spots.Sum(s => s.HighM2);

    public static ThinSpots In(CoverMap map, ThinSpotSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(map);
        var wanted = settings ?? new ThinSpotSettings();
        var rings = Contours.Below(map, wanted.Threshold);
        var outers = rings.Where(r => Rings.Area(r) > 0.0).OrderBy(Rings.Area).ToList();

        // A ring may touch another at a point, so that most of its points decide which one it lies in; the smallest such is its own.
        var holes = rings.Where(r => Rings.Area(r) < 0.0).ToLookup(h => outers.FirstOrDefault(o => 2 * h.Count(p => Rings.Contains(o, p.AcrossM, p.AwayM)) > h.Count));
        var all = outers.Select(o => (Ring: o, Holes: holes[o].ToList(), Area: Rings.Area(o) + holes[o].Sum(Rings.Area))).ToList();
        var small = all.Where(s => s.Area < wanted.LeastM2).ToList();
        return new(
            [.. all.Except(small).OrderByDescending(s => s.Area).Select(s => Spot(map, s.Ring, s.Holes, s.Area, wanted))],
            small.Count,
            small.Sum(s => s.Area));
    }

    private static ThinSpot Spot(CoverMap map, IReadOnlyList<PlanPoint> ring, List<IReadOnlyList<PlanPoint>> holes, double area, ThinSpotSettings settings)
    {
        var middle = new PlanPoint(ring.Average(p => p.AcrossM), ring.Average(p => p.AwayM));
        var error = SpotError.M2(map, ring, holes, middle, settings.MarkErrorShare);
        var fineM = 0.25 * Math.Min(map.CellAcrossM, map.CellAwayM);
        return new(
            Rings.Simplified(ring, fineM),
            [.. holes.Select(h => Rings.Simplified(h, fineM))],
            area,
            Math.Max(0.0, area - error),
            area + error,
            MeanCover(map, ring, holes),
            middle);
    }

    private static double MeanCover(CoverMap map, IReadOnlyList<PlanPoint> ring, List<IReadOnlyList<PlanPoint>> holes)
    {
        var (sum, ground) = (0.0, 0.0);
        for (var i = 0; i < map.Columns * map.Rows; i++)
        {
            var (cell, at) = (map[i % map.Columns, i / map.Columns], map.Middle(i % map.Columns, i / map.Columns));
            if (cell.State == CellState.Measured && Rings.Contains(ring, at.AcrossM, at.AwayM) && !holes.Any(h => Rings.Contains(h, at.AcrossM, at.AwayM)))
            {
                (sum, ground) = (sum + cell.Cover * cell.Inside, ground + cell.Inside);
            }
        }

        return sum / ground;
    }
}
