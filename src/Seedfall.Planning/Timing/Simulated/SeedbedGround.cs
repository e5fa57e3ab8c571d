using Seedfall.Engine.Simulation;
using Seedfall.Engine.Soil;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Timing;

/// <summary>A patch's ground as the simulator takes it.</summary>
internal static class SeedbedGround
{
    /// <summary>Depth of seed broadcast and raked in, mm: between surface and 1/4 in. Assumed.</summary>
    internal const double RakedMm = 4.0;

    /// <summary>Depth of slit seed, mm: 3/8 in. Assumed.</summary>
    internal const double SlitMm = 10.0;

    /// <summary>Hours of direct sun in September that count as open ground. Assumed.</summary>
    private const double OpenSunHours = 9.0;

    /// <summary>Share of the light that is direct; what the sky scatters reaches shaded ground too. Assumed.</summary>
    private const double DirectShare = 0.8;

    internal static PatchConditions Of(Lawn lawn, Patch patch, PatchSummary summary, SeedingMethod method)
    {
        var slope = patch.SlopePercent ?? GroundDefaults.SlopePercent;
        var kind = CoveredWith(lawn, summary, slope);
        return new PatchConditions
        {
            Texture = lawn.Soil?.Texture ?? SoilTexture.Loam,
            TurfShare = summary.LivingCover.Value,
            ShadeShare = Shade(patch.SunHours ?? GroundDefaults.SunHours),
            SlopePercent = Math.Min(slope, 100.0),
            MulchKgM2 = MulchKgM2(lawn.Cover, kind),
            MulchCover = MulchFactor.CoveredShare(kind),
            SeedDepthMm = method == SeedingMethod.SlitSeed ? SlitMm : RakedMm,
        };
    }

    /// <summary>Share of the sun kept off where so many hours of it reach the ground.</summary>
    internal static double Shade(double sunHours) => DirectShare * Math.Clamp(1.0 - (sunHours / OpenSunHours), 0.0, 1.0);

    private static CoverKind CoveredWith(Lawn lawn, PatchSummary summary, double slopePercent) =>
        slopePercent > CoverPlanning.SteepPercent || summary.LivingCover.Value < CoverPlanning.ThinBelow ? lawn.Cover?.Kind ?? CoverKind.Straw : CoverKind.None;

    /// <summary>Weight of a covering, kg/m2; peat and compost from their layer at assumed bulk densities, a blanket assumed.</summary>
    private static double MulchKgM2(CoverMaterial? material, CoverKind kind) => kind switch
    {
        CoverKind.None => 0.0,
        CoverKind.Peat => LayerKgM2(material, kind, 120.0),
        CoverKind.Compost => LayerKgM2(material, kind, 500.0),
        CoverKind.StrawBlanket => 0.3,
        _ => CoverRates.ByWeight(kind).Rate.KilogramsPerSquareMeter,
    };

    private static double LayerKgM2(CoverMaterial? material, CoverKind kind, double kilogramsPerM3) =>
        Math.Min(1.0, kilogramsPerM3 * 1.0e-3 * (material?.Layer ?? CoverRates.UsualLayer(kind)).Millimeters);
}
