using Seedfall.Engine.Units;

namespace Seedfall.Engine.Atmosphere;

/// <summary>Wind near the ground.</summary>
public static class Wind
{
    /// <summary>FAO-56's value where wind is unknown: the mean of many stations, m/s at 2 m (FAO-56 chapter 3, missing wind data).</summary>
    public const double UnknownMs = 2.0;

    private const double ProfileFactor = 4.87;

    private const double ProfileSlope = 67.8;

    private const double ProfileOffset = 5.42;

    /// <summary>Speed at 2 m over short grass from a speed at another height; throws below 0.1 m, where the profile has no meaning. FAO-56 eq. 47.</summary>
    public static Speed AtTwoMeters(Speed measured, Length height) => height.Meters >= 0.1
        ? measured * TwoMeterFactor(height.Meters)
        : throw new ArgumentOutOfRangeException(nameof(height), height, "a height of at least 0.1 m is needed");

    /// <summary>Speed at a nozzle or other low height over short grass from the speed at 2 m; height 0.1 m or more. FAO-56 eq. 47 read the other way.</summary>
    public static Speed AtHeight(Speed atTwoMeters, Length height) => height.Meters >= 0.1
        ? atTwoMeters / TwoMeterFactor(height.Meters)
        : throw new ArgumentOutOfRangeException(nameof(height), height, "a height of at least 0.1 m is needed");

    /// <summary>Coefficients of FAO-56 eq. 47 in the order they stand in it, so that another machine can work it out alike.</summary>
    public static IReadOnlyList<double> ProfileCoefficients { get; } = [ProfileFactor, ProfileSlope, ProfileOffset];

    /// <summary>Factor from the speed at a height (m) to the speed at 2 m. FAO-56 eq. 47.</summary>
    public static double TwoMeterFactor(double heightM) => ProfileFactor / Math.Log((ProfileSlope * heightM) - ProfileOffset);

    /// <summary>Neutral resistance to heat between a cover and the air, s/m. FAO-56 eq. 4 with zero-plane at 2/3, roughness at 0.123 and 0.0123 of the height.</summary>
    /// <param name="coverHeightM">Height of the cover, m.</param>
    /// <param name="measuredAtM">Height of wind and temperature, m.</param>
    /// <param name="windMs">Wind at that height, m/s, above 0.</param>
    public static double AerodynamicResistanceSm(double coverHeightM, double measuredAtM, double windMs)
    {
        var above = measuredAtM - (2.0 / 3.0 * coverHeightM);
        return Math.Log(above / (0.123 * coverHeightM)) * Math.Log(above / (0.0123 * coverHeightM)) / (0.41 * 0.41 * windMs);
    }
}
