using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration;

/// <summary>Walking speed and the time a pass takes.</summary>
public static class WalkingPace
{
    /// <summary>Speed over a measured course: <c>v = course / time</c>; mph = ft x 60 / (s x 88).</summary>
    public static Speed Over(Length course, double seconds) =>
        seconds > 0.0
            ? Speed.FromMetersPerSecond(course.Meters / seconds)
            : throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "a time above 0 s is needed");

    /// <summary>Minutes to cover an area at a swath, turns not counted: <c>t = area / (swath x speed)</c>.</summary>
    public static double Minutes(Area area, Length swath, Speed walk) =>
        swath > Length.Zero && walk > Speed.Zero
            ? area.SquareMeters / (swath.Meters * walk.MetersPerSecond) / 60.0
            : throw new ArgumentOutOfRangeException(nameof(swath), swath, $"a swath and a speed above 0 are needed, the speed was {walk}");

    /// <summary>Length of the course that covers a test area at a swath: <c>L = area / swath</c>; 1,000 sq ft at 7 ft is 143 ft.</summary>
    public static Length Course(Area area, Length swath) =>
        swath > Length.Zero
            ? Length.FromMeters(area.SquareMeters / swath.Meters)
            : throw new ArgumentOutOfRangeException(nameof(swath), swath, "a swath above 0 is needed");
}
