using System.Reflection;
using Seedfall.Planning.Rules;

namespace Seedfall.Exchange.Catalog;

/// <summary>The trade's tables as shipped: <c>data/species.json</c> and <c>data/rules/*.json</c>, carried inside the program.</summary>
public static class Trade
{
    private const string RulesPrefix = "rules/";

    private static readonly Lazy<TradeTables> Loaded = new(Load);

    /// <summary>All tables; read once.</summary>
    public static TradeTables Tables => Loaded.Value;

    private static TradeTables Load()
    {
        var names = Assembly.GetExecutingAssembly().GetManifestResourceNames();
        var rules = names.Where(n => n.StartsWith(RulesPrefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Embedded.Text);
        return TradeTablesJson.Parse(Embedded.Text("species.json"), rules);
    }
}
