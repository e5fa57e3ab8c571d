using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>How many live seeds the ground should carry.</summary>
public static class SeedTarget
{
    /// <summary>Live seeds per ft2 aimed at on bare ground; inside 1,000 to 2,000.</summary>
    public const double LivePerSquareFoot = 1500.0;

    /// <summary>The range the trade aims at, live seeds per ft2, and the trial optimum inside it.</summary>
    public const string Source = "1,000 to 2,000 viable seeds per sq ft: trade press on pure live seed; 1,821 per sq ft gave most leaf at two months in Brede & Duich 1984, Agronomy Journal 76:875-879";

    /// <summary>Share of the new-lawn rate taken when overseeding, where nothing was chosen.</summary>
    public const double UsualOverseedShare = 0.5;

    /// <summary>Least and most share of the new-lawn rate for overseeding.</summary>
    public const double LeastOverseedShare = 0.5;

    /// <inheritdoc cref="LeastOverseedShare"/>
    public const double MostOverseedShare = 0.67;

    /// <summary>Living cover from which a stand counts as one to be overseeded, share.</summary>
    public const double StandingCover = 0.5;

    /// <summary>No thin spot gets more than this many times its patch's own rate: crowded seedlings damp off (UC IPM; K-State; UMN).</summary>
    public const double MostTimesRate = 2.0;

    /// <summary>
    /// Share of the new-lawn rate for a patch [-]: 1 on bare ground, falling in a straight line to the overseeding share at
    /// half cover, that share above: <c>f = 1 - (1 - s) min(1, c / 0.5)</c>. A new establishment takes 1.
    /// </summary>
    public static double ShareOfNewRate(double livingCover, double overseedShare, SeedingWork work) =>
        work == SeedingWork.NewEstablishment ? 1.0 : 1.0 - (1.0 - overseedShare) * Math.Min(1.0, livingCover / StandingCover);

    /// <summary>
    /// Extra seed kept for thin spots as a share of the patch's own rate over its whole area [-]: the bare part of the ground is
    /// brought up to the new-lawn rate, but never beyond twice the patch's own: <c>e = (1 - c) min(1/f - 1, 1)</c>.
    /// </summary>
    public static double ThinExtra(double livingCover, double shareOfNewRate) =>
        (1.0 - livingCover) * Math.Min(1.0 / shareOfNewRate - 1.0, MostTimesRate - 1.0);
}
