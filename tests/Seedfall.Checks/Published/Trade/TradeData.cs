using Seedfall.Checks.Architecture;
using Seedfall.Planning.Rules;

namespace Seedfall.Checks.Published.Trade;

/// <summary>The trade's tables as shipped, and the tolerance of the check values.</summary>
internal static class TradeData
{
    /// <summary>Check values hold to half a percent unless a test says otherwise.</summary>
    internal const double HalfPercent = 0.005;

    internal static TradeTables Tables { get; } = TradeTablesJson.Parse(
        File.ReadAllText(Path.Combine(Checkout.Root, "data", "species.json")),
        Directory.EnumerateFiles(Path.Combine(Checkout.Root, "data", "rules"), "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllText));

    internal static RulePack Pack(string id) => Tables.Pack(id) ?? throw new ArgumentException($"no rule pack {id}", nameof(id));

    internal static void Close(double expected, double actual, double relative = HalfPercent) =>
        Assert.InRange(actual, expected - Math.Abs(expected) * relative, expected + Math.Abs(expected) * relative);
}
