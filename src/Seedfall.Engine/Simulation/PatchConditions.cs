using Seedfall.Engine.Simulation.Seedbed;
using Seedfall.Engine.Soil;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation;

/// <summary>One patch of ground as the simulator sees it, in plain doubles.</summary>
public sealed record PatchConditions
{
    /// <summary>Potential below which the seed's layer counts as dry, MPa (judged).</summary>
    public const double DryMPa = -0.5;

    /// <summary>Evaporation of wet bare ground over reference evapotranspiration (FAO-56 range 1.05 to 1.2).</summary>
    private const double WetSoilFactor = 1.15;

    /// <summary>Transpiration of full turf over reference evapotranspiration (FAO-56 K_cb mid-season).</summary>
    private const double TurfFactor = 0.90;

    private const double TurfRootsMm = 150.0;
    /// <summary>Soil texture class.</summary>
    public SoilTexture Texture { get; init; } = SoilTexture.Loam;

    /// <summary>Share of the ground under living turf at seed-down, 0 to 1.</summary>
    public double TurfShare { get; init; } = 0.5;

    /// <summary>Share of the sun kept off by trees and buildings, 0 to 1.</summary>
    public double ShadeShare { get; init; }

    /// <summary>Slope, percent.</summary>
    public double SlopePercent { get; init; }

    /// <summary>Mulch on the seedbed, kg/m2.</summary>
    public double MulchKgM2 { get; init; }

    /// <summary>Share of the ground under mulch, 0 to 1.</summary>
    public double MulchCover { get; init; }

    /// <summary>Depth of the seed, mm; below 3 counts as lying on the surface.</summary>
    public double SeedDepthMm { get; init; } = 5.0;

    /// <summary>True for seed that touches air: it feels the air's dryness more.</summary>
    public bool OnSurface => SeedDepthMm < 3.0 && MulchCover < 0.5;

    /// <summary>Leaf area over the patch: full turf about 2 (assumed).</summary>
    public double LeafArea => 2.0 * TurfShare;

    /// <summary>Throws where a share leaves 0 to 1 or a depth is impossible, naming it.</summary>
    public PatchConditions Sound()
    {
        RequireIn(TurfShare, 0.0, 1.0, nameof(TurfShare));
        RequireIn(ShadeShare, 0.0, 1.0, nameof(ShadeShare));
        RequireIn(MulchCover, 0.0, 1.0, nameof(MulchCover));
        RequireIn(SlopePercent, 0.0, 100.0, nameof(SlopePercent));
        RequireIn(MulchKgM2, 0.0, 5.0, nameof(MulchKgM2));
        RequireIn(SeedDepthMm, 0.0, 50.0, nameof(SeedDepthMm));
        return this;
    }

    /// <summary>Index of the layer the seed lies in, 0 for the top one.</summary>
    public int SeedLayer => SeedDepthMm < 3.0 ? 0 : SeedDepthMm < 8.0 ? 1 : 2;

    /// <summary>What an hour of weather and watering asks of this ground.</summary>
    /// <param name="rainMm">Rain, mm.</param>
    /// <param name="irrigationMm">Irrigation, mm.</param>
    /// <param name="demandMm">Reference evapotranspiration, mm.</param>
    internal SeedbedHour Hour(Lanes rainMm, Lanes irrigationMm, Lanes demandMm)
    {
        var shaded = demandMm * (1.0 - (0.7 * ShadeShare));
        var soilDemand = shaded * (WetSoilFactor * (1.0 - (0.7 * TurfShare)));
        var turfDemand = shaded * (TurfFactor * TurfShare);
        return new SeedbedHour(rainMm, irrigationMm, soilDemand, turfDemand, TurfRootsMm);
    }

    internal SeedbedSurface Surface => SeedbedSurface.Of(LeafArea, MulchKgM2, MulchCover, SlopePercent);

    private static void RequireIn(double value, double low, double high, string name)
    {
        if (!(value >= low && value <= high))
        {
            throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"from {low} to {high}"));
        }
    }
}
