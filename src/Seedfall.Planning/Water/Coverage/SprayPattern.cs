using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>The rate a head lays down at each point.</summary>
internal sealed class SprayPattern
{
    private const double LitersPerMinuteToPerHour = 60.0;

    private readonly CoverageHead head;

    private readonly WindDistortion wind;

    private readonly (double East, double North) downwind;

    private readonly double peakMmh;

    /// <summary>
    /// Rate = K p(r): K = 60 Q (1 - lost) / (m A), m the profile's moment, A the integral of (throw)^2 over the arc's angles, so that
    /// what lands is what left. mm/h = L/(h m2).
    /// </summary>
    internal SprayPattern(CoverageHead head, SprayWind wind)
    {
        (this.head, this.wind) = (head, WindDistortion.Of(wind.Speed.MetersPerSecond));
        var toward = Radians(wind.FromDeg + 180.0);
        downwind = (Math.Sin(toward), Math.Cos(toward));
        var throwM = head.Throw.Meters;
        var downShare = DownwindAngle(wind.FromDeg + 180.0);
        var sweep = Radians(head.ArcDeg);
        var reachM2 = throwM * throwM * this.wind.Across * ((this.wind.Down * downShare) + (this.wind.Up * (sweep - downShare)));
        peakMmh = head.Flow.LitersPerMinute * LitersPerMinuteToPerHour * (1.0 - this.wind.Lost) / (head.Profile.Moment * reachM2);
    }

    /// <summary>Farthest it can reach from the head, m.</summary>
    internal double ReachM => head.Throw.Meters * (Math.Max(1.0, wind.Down) + wind.Shift);

    /// <summary>Water that lands, L/h.</summary>
    internal double LandedLph => head.Flow.LitersPerMinute * LitersPerMinuteToPerHour * (1.0 - wind.Lost);

    internal double RateMmh(GroundPoint point)
    {
        var throwM = head.Throw.Meters;
        var (east, north) = (point.EastM - head.At.EastM, point.NorthM - head.At.NorthM);
        var along = ((east * downwind.East) + (north * downwind.North)) - (wind.Shift * throwM);
        var across = (east * downwind.North) - (north * downwind.East);
        var (stillAlong, stillAcross) = (along / (throwM * (along >= 0.0 ? wind.Down : wind.Up)), across / (throwM * wind.Across));
        var share = Math.Sqrt((stillAlong * stillAlong) + (stillAcross * stillAcross));
        return share <= 1.0 && InArc(stillAlong, stillAcross) ? peakMmh * head.Profile.At(share) : 0.0;
    }

    /// <summary>True where the drop left the head inside its arc.</summary>
    private bool InArc(double along, double across)
    {
        if (head.ArcDeg >= 360.0)
        {
            return true;
        }

        var east = (along * downwind.East) + (across * downwind.North);
        var north = (along * downwind.North) - (across * downwind.East);
        var fromStart = ((Math.Atan2(east, north) * 180.0 / Math.PI) - head.ArcFromDeg) % 360.0;
        return (fromStart < 0.0 ? fromStart + 360.0 : fromStart) <= head.ArcDeg;
    }

    /// <summary>Radians of the arc that point into the downwind half.</summary>
    private double DownwindAngle(double towardDeg)
    {
        // The half runs from 90 degrees left of downwind to 90 right; an arc can meet it on two turns of the circle.
        var from = (((head.ArcFromDeg - (towardDeg - 90.0)) % 360.0) + 360.0) % 360.0;
        var sum = 0.0;
        for (var turn = 0.0; turn <= 720.0; turn += 360.0)
        {
            sum += Math.Max(0.0, Math.Min(from + head.ArcDeg, turn + 180.0) - Math.Max(from, turn));
        }

        return Radians(sum);
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180.0;
}
