using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>
/// What is taken for granted about spreaders before one has run. All are Seedfall's own assumptions, no source read, except where
/// said; the first weighed runs outweigh them.
/// </summary>
public static class FlowPriors
{
    /// <summary>Rate at the greatest opening at the usual walk: 25 lb per 1,000 sq ft, within a factor of 2.2 two times in three.</summary>
    public static MassPerArea FullRate => MassPerArea.FromPoundsPerThousandSquareFeet(25.0);

    /// <inheritdoc cref="FullRate"/>
    public const double FullRateSd = 1.0;

    /// <summary>
    /// Exponent of flow against opening [-]. Beverloo, Leniger and van de Velde 1961 (Chemical Engineering Science 15:260-269, law from
    /// memory): flow of grains grows as (width - dead width) to the 2.5 for a hole, to the 1.5 for a slot that widens; a dial that
    /// moves a gate in proportion gives 1.
    /// </summary>
    public const double Exponent = 1.5;

    /// <inheritdoc cref="Exponent"/>
    public const double ExponentSd = 0.6;

    /// <summary>How much classes of material differ at one opening, as a standard deviation of ln(flow).</summary>
    public const double MaterialSd = 0.35;

    /// <summary>How much lots and days differ within a class, as a standard deviation of ln(flow).</summary>
    public const double LotSd = 0.10;

    /// <summary>How much one run differs from the next in walk, overlap and setting the gate, as a standard deviation of ln(flow).</summary>
    public const double RunSd = 0.06;

    /// <summary>Where on the scale (0 to 1) the gate begins to let anything fall: a normal curve cut off at both ends.</summary>
    internal const double DeadPlace = 0.08;

    internal const double DeadPlaceSd = 0.12;

    internal const double LeastDeadPlace = -0.10;

    internal const double MostDeadPlace = 0.45;

    internal const int DeadPlaces = 45;

    /// <summary>How far the opening at which the first grains were seen lies from where flow begins, as a share of the scale.</summary>
    internal const double FirstFallSd = 0.02;

    /// <summary>Grains are seen a little after flow begins, as a share of the scale.</summary>
    internal const double FirstFallLate = 0.01;

    /// <summary>Share of the usual full flow below which nothing is seen to fall.</summary>
    internal const double Trace = 0.002;

    /// <summary>A kitchen or luggage scale.</summary>
    public static Mass UsualWeighing => Mass.FromGrams(20.0);

    /// <summary>A brisk even walk: 3 mph.</summary>
    public static Speed UsualWalk => Speed.FromMilesPerHour(3.0);

    /// <summary>Distance between passes before a pattern was measured (common practice, no source read).</summary>
    public static Length UsualSwath(SpreaderKind kind) => kind switch
    {
        SpreaderKind.Rotary => Length.FromFeet(8.0),
        SpreaderKind.Drop => Length.FromInches(22.0),
        SpreaderKind.HandCrank => Length.FromFeet(6.0),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of spreader"),
    };
}
