using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Weather.Soils;

/// <summary>The top of the ground as the survey has it: what a lawn roots in.</summary>
/// <param name="Component">The soil it is taken from: the largest natural one of the map unit.</param>
/// <param name="Texture">Texture class.</param>
/// <param name="Sand">Share of sand.</param>
/// <param name="Clay">Share of clay.</param>
/// <param name="OrganicMatter">Organic matter; null where not told.</param>
/// <param name="Ph">pH in water; null where not told.</param>
/// <param name="ConductivityMmH">Saturated conductivity, mm/h; null where not told.</param>
/// <param name="Disturbed">True where the map unit is partly urban land, fill or pavement: what lies there may be anything.</param>
public sealed record SurfaceSoil(SoilComponent Component, SoilTexture Texture, Fraction Sand, Fraction Clay, Fraction? OrganicMatter, double? Ph, double? ConductivityMmH, bool Disturbed)
{
    /// <summary>A lawn roots here, cm.</summary>
    private const double RootedCm = 15.0;

    /// <summary>Organic layers above the mineral soil are litter, not lawn, percent of organic matter.</summary>
    private const double LitterPct = 20.0;

    // Micrometers per second to millimeters per hour.
    private const double MmHPerUmS = 3.6;

    private static readonly string[] NotSoil = ["urban land", "water", "rock outcrop", "pits", "dumps", "made land", "fill land", "quarr", "landfill", "udorthents"];

    /// <summary>The top of the largest natural soil whose sand and clay are known, averaged over 15 cm; null where there is none.</summary>
    public static SurfaceSoil? Of(SoilMapUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        foreach (var component in unit.Components.OrderBy(IsDisturbed))
        {
            SoilHorizon[] top = [.. component.Horizons.Where(h => h is { SandPct: not null, ClayPct: not null, TopCm: < RootedCm } && h.BottomCm > h.TopCm && !(h.OrganicPct > LitterPct))];
            if (top.Length > 0)
            {
                return Top(component, top, unit.Components.Any(IsDisturbed));
            }
        }

        return null;
    }

    /// <summary>True for pavement, fill, water and rock.</summary>
    public static bool IsDisturbed(SoilComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        return NotSoil.Any(n => component.Name.Contains(n, StringComparison.OrdinalIgnoreCase));
    }

    private static SurfaceSoil Top(SoilComponent component, SoilHorizon[] top, bool disturbed)
    {
        var (sand, clay) = (Mean(top, h => h.SandPct)!.Value, Mean(top, h => h.ClayPct)!.Value);
        var most = Math.Max(1.0, (sand + clay) / 100.0);
        var (sandShare, clayShare) = (Fraction.FromPercent(sand / most), Fraction.FromPercent(clay / most));
        return new SurfaceSoil(
            component, TextureTriangle.ClassOf(sandShare, clayShare), sandShare, clayShare,
            Mean(top, h => h.OrganicPct) is { } organic ? Fraction.FromPercent(organic) : null, Mean(top, h => h.Ph), Mean(top, h => h.ConductivityUmS) * MmHPerUmS, disturbed);
    }

    private static double? Mean(SoilHorizon[] horizons, Func<SoilHorizon, double?> value)
    {
        var known = horizons.Where(h => value(h) is not null).Select(h => (Cm: Math.Min(h.BottomCm, RootedCm) - h.TopCm, Value: value(h)!.Value)).Where(h => h.Cm > 0.0).ToArray();
        return known.Length == 0 ? null : known.Sum(h => h.Cm * h.Value) / known.Sum(h => h.Cm);
    }
}
