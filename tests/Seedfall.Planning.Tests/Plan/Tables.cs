using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Tests.Plan;

/// <summary>The trade's tables as they lie in <c>data/</c>.</summary>
internal static class Tables
{
    internal static TradeTables Trade { get; } = Read();

    private static TradeTables Read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Seedfall.slnx")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("no folder above the tests holds Seedfall.slnx");
        }

        var data = Path.Combine(folder.FullName, "data");
        return TradeTablesJson.Parse(
            File.ReadAllText(Path.Combine(data, "species.json")),
            Directory.EnumerateFiles(Path.Combine(data, "rules"), "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllText));
    }
}
