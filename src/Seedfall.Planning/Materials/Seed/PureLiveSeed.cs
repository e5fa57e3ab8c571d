using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>Pure live seed: the part of a bag that is the wanted grass and will germinate.</summary>
public static class PureLiveSeed
{
    /// <summary>Share [-]. <c>PLS = purity x germination</c> (University of Minnesota Extension, Purchasing Seed). Coating counts as inert matter (7 CFR 201.51b).</summary>
    public static Fraction Of(Fraction purity, Fraction germination) => Fraction.Of(purity.Value * germination.Value);

    /// <summary>Bulk seed to weigh out for a wanted mass of pure live seed: <c>bulk = target / PLS</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pure live seed share is zero.</exception>
    public static Mass BulkFor(Mass pureLive, Fraction pureLiveShare) => pureLive * BulkFactor(pureLiveShare);

    /// <summary>Bulk rate for a wanted rate of pure live seed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pure live seed share is zero.</exception>
    public static MassPerArea BulkFor(MassPerArea pureLive, Fraction pureLiveShare) => pureLive * BulkFactor(pureLiveShare);

    /// <summary>Price per mass of pure live seed: <c>price / PLS</c>.</summary>
    public static decimal PriceOf(decimal bulkPrice, Fraction pureLiveShare) => bulkPrice * (decimal)BulkFactor(pureLiveShare);

    private static double BulkFactor(Fraction share) =>
        share.Value > 0.0 ? 1.0 / share.Value : throw new ArgumentOutOfRangeException(nameof(share), share, "a pure live seed share above 0 is needed");
}
