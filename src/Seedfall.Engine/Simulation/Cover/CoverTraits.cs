namespace Seedfall.Engine.Simulation.Cover;

/// <summary>How one grass covers ground. Rates are derived from tillering (Neuteboom and Lantinga 1989) or assumed; no measured lawn rate could be read.</summary>
/// <param name="RateAt15">Relative growth of cover at 15 degC, 1/d.</param>
/// <param name="Rhizomes">True where it spreads underground into gaps.</param>
/// <param name="SeedlingM2">Ground one seedling covers at its first full leaf, m2.</param>
public sealed record CoverTraits(double RateAt15, bool Rhizomes, double SeedlingM2 = 0.2e-4);

/// <summary>What helps or hinders growth besides temperature, each 0 to 1.</summary>
/// <param name="Nitrogen">1 fed, about 0.5 unfed (judged).</param>
/// <param name="Light">1 in full sun.</param>
/// <param name="Water">1 where never short.</param>
public readonly record struct GrowthConditions(double Nitrogen, double Light, double Water)
{
    /// <summary>All together.</summary>
    public double Factor => Nitrogen * Light * Water;
}
