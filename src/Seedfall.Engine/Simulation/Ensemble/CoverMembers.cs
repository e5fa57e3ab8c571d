namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>What each season's cover is grown with in turn, because lawns differ and nothing measured says by how much.</summary>
/// <param name="Vigors">Growth over the usual, each above 0.</param>
/// <param name="Survivals">Seedlings that live over the usual number, each above 0.</param>
/// <param name="StartShifts">What the cover at seed-down differs from the one entered, shares of the ground.</param>
public sealed record CoverVariants(IReadOnlyList<double> Vigors, IReadOnlyList<double> Survivals, IReadOnlyList<double> StartShifts)
{
    private const double VigorSpread = 0.3;
    private const double SurvivalSpread = 0.5;
    private const double StartDeviation = 0.07;

    /// <summary>For a forecast before anything was seen: three vigors.</summary>
    public static CoverVariants Usual { get; } = new([0.7, 1.0, 1.3], [1.0], [0.0]);

    /// <summary>
    /// For learning from what was seen: vigor log-normal about 1 with spread 0.3, survival with 0.5, start normal with 0.07 (all assumed),
    /// each on a grid.
    /// </summary>
    public static CoverVariants Wide { get; } = new([0.4, 0.55, 0.7, 0.85, 1.0, 1.2, 1.45, 1.8, 2.2], [0.35, 0.6, 1.0, 1.65], [-0.1, 0.0, 0.1]);

    /// <summary>Members a season becomes.</summary>
    public int Count => Vigors.Count * Survivals.Count * StartShifts.Count;

    /// <summary>The variants in the order members are numbered, with prior weights that sum to 1.</summary>
    internal IReadOnlyList<(double Vigor, double Survival, double StartShift, double Weight)> All()
    {
        var all = Vigors.SelectMany(_ => Survivals, (v, s) => (v, s)).SelectMany(_ => StartShifts, (vs, d) => (vs.v, vs.s, d, Weight: Weight(vs.v, vs.s, d))).ToList();
        var sum = all.Sum(a => a.Weight);
        return [.. all.Select(a => (a.v, a.s, a.d, a.Weight / sum))];
    }

    /// <summary>Prior density times the grid's step, a logarithmic one for vigor and survival.</summary>
    private double Weight(double vigor, double survival, double shift) =>
        (Vigors.Count > 3 ? Bell(Math.Log(vigor) / VigorSpread) : 1.0)
        * (Survivals.Count > 1 ? Bell(Math.Log(survival) / SurvivalSpread) : 1.0)
        * (StartShifts.Count > 1 ? Bell(shift / StartDeviation) : 1.0);

    private static double Bell(double z) => Math.Exp(-0.5 * z * z);
}

/// <summary>Living cover by member and day.</summary>
/// <param name="Cover">Share of the ground at each day's end from seed-down on, by member: each season's variants one after the other.</param>
/// <param name="Prior">Weights that sum to 1, one per member.</param>
public sealed record CoverMembers(IReadOnlyList<double[]> Cover, double[] Prior);
