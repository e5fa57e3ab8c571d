using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>With what a patch's lengths, or its area, were taken.</summary>
public enum MeasuredBy
{
    /// <summary>A tape laid on the lawn.</summary>
    Tape,

    /// <summary>A measuring wheel.</summary>
    Wheel,

    /// <summary>Paces counted.</summary>
    Paces,

    /// <summary>Drawn over a plan, survey or aerial picture scaled by two known points.</summary>
    Picture,

    /// <summary>The edge walked with a phone that writes down where it is.</summary>
    PhoneWalk,

    /// <summary>Read from a file drawn elsewhere.</summary>
    File,
}

/// <summary>How a patch's size was taken, and how far off it may be.</summary>
/// <param name="By">With what.</param>
/// <param name="AreaBand">
/// Half width of the range the area lies in nine times in ten, as a share of the area, where it was worked out when the
/// measure was taken (a phone walk, a scaled picture); null to work it out from the shape and <paramref name="By"/>.
/// </param>
public sealed record Measuring(MeasuredBy By, Fraction? AreaBand);
