using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration;

/// <summary>What a sprayer puts out per area, in the forms the trade measures it.</summary>
public static class SprayerOutput
{
    /// <summary>Side of the square that is 1/128 acre: fluid ounces caught over it are gallons per acre.</summary>
    public static Area OunceSquare => Area.FromAcres(1.0 / 128.0);

    /// <summary>Output over a measured test area: <c>rate = caught / area</c>. On 1/128 acre (340 sq ft) ounces read as gallons per acre (Michigan State, K-State).</summary>
    public static VolumePerArea OverArea(Volume caught, Area test) =>
        test > Area.Zero
            ? VolumePerArea.FromLitersPerSquareMeter(caught.Liters / test.SquareMeters)
            : throw new ArgumentOutOfRangeException(nameof(test), test, "a test area above 0 is needed");

    /// <summary>Output of nozzles walked at a speed: <c>GPA = 5,940 GPM / (mph x in)</c>, from flow, speed and the width one nozzle or gun covers.</summary>
    public static VolumePerArea OfFlow(FlowRate flow, Speed walk, Length width) =>
        VolumePerArea.FromLitersPerSquareMeter(flow.LitersPerMinute / 60.0 / Moving(walk, width));

    /// <summary>Flow a nozzle must give for a wanted output: the same law turned round.</summary>
    public static FlowRate FlowFor(VolumePerArea output, Speed walk, Length width) =>
        FlowRate.FromLitersPerMinute(output.LitersPerSquareMeter * 60.0 * Moving(walk, width));

    /// <summary>Length of the course over which one nozzle covers 1/128 acre: <c>L = 340.3 ft2 / spacing</c>.</summary>
    public static Length Course(Length spacing) =>
        spacing > Length.Zero
            ? Length.FromMeters(OunceSquare.SquareMeters / spacing.Meters)
            : throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "a spacing above 0 is needed");

    /// <summary>Output after a change of walking speed, all else held: <c>rate2 = rate1 x v1 / v2</c> (NC State).</summary>
    public static VolumePerArea AtSpeed(VolumePerArea output, Speed was, Speed now) =>
        now > Speed.Zero
            ? output * (was / now)
            : throw new ArgumentOutOfRangeException(nameof(now), now, "a speed above 0 is needed");

    private static double Moving(Speed walk, Length width) =>
        walk > Speed.Zero && width > Length.Zero
            ? walk.MetersPerSecond * width.Meters
            : throw new ArgumentOutOfRangeException(nameof(walk), walk, $"a speed and a width above 0 are needed, the width was {width}");
}
