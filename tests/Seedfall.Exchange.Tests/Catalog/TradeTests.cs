using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Tests.Catalog;

public sealed class TradeTests
{
    [Fact]
    public void Every_grass_and_every_rule_pack_of_the_data_folder_is_carried()
    {
        var files = Directory.GetFiles(Repository.PathOf("data", "rules"), "*.json").Select(Path.GetFileNameWithoutExtension);
        Assert.Equal(files.Order(StringComparer.Ordinal), Trade.Tables.RulePacks.Select(p => p.Id).Order(StringComparer.Ordinal));
        Assert.Equal(Enum.GetValues<GrassSpecies>().Order(), Trade.Tables.Species.Select(s => s.Species).Order());
        Assert.NotNull(Trade.Tables.Pack(null));
    }
}
