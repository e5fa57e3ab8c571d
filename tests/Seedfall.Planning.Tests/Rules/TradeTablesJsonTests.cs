using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Tests.Rules;

public sealed class TradeTablesJsonTests
{
    [Fact]
    public void Shipped_tables_hold_every_grass_and_the_general_pack()
    {
        foreach (var grass in Enum.GetValues<GrassSpecies>())
        {
            Assert.Equal(grass, Tables.Shipped.For(grass).Species);
        }

        Assert.NotNull(Tables.Shipped.Pack(null));
        Assert.NotNull(Tables.Shipped.Pack("us-md"));
        Assert.Null(Tables.Shipped.Pack("us-xx"));
    }

    [Fact]
    public void Every_value_says_where_it_comes_from_and_never_claims_to_be_measured()
    {
        foreach (var species in Tables.Shipped.Species)
        {
            SourcedValue[] values = [species.SeedsPerPound, species.BaseTemperatureC, species.LabThermalTime50, species.Phyllochron, species.LeastSunHours, species.UsualPurity, species.UsualGermination];
            SourcedRange[] ranges = [species.NewLawnPoundsPerM, species.GerminationDays, species.EstablishmentDays, species.MowingInches, species.NitrogenPoundsPerMYear];
            Assert.All(values, v => Sourced(v.Source, v.Sureness));
            Assert.All(ranges, r => Sourced(r.Source, r.Sureness));
            Assert.All(ranges, r => Assert.True(r.Low <= r.High));
        }

        foreach (var pack in Tables.Shipped.RulePacks)
        {
            Sourced(pack.Nitrogen.Source, pack.Nitrogen.Sureness);
            Sourced(pack.Phosphorus.Source, pack.Phosphorus.Sureness);
            Assert.NotEmpty(pack.Notes);
        }
    }

    [Fact]
    public void An_unknown_member_is_refused_with_line_and_column()
    {
        var json = Tables.RuleJsons[0].Replace("\"name\"", "\"colour\": 1,\n  \"name\"", StringComparison.Ordinal);
        var error = Assert.Throws<FormatException>(() => TradeTablesJson.Parse(Tables.SpeciesJson, [json]));
        Assert.Contains("line 3", error.Message, StringComparison.Ordinal);
        Assert.Contains("colour", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_member_a_wrong_type_and_a_broken_text_are_refused()
    {
        Refused(Tables.RuleJsons[0].Replace("\"soilTestYears\": null,", "", StringComparison.Ordinal));
        Refused(Tables.RuleJsons[0].Replace("\"strict\"", "\"loose\"", StringComparison.Ordinal));
        Refused(Tables.RuleJsons[0].Replace("\"strict\"", "0", StringComparison.Ordinal));
        Refused(Tables.RuleJsons[0][..40]);
        Refused("null");
    }

    [Fact]
    public void A_grass_twice_or_missing_and_a_pack_twice_or_without_the_general_one_are_refused()
    {
        Assert.Throws<FormatException>(() => TradeTablesJson.Parse("[]", Tables.RuleJsons));
        Assert.Throws<FormatException>(() => TradeTablesJson.Parse(Tables.SpeciesJson.Replace("\"sheep-fescue\"", "\"hard-fescue\"", StringComparison.Ordinal), Tables.RuleJsons));
        Assert.Throws<FormatException>(() => TradeTablesJson.Parse(Tables.SpeciesJson, [.. Tables.RuleJsons, Tables.RuleJsons[0]]));
        Assert.Throws<FormatException>(() => TradeTablesJson.Parse(Tables.SpeciesJson, [.. Tables.RuleJsons.Where(j => !j.Contains("\"general\"", StringComparison.Ordinal))]));
    }

    private static void Refused(string json) => Assert.Throws<FormatException>(() => TradeTablesJson.Parse(Tables.SpeciesJson, [json]));

    private static void Sourced(string source, Sureness sureness)
    {
        Assert.False(string.IsNullOrWhiteSpace(source));
        Assert.True(sureness is Sureness.Published or Sureness.CommonPractice or Sureness.Assumed);
    }
}
