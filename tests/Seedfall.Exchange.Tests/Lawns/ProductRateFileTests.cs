using System.Text;
using NJsonSchema;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Tests.Lawns;

/// <summary>A product's rate in the file is a volume or a weight by its unit: neither, both and a mixture are refused with their place.</summary>
public sealed class ProductRateFileTests
{
    private const string Dry = """{ "activeIngredient": "siduron", "formulation": "wettable-powder", "strength": "50 %", "rate": "8 lb/acre", "maximumRate": "12 lb/acre", "maximumPerYear": "384 oz/acre", "mowingsBeforeSeedlings": 3 }""";

    [Fact]
    public void A_weighed_label_is_read_and_written_back_in_its_own_units()
    {
        var lawn = Read(Dry).Lawn;
        Assert.NotNull(lawn);
        var label = lawn.PreEmergent!;
        Assert.Equal(ProductMeasure.Weight, label.Rate.Measure);
        Assert.Equal(8.0, label.Rate.Weight!.Value.PoundsPerAcre, 9);
        Assert.Equal(24.0, label.MaximumPerYear!.Value.Weight!.Value.PoundsPerAcre, 9);
        Assert.Equal(50.0, label.Strength!.Value.ByWeight!.Value.Percent, 9);
        Assert.Equal(3, label.MowingsBeforeSeedlings);
        var written = Encoding.UTF8.GetString(LawnFile.Write(lawn));
        Assert.Contains("\"rate\": \"8 lb/acre\"", written, StringComparison.Ordinal);
        Assert.Contains("\"strength\": \"50 %\"", written, StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_written_before_weights_were_known_read_as_they_did()
    {
        var label = Read("""{ "activeIngredient": "mesotrione", "strength": "4 lb/gal", "rate": "5 fl oz/acre", "appliedThisYear": "0 fl oz/acre" }""").Lawn!.PreEmergent!;
        Assert.Equal(5.0, label.Rate.Volume!.Value.FluidOuncesPerAcre, 9);
        Assert.Equal(LabelRate.StrengthFromPoundsPerGallon(4.0), label.Strength!.Value.KilogramsPerLiter!.Value, 12);
        Assert.Null(label.MowingsBeforeSeedlings);
    }

    [Theory]
    [InlineData("\"rate\": \"8 lb/acre\", ", "", "preEmergent", "the field \"rate\"")]
    [InlineData("\"8 lb/acre\"", "{ \"volume\": \"5 fl oz/acre\", \"weight\": \"8 lb/acre\" }", "preEmergent.rate", "a liquid rate with its unit")]
    [InlineData("\"8 lb/acre\"", "\"8\"", "preEmergent.rate", "or a rate by weight with its unit")]
    [InlineData("\"8 lb/acre\"", "\"8 lb\"", "preEmergent.rate", "or a rate by weight with its unit")]
    [InlineData("\"8 lb/acre\"", "\"-8 lb/acre\"", "preEmergent.rate", "not negative")]
    [InlineData("\"rate\": \"8 lb/acre\"", "\"rate\": \"8 lb/acre\", \"rate\": \"5 fl oz/acre\"", "preEmergent.rate", "each field once")]
    [InlineData("\"12 lb/acre\"", "\"12 fl oz/acre\"", "preEmergent.maximumRate", "a rate by weight, as the rate to apply is")]
    [InlineData("\"384 oz/acre\"", "\"384 fl oz/acre\"", "preEmergent.maximumPerYear", "a rate by weight, as the rate to apply is")]
    [InlineData("\"50 %\"", "\"4 lb/gal\"", "preEmergent.strength", "percent by weight")]
    [InlineData("\"50 %\"", "\"0 %\"", "preEmergent.strength", "a strength with its unit")]
    [InlineData("\"50 %\"", "\"0 lb/gal\"", "preEmergent.strength", "a strength with its unit")]
    [InlineData("Seedlings\": 3", "Seedlings\": 30", "preEmergent.mowingsBeforeSeedlings", "0 to 10")]
    public void What_is_no_one_rate_is_refused_where_it_stands(string was, string becomes, string path, string expected)
    {
        var text = Dry.Replace(was, becomes, StringComparison.Ordinal);
        Assert.NotEqual(Dry, text);
        var result = Read(text);
        Assert.Null(result.Lawn);
        var problem = Assert.Single(result.Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
        Assert.Equal(2, problem.Line);
    }

    [Fact]
    public async Task The_schema_takes_either_unit_and_nothing_without_one()
    {
        var schema = await JsonSchema.FromJsonAsync(LawnFile.Schema(), TestContext.Current.CancellationToken);
        Assert.Empty(schema.Validate(Text(Dry)));
        Assert.Empty(schema.Validate(Text(Dry.Replace("8 lb/acre", "5 fl oz/acre", StringComparison.Ordinal))));
        Assert.NotEmpty(schema.Validate(Text(Dry.Replace("8 lb/acre", "8", StringComparison.Ordinal))));
        Assert.NotEmpty(schema.Validate(Text(Dry.Replace("8 lb/acre", "8 lb", StringComparison.Ordinal))));
        Assert.NotEmpty(schema.Validate(Text(Dry.Replace("\"50 %\"", "\"50\"", StringComparison.Ordinal))));
    }

    private static LawnReadResult Read(string label) => LawnFile.Read(Encoding.UTF8.GetBytes(Text(label)), "lawn.json");

    private static string Text(string label) => LawnText.Least.Insert(LawnText.Least.IndexOf('{', StringComparison.Ordinal) + 1, $"\n  \"preEmergent\": {label},");
}
