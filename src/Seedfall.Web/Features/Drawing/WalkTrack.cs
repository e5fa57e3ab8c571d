using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Web.Features.Drawing;

/// <summary>A walk as the phone wrote it down.</summary>
/// <param name="Fixes">Latitude, longitude, accuracy in meters, unix milliseconds of each.</param>
/// <param name="Origin">Latitude and longitude of the sheet's zero point; null for a sheet that has none yet.</param>
public sealed record WalkTrack(IReadOnlyList<IReadOnlyList<double>> Fixes, IReadOnlyList<double>? Origin)
{
    /// <summary>The outline with its range, or why there is none.</summary>
    public WalkAnswer Outline()
    {
        if (Fixes is null || Fixes.Any(f => f is not [>= -90.0 and <= 90.0, >= -180.0 and <= 180.0, >= 0.0 and < 1.0e6, > 0.0 and < 1.0e14]) || Origin is not (null or [>= -89.0 and <= 89.0, >= -180.0 and <= 180.0]))
        {
            return new("The walk is damaged: positions with accuracy and time are expected.", null, null, 0.0, 0, [], [], []);
        }

        var origin = Origin is [var lat, var lon] ? new GeoPoint(lat, lon) : (GeoPoint?)null;
        return EdgeWalk.Outline([.. Fixes.Select(f => new TrackFix(new(f[0], f[1]), f[2], DateTimeOffset.FromUnixTimeMilliseconds((long)f[3])))], origin) switch
        {
            WalkResult.Walked w => new(null, [.. w.Outline.Ring.Select(Pair)], At(w.Origin), w.Band.Value, w.Kept, w.Remarks, [], []),
            WalkResult.Refused r => new($"No outline can be made of this walk: {r.Found}. Needed: {r.Expected}.", null, r.Origin is { } o ? At(o) : null, 0.0, 0, [], [.. r.Path.Select(Pair)], [.. r.Crossings.Select(c => Pair(c.At))]),
            _ => throw new InvalidOperationException("a walk gives an outline or a refusal"),
        };
    }

    private static double[] Pair(GroundPoint p) => [Math.Round(p.EastM, 3), Math.Round(p.NorthM, 3)];

    private static double[] At(GeoPoint p) => [p.LatitudeDeg, p.LongitudeDeg];
}

/// <summary>What became of a walk.</summary>
/// <param name="Refused">Why there is no outline, in one sentence; null where there is one.</param>
/// <param name="Ring">Corners, meters east and north.</param>
/// <param name="Origin">Latitude and longitude of the zero point.</param>
/// <param name="Band">Half width of the range the area lies in nine times in ten, as a share of it.</param>
/// <param name="Kept">Positions used.</param>
/// <param name="Remarks">What was dropped, cut, closed or thinned.</param>
/// <param name="Path">The path of a refused walk, to be shown.</param>
/// <param name="Crossings">Where that path crosses itself.</param>
public sealed record WalkAnswer(string? Refused, IReadOnlyList<double[]>? Ring, double[]? Origin, double Band, int Kept, IReadOnlyList<string> Remarks, IReadOnlyList<double[]> Path, IReadOnlyList<double[]> Crossings);
