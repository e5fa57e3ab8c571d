using Seedfall.Engine.Workings;
using Seedfall.Exchange.Catalog;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;

namespace Seedfall.Exchange.Tests.Catalog;

public sealed class GerminationFactsTests
{
    [Fact]
    public void Every_grass_germinates_in_wet_soil_of_early_autumn() => Assert.All(Trade.Tables.Species, facts =>
        Assert.InRange(SpeciesTraits.Germination(facts).MedianLabDays(18.0, -0.03)!.Value, 2.5, 10.0));

    [Fact]
    public void Ryegrass_is_quickest_and_bluegrass_slowest()
    {
        // Order of the lawn grasses: ryegrass 5 to 14 days, fine fescue 7 to 21, bluegrass 10 to 30 (common practice, no source read).
        double Days(GrassSpecies s) => SpeciesTraits.Germination(Trade.Tables.For(s)).MedianLabDays(18.0, 0.0)!.Value;
        Assert.True(Days(GrassSpecies.PerennialRyegrass) < Days(GrassSpecies.CreepingRedFescue));
        Assert.True(Days(GrassSpecies.CreepingRedFescue) < Days(GrassSpecies.KentuckyBluegrass));
    }

    [Fact]
    public void Hydrothermal_times_are_owned_up_to_as_assumed() => Assert.All(Trade.Tables.Species, facts =>
    {
        Assert.Equal(Sureness.Assumed, facts.HydrothermalTime.Sureness);
        Assert.Contains("no numeric hydrothermal set could be read", facts.HydrothermalTime.Source, StringComparison.Ordinal);
    });

    [Fact]
    public void Rhizomes_are_bluegrass_and_creeping_fescue() => Assert.Equal(
        [GrassSpecies.KentuckyBluegrass, GrassSpecies.CreepingRedFescue],
        Trade.Tables.Species.Where(s => SpeciesTraits.Cover(s).Rhizomes).Select(s => s.Species).Order());

    [Fact]
    public void A_base_potential_above_zero_is_refused()
    {
        var json = File.ReadAllText(Support.Repository.PathOf("data", "species.json")).Replace("\"value\": -0.95", "\"value\": 0.95", StringComparison.Ordinal);
        Assert.Contains("TallFescue", Assert.Throws<FormatException>(() => TradeTablesJson.Parse(json, [])).Message, StringComparison.Ordinal);
    }
}
