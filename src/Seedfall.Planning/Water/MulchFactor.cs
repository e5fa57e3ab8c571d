using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Water;

/// <summary>How much less a covered seedbed dries.</summary>
internal static class MulchFactor
{
    internal const string Source =
        "evaporation factor 1 - 0.55 c for covered share c, judged from straw and pellet trials (26 to 59 % less evaporation); shares covered assumed";

    private const double FullCoverSaving = 0.55;

    /// <summary>Evaporation under a cover over that of bare seedbed, 0 to 1.</summary>
    internal static double For(CoverKind kind) => 1.0 - (FullCoverSaving * CoveredShare(kind));

    /// <summary>Share of the ground a covering hides, 0 to 1.</summary>
    internal static double CoveredShare(CoverKind kind) => kind switch
    {
        CoverKind.None => 0.0,
        CoverKind.Straw => 0.5,
        CoverKind.PaperPellets => 0.5,
        CoverKind.Peat or CoverKind.Compost or CoverKind.Hydromulch => 0.75,
        CoverKind.StrawBlanket => 0.8,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of cover"),
    };
}
