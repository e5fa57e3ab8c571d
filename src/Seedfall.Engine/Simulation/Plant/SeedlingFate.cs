namespace Seedfall.Engine.Simulation.Plant;

/// <summary>What became of a share of the seed. Germination 0 hours means it never germinated.</summary>
/// <param name="GerminatedHour">Hour of germination, 0 where it never came.</param>
/// <param name="EmergedHour">Hour of emergence; -1 where it never came, 0 where it never germinated.</param>
/// <param name="Leaves">Leaves at the season's end.</param>
public readonly record struct SeedlingFate(int GerminatedHour, int EmergedHour, double Leaves)
{
    /// <summary>True where a seedling came up.</summary>
    public bool Emerged => EmergedHour > 0;
}

/// <summary>From the root's coming to the first green.</summary>
public static class Emergence
{
    /// <summary>Base temperature of shoot growth underground, degC (assumed).</summary>
    public const double BaseC = 3.0;

    private const double LagAtSurfaceCd = 15.0;
    private const double LagPerMmCd = 3.0;

    /// <summary>Degree-days above <see cref="BaseC"/> between germination and first green: 15 and 3 per mm (assumed; brings New Zealand autumn sowings to their 15.5 and 19.4 days).</summary>
    public static double LagCd(double depthMm) => LagAtSurfaceCd + (LagPerMmCd * depthMm);
}
