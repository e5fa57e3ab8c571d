using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>How much covering goes on thin ground.</summary>
public static class CoverRates
{
    /// <summary>Usual layer of peat or compost over seed.</summary>
    public static Depth UsualLayer(CoverKind kind) => kind switch
    {
        CoverKind.Peat => Depth.FromInches(0.125),
        CoverKind.Compost => Depth.FromInches(0.25),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not spread as a layer"),
    };

    /// <summary>Loose volume of a layer: <c>V = A d</c>; 1/4 in on 1,000 sq ft is 0.772 cu yd.</summary>
    public static Volume LayerVolume(Area area, Depth layer) => Volume.FromLiters(area.SquareMeters * layer.Millimeters);

    /// <summary>Usual weight per area of a covering spread by weight, with its source.</summary>
    public static (MassPerArea Rate, string Source, Sureness Sureness) ByWeight(CoverKind kind) => kind switch
    {
        CoverKind.Straw => (MassPerArea.FromPoundsPerThousandSquareFeet(70.0), "60 to 80 lb per 1,000 sq ft, half the soil showing: extension bulletins read second-hand", Sureness.CommonPractice),
        CoverKind.PaperPellets => (MassPerArea.FromPoundsPerThousandSquareFeet(62.5), "50 to 75 lb per 1,000 sq ft: common practice, no source read", Sureness.CommonPractice),
        CoverKind.Hydromulch => (MassPerArea.FromPoundsPerAcre(1750.0), "1,500 to 2,000 lb per acre: common practice, no source read", Sureness.CommonPractice),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not spread by weight"),
    };
}
