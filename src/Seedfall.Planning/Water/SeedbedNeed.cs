using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>Rounds a day and depth per round that keep the top 3/4 in of a seedbed moist.</summary>
/// <param name="Rounds">Light waterings a day, 2 to 4.</param>
/// <param name="PerRound">Net depth of each.</param>
/// <param name="TooThirsty">True where even four rounds a day leave more than half the water gone between them.</param>
public sealed record SeedbedNeed(int Rounds, Depth PerRound, bool TooThirsty)
{
    /// <summary>Soil to keep moist: 3/4 in.</summary>
    public static Depth Layer { get; } = Depth.FromInches(0.75);

    /// <summary>Evaporation of a wet seedbed over reference evapotranspiration. FAO-56, soil wetted daily; common practice, no source read.</summary>
    public const double WetSoilFactor = 1.05;

    /// <summary>Share of the layer's water that may go between two rounds. Assumed.</summary>
    public const double AllowedLoss = 0.5;

    private const int LeastRounds = 2;

    private const int MostRounds = 4;

    /// <summary>Lightest round worth walking for: 0.05 in (common practice).</summary>
    public static Depth LightestRound { get; } = Depth.FromInches(0.05);

    /// <summary>
    /// Rounds n = E / (0.5 S) rounded up, within 2 to 4 a day; depth E / n, at least 0.05 in. E is what the seedbed loses in a day, S
    /// the available water of its top 3/4 in.
    /// </summary>
    /// <param name="loss">Evaporation of the seedbed in a day; not negative.</param>
    /// <param name="texture">USDA texture class.</param>
    /// <param name="mostRounds">Ceiling on the rounds, at least 2.</param>
    public static SeedbedNeed For(Depth loss, SoilTexture texture, int mostRounds = MostRounds)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loss.Millimeters, nameof(loss));
        ArgumentOutOfRangeException.ThrowIfLessThan(mostRounds, LeastRounds);
        var allowedMm = AllowedLoss * AvailableWater.In(texture, Layer).Millimeters;
        var wanted = (int)Math.Ceiling((loss.Millimeters / allowedMm) - 1e-9);
        var rounds = Math.Clamp(wanted, LeastRounds, mostRounds);
        var perRoundMm = Math.Max(loss.Millimeters / rounds, LightestRound.Millimeters);
        return new SeedbedNeed(rounds, Depth.FromMillimeters(perRoundMm), wanted > rounds);
    }
}
