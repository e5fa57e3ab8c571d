using System.Globalization;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>A purchase as one asks for it over the counter.</summary>
internal static class BuyWords
{
    /// <summary>For example <c>1 bag of 50 lb and 2 bags of 10 lb</c>; empty where no bag sizes are known.</summary>
    internal static string For(Purchase? purchase) => purchase is null
        ? ""
        : string.Join(" and ", purchase.Bags.OrderByDescending(b => b.BagKilograms).Select(b => $"{b.Count.ToString(CultureInfo.InvariantCulture)} {(b.Count == 1 ? "bag" : "bags")} of {Size(b.BagKilograms)}"));

    /// <summary>In whichever unit the bag was filled: the one that reads as a round number.</summary>
    private static string Size(double kilograms)
    {
        var pounds = new Mass(kilograms).Pounds;
        var metric = Math.Abs(pounds - Math.Round(pounds, 1)) > 1.0e-6 && Math.Abs(kilograms - Math.Round(kilograms, 1)) < 1.0e-6;
        return metric
            ? string.Create(CultureInfo.InvariantCulture, $"{kilograms:0.##} kg")
            : string.Create(CultureInfo.InvariantCulture, $"{pounds:0.##} lb");
    }
}
