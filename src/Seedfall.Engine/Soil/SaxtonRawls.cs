using Seedfall.Engine.Units;

namespace Seedfall.Engine.Soil;

/// <summary>Water held and conducted by a soil, from its texture.</summary>
/// <param name="WiltingPoint">Volumetric water at 1500 kPa, m3/m3.</param>
/// <param name="FieldCapacity">Volumetric water at 33 kPa, m3/m3.</param>
/// <param name="Saturation">Volumetric water at saturation, m3/m3.</param>
/// <param name="SaturatedConductivityMmH">Saturated conductivity, mm/h.</param>
/// <param name="RetentionB">Exponent of the retention curve, suction = A theta^-B.</param>
/// <param name="RetentionAKPa">Factor of the retention curve, kPa.</param>
/// <param name="AirEntryKPa">Suction at which air enters, kPa, at least 0.2.</param>
/// <param name="BulkDensityMgM3">Dry bulk density, Mg/m3.</param>
public readonly record struct SoilHydraulics(
    double WiltingPoint,
    double FieldCapacity,
    double Saturation,
    double SaturatedConductivityMmH,
    double RetentionB,
    double RetentionAKPa,
    double AirEntryKPa,
    double BulkDensityMgM3)
{
    /// <summary>Suction, kPa, at a volumetric water content between wilting point and field capacity. Saxton and Rawls 2006 eq. 11.</summary>
    public double SuctionKPa(double waterContent) => RetentionAKPa * Math.Pow(waterContent, -RetentionB);

    /// <summary>Conductivity, mm/h, at a volumetric water content. Saxton and Rawls 2006 eq. 17.</summary>
    public double ConductivityMmH(double waterContent) =>
        SaturatedConductivityMmH * Math.Pow(waterContent / Saturation, 3.0 + (2.0 * RetentionB));

    /// <summary>Water between field capacity and wilting point, m3/m3.</summary>
    public double AvailableWater => FieldCapacity - WiltingPoint;
}

/// <summary>
/// Soil water characteristics from texture and organic matter. Saxton and Rawls 2006, Soil Sci. Soc. Am. J. 70:1569; fitted
/// for up to 60 percent clay and 8 percent organic matter.
/// </summary>
public static class SaxtonRawls
{
    private const double MineralDensityMgM3 = 2.65;

    /// <summary>Hydraulics of a soil. Throws above 60 percent clay, 8 percent organic matter, or when sand and clay exceed the whole.</summary>
    /// <param name="sand">Share of sand by mass.</param>
    /// <param name="clay">Share of clay by mass.</param>
    /// <param name="organicMatter">Share of organic matter by mass.</param>
    public static SoilHydraulics Of(Fraction sand, Fraction clay, Fraction organicMatter)
    {
        if (sand.Value + clay.Value > 1.0 + 1e-9)
        {
            throw new ArgumentOutOfRangeException(nameof(clay), clay, FormattableString.Invariant($"sand and clay together exceed 100 % (sand {sand.Percent:0.#} %, clay {clay.Percent:0.#} %)"));
        }

        if (clay.Value > 0.6)
        {
            throw new ArgumentOutOfRangeException(nameof(clay), clay, "at most 60 % clay");
        }

        if (organicMatter.Value > 0.08)
        {
            throw new ArgumentOutOfRangeException(nameof(organicMatter), organicMatter, "at most 8 % organic matter");
        }

        return Compute(sand.Value, clay.Value, organicMatter.Percent);
    }

    /// <summary>
    /// Least water between field capacity and saturation, m3/m3. Where much clay, sand and organic matter meet, the regressions cross and
    /// would leave none, and conductivity no number. Assumed.
    /// </summary>
    private const double LeastDrainable = 0.005;

    private static SoilHydraulics Compute(double s, double c, double om)
    {
        var wilting = Stretched1500((-0.024 * s) + (0.487 * c) + (0.006 * om) + (0.005 * s * om) - (0.013 * c * om) + (0.068 * s * c) + 0.031);
        var field = Stretched33((-0.251 * s) + (0.195 * c) + (0.011 * om) + (0.006 * s * om) - (0.027 * c * om) + (0.452 * s * c) + 0.299);
        var coarse = (1.636 * ((0.278 * s) + (0.034 * c) + (0.022 * om) - (0.018 * s * om) - (0.027 * c * om) - (0.584 * s * c) + 0.078)) - 0.107;
        var saturation = field + Math.Max(LeastDrainable, coarse - (0.097 * s) + 0.043);
        var b = Math.Log(1500.0 / 33.0) / Math.Log(field / wilting);
        return new SoilHydraulics(
            wilting,
            field,
            saturation,
            1930.0 * Math.Pow(saturation - field, 3.0 - (1.0 / b)),
            b,
            Math.Exp(Math.Log(33.0) + (b * Math.Log(field))),
            AirEntry(s, c, coarse),
            MineralDensityMgM3 * (1.0 - saturation));
    }

    private static double Stretched1500(double first) => (1.14 * first) - 0.02;

    private static double Stretched33(double first) => first + (1.283 * first * first) - (0.374 * first) - 0.015;

    private static double AirEntry(double s, double c, double coarse)
    {
        var first = (-21.67 * s) - (27.93 * c) - (81.97 * coarse) + (71.12 * s * coarse) + (8.29 * c * coarse) + (14.05 * s * c) + 27.16;
        return Math.Max(0.2, first + (0.02 * first * first) - (0.113 * first) - 0.70);
    }
}
