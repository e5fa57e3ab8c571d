using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>What heads lay down over a patch.</summary>
public static class CoverageMapping
{
    private static readonly double CellM = Length.FromFeet(1.0).Meters;

    /// <summary>Most cells of a map: about 23 acres; a plan beyond that is a slip of units.</summary>
    private const double MostCells = 1_000_000.0;

    /// <summary>Rates of all heads running together, summed on a 1 ft grid that reaches as far as any water does.</summary>
    /// <param name="heads">At least one.</param>
    /// <param name="ground">The patch and what lies about it.</param>
    /// <param name="wind">Wind while they run.</param>
    public static CoverageResult Of(IReadOnlyList<CoverageHead> heads, CoverageGround ground, SprayWind wind)
    {
        ArgumentNullException.ThrowIfNull(ground);
        CoverageDoor.Check(heads, ground);
        SprayPattern[] patterns = [.. heads.Select(head => new SprayPattern(head, wind))];
        var (westM, eastM, southM, northM) = Bounds(heads, patterns, ground);
        var (columns, rows) = (Math.Ceiling((eastM - westM) / CellM), Math.Ceiling((northM - southM) / CellM));
        if (columns * rows > MostCells)
        {
            throw new ArgumentException("heads and patch spread over more than a million square feet", nameof(heads));
        }

        var map = new DepthMap(new GroundPoint(westM, southM), CellM, (int)columns, (int)rows, new double[(int)(columns * rows)], new bool[(int)(columns * rows)]);
        var (rates, inPatch, where) = ((double[])map.RateMmh, (bool[])map.InPatch, new int[map.RateMmh.Count]);
        for (var cell = 0; cell < rates.Length; cell++)
        {
            var middle = map.Middle(cell);
            where[cell] = ground.At(middle);
            inPatch[cell] = where[cell] == CoverageGround.InPatch;
        }

        for (var h = 0; h < heads.Count; h++)
        {
            Lay(map, rates, heads[h], patterns[h]);
        }

        return CoverageFigures.Of(map, where, ground, patterns.Sum(p => p.LandedLph), wind);
    }

    private static void Lay(DepthMap map, double[] rates, CoverageHead head, SprayPattern pattern)
    {
        int Column(double eastM) => Math.Clamp((int)((eastM - map.SouthWest.EastM) / CellM), 0, map.Columns - 1);
        int Row(double northM) => Math.Clamp((int)((northM - map.SouthWest.NorthM) / CellM), 0, map.Rows - 1);
        for (var row = Row(head.At.NorthM - pattern.ReachM); row <= Row(head.At.NorthM + pattern.ReachM); row++)
        {
            for (var column = Column(head.At.EastM - pattern.ReachM); column <= Column(head.At.EastM + pattern.ReachM); column++)
            {
                var cell = (row * map.Columns) + column;
                rates[cell] += pattern.RateMmh(map.Middle(cell));
            }
        }
    }

    private static (double West, double East, double South, double North) Bounds(IReadOnlyList<CoverageHead> heads, SprayPattern[] patterns, CoverageGround ground)
    {
        var points = ground.Corners.Concat(heads.SelectMany((head, h) => (GroundPoint[])
        [
            new(head.At.EastM - patterns[h].ReachM, head.At.NorthM - patterns[h].ReachM),
            new(head.At.EastM + patterns[h].ReachM, head.At.NorthM + patterns[h].ReachM),
        ])).ToArray();
        return (points.Min(p => p.EastM), points.Max(p => p.EastM), points.Min(p => p.NorthM), points.Max(p => p.NorthM));
    }
}
