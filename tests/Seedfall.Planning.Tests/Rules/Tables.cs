using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Tests.Rules;

/// <summary>The trade's tables as shipped in <c>data/</c>, found by walking up from the test's own folder.</summary>
internal static class Tables
{
    internal static string Folder { get; } = Find();

    internal static string SpeciesJson { get; } = File.ReadAllText(Path.Combine(Folder, "species.json"));

    internal static IReadOnlyList<string> RuleJsons { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(Folder, "rules"), "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    internal static TradeTables Shipped { get; } = TradeTablesJson.Parse(SpeciesJson, RuleJsons);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Seedfall.slnx")))
            {
                return Path.Combine(folder.FullName, "data");
            }
        }

        throw new InvalidOperationException("no folder above the tests holds Seedfall.slnx");
    }
}
