namespace Seedfall.Planning.Ground.Shapes;

/// <summary>How far off lengths are, as half widths of the range they lie in nine times in ten.</summary>
/// <param name="CommonShare">Share by which all lengths of one shape are off together: a stretched tape, a pace miscounted, a scale.</param>
/// <param name="EachShare">Share by which each length is off on its own.</param>
/// <param name="EachM">Meters by which each length is off on its own: where does the grass end?</param>
/// <param name="CornerM">Meters by which a drawn corner is off in each direction.</param>
internal readonly record struct MeasuringError(double CommonShare, double EachShare, double EachM, double CornerM)
{
    /// <summary>
    /// Common practice, no source read. Chosen so that a plain rectangle comes out at what the trade reckons with: tape 2 % of
    /// the area, wheel 1 to 5 %, paces 5 to 10 %, an outline over a picture 2 to 5 %.
    /// </summary>
    internal static MeasuringError Of(MeasuredBy by) => by switch
    {
        MeasuredBy.Tape => new(0.005, 0.008, 0.05, 0.10),
        MeasuredBy.Wheel => new(0.015, 0.015, 0.10, 0.15),
        MeasuredBy.Paces => new(0.035, 0.03, 0.40, 0.60),
        MeasuredBy.Picture => new(0.015, 0.0, 0.30, 0.30),
        MeasuredBy.PhoneWalk => new(0.0, 0.12, 2.0, 2.0),
        MeasuredBy.File => new(0.01, 0.0, 0.50, 0.50),
        _ => throw new ArgumentOutOfRangeException(nameof(by), by, "is not a known way of measuring"),
    };

    /// <summary>Share by which an area entered as a number is off when it was taken this way.</summary>
    internal static double EnteredShare(MeasuredBy by) => by switch
    {
        MeasuredBy.Tape => 0.02,
        MeasuredBy.Wheel => 0.04,
        MeasuredBy.Paces => 0.10,
        MeasuredBy.Picture => 0.05,
        MeasuredBy.PhoneWalk => 0.25,
        MeasuredBy.File => 0.05,
        _ => throw new ArgumentOutOfRangeException(nameof(by), by, "is not a known way of measuring"),
    };

    /// <summary>What is taken where nothing was said: a tape for lengths, a picture for an outline and for an area known from elsewhere.</summary>
    internal static MeasuredBy Usual(PatchShape shape) => shape is PatchShape.Outline or PatchShape.Typed ? MeasuredBy.Picture : MeasuredBy.Tape;
}
