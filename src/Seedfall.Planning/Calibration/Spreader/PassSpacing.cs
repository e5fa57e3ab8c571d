using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>Evenness at one distance between passes.</summary>
/// <param name="Passes">The distance.</param>
/// <param name="BackAndForth">Coefficient of variation walked up and down [-].</param>
/// <param name="SameWay">The same round and round.</param>
public sealed record SpacingVariation(Length Passes, double BackAndForth, double SameWay);

/// <summary>How far apart to walk, from a pan test.</summary>
/// <param name="Best">The widest distance that is still even walked up and down; null where none is.</param>
/// <param name="Curve">Evenness by distance, pan spacing by pan spacing.</param>
public sealed record PassSpacing(SpacingVariation? Best, IReadOnlyList<SpacingVariation> Curve)
{
    /// <summary>Up to this the ground looks even (common practice, no source read: 10 to 15 % is good, 20 to 25 % the limit).</summary>
    public const double Even = 0.15;

    /// <inheritdoc cref="Even"/>
    public const double Limit = 0.25;

    /// <summary>Distances from two pan spacings to the width of the row.</summary>
    public static PassSpacing Of(PanTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        IReadOnlyList<SpacingVariation> curve = [.. Enumerable.Range(2, test.Catches.Count - 2).Select(pans =>
        {
            var passes = test.Spacing * pans;
            return new SpacingVariation(passes, test.Variation(passes, PassOrder.BackAndForth), test.Variation(passes, PassOrder.SameWay));
        })];
        return new(curve.LastOrDefault(c => c.BackAndForth <= Even), curve);
    }

    /// <summary>Passes along each end before the rest, where the spreader is turned: enough that what is thrown ahead of the turning line lands on them (common practice, no source read).</summary>
    /// <param name="reach">How far the spreader throws.</param>
    /// <param name="passes">Distance between passes.</param>
    public static int HeadlandPasses(Length reach, Length passes) => passes > Length.Zero && reach >= Length.Zero
        ? Math.Max(1, (int)Math.Ceiling(reach / passes - 1.0e-9))
        : throw new ArgumentOutOfRangeException(nameof(passes), passes, "a distance above 0 is needed");
}
