using Seedfall.Engine.Numerics;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Planning.Tests.Ground.Walks;

/// <summary>What the air and the phone do to a walk.</summary>
/// <param name="AccuracyM">Accuracy the phone states, the radius of 68 %.</param>
/// <param name="WanderShare">Share of the variance that wanders.</param>
/// <param name="WanderSeconds">Time over which it forgets.</param>
/// <param name="OffsetM">Standard deviation of an offset common to the whole walk, on top.</param>
/// <param name="BesideM">Standard deviation of the phone's distance beside the edge.</param>
internal sealed record WalkAir(double AccuracyM, double WanderShare, double WanderSeconds, double OffsetM, double BesideM);

/// <summary>A walk round a known lawn.</summary>
internal static class SimulatedWalk
{
    internal static readonly GeoPoint Town = new(43.1, -89.4);

    private static readonly DateTimeOffset Start = new(2026, 8, 20, 14, 0, 0, TimeSpan.Zero);

    /// <summary>Lawns by name: a square yard, a long strip, an L, a rounded one, a wide irregular one.</summary>
    internal static readonly IReadOnlyList<(string Name, GroundPoint[] Ring)> Lawns =
    [
        ("square of 400 m2", [new(0, 0), new(20, 0), new(20, 20), new(0, 20)]),
        ("strip of 12 by 50 m", [new(0, 0), new(50, 0), new(50, 12), new(0, 12)]),
        ("L of 700 m2", [new(0, 0), new(35, 0), new(35, 14), new(15, 14), new(15, 28), new(0, 28)]),
        ("round of 1,250 m2", [.. Enumerable.Range(0, 72).Select(i => new GroundPoint(20 * Math.Cos(i * Math.PI / 36), 20 * Math.Sin(i * Math.PI / 36)))]),
        ("irregular of 2,400 m2", [new(0, 0), new(30, -6), new(62, 4), new(58, 30), new(40, 42), new(12, 46), new(-4, 26)]),
    ];

    /// <summary>Fixes once a second at a walk of about 1.2 m/s, once round and a little past the start or short of it.</summary>
    internal static List<TrackFix> Round(GroundPoint[] lawn, WalkAir air, SplitMix64 chance, double everySeconds = 1.0)
    {
        var plane = new LocalPlane(Town);
        var deviationM = air.AccuracyM / 1.5096;
        var (wanderM, jumpM) = (deviationM * Math.Sqrt(air.WanderShare), deviationM * Math.Sqrt(1.0 - air.WanderShare));
        var (offE, offN) = (air.OffsetM * chance.NextNormal(), air.OffsetM * chance.NextNormal());
        var (wanderE, wanderN) = (wanderM * chance.NextNormal(), wanderM * chance.NextNormal());
        var keeps = Math.Exp(-everySeconds / air.WanderSeconds);
        var ring = Beside(lawn, air.BesideM * chance.NextNormal());
        var wayM = RingLength.Of(ring).Meters;
        var speed = 1.2 * (0.9 + 0.2 * chance.NextDouble());
        var endM = wayM + 3.0 * (chance.NextDouble() - 0.5);
        var startM = wayM * chance.NextDouble();
        var fixes = new List<TrackFix>();
        for (var seconds = 0.0; speed * seconds <= endM; seconds += everySeconds)
        {
            var at = Along(ring, (startM + speed * seconds) % wayM);
            var seen = new GroundPoint(at.EastM + offE + wanderE + jumpM * chance.NextNormal(), at.NorthM + offN + wanderN + jumpM * chance.NextNormal());
            fixes.Add(new(plane.ToEarth(seen), air.AccuracyM, Start.AddSeconds(seconds)));
            var fresh = wanderM * Math.Sqrt(1.0 - keeps * keeps);
            (wanderE, wanderN) = (keeps * wanderE + fresh * chance.NextNormal(), keeps * wanderN + fresh * chance.NextNormal());
        }

        return fixes;
    }

    private static GroundPoint[] Beside(GroundPoint[] ring, double besideM)
    {
        var scale = 1.0 + 0.5 * besideM * RingLength.Of(ring).Meters / PolygonArea.Of(ring, []).SquareMeters;
        return [.. ring.Select(p => new GroundPoint(p.EastM * scale, p.NorthM * scale))];
    }

    private static GroundPoint Along(GroundPoint[] ring, double wayM)
    {
        for (var i = 0; ; i++)
        {
            var (a, b) = (ring[i % ring.Length], ring[(i + 1) % ring.Length]);
            var sideM = Math.Sqrt(Math.Pow(b.EastM - a.EastM, 2) + Math.Pow(b.NorthM - a.NorthM, 2));
            if (wayM <= sideM)
            {
                return new(a.EastM + wayM / sideM * (b.EastM - a.EastM), a.NorthM + wayM / sideM * (b.NorthM - a.NorthM));
            }

            wayM -= sideM;
        }
    }
}
