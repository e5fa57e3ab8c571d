using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;
using Seedfall.Weather.Soils;

namespace Seedfall.Weather.Tests.Soils;

public sealed class SoilDataTests
{
    [Fact]
    public void A_house_lot_falls_back_on_the_natural_soil_and_says_so()
    {
        var answer = SoilDataReader.Read(SoilAnswers.HouseLot);
        Assert.Equal(SoilMapOutcome.Found, answer.Outcome);
        Assert.Equal("9990001", answer.Unit!.Key);
        Assert.Equal(["Urban land", "Example"], answer.Unit.Components.Select(c => c.Name));
        var top = SurfaceSoil.Of(answer.Unit)!;
        Assert.True(top.Disturbed);
        Assert.Equal("Example", top.Component.Name);
        Assert.Equal(SoilTexture.Loam, top.Texture);
        Assert.Equal(((10 * 42.0) + (5 * 38.0)) / 15.0, top.Sand.Percent, 1e-9);
        Assert.Equal(((10 * 20.0) + (5 * 26.0)) / 15.0, top.Clay.Percent, 1e-9);
        Assert.Equal(((10 * 6.4) + (5 * 6.8)) / 15.0, top.Ph!.Value, 1e-9);
        Assert.Equal(((10 * 9.0) + (5 * 4.0)) / 15.0 * 3.6, top.ConductivityMmH!.Value, 1e-9);
    }

    [Fact]
    public void Water_and_pavement_are_no_soil()
    {
        var answer = SoilDataReader.Read(SoilAnswers.Water);
        Assert.Equal((SoilMapOutcome.NotSoil, "Water"), (answer.Outcome, answer.Unit!.Name));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \n")]
    [InlineData("{}")]
    [InlineData("{\"Table\":[[\"mukey\",\"muname\",\"compname\",\"comppct_r\",\"hzdept_r\",\"hzdepb_r\",\"sandtotal_r\",\"claytotal_r\"],[]]}")]
    public void Nothing_at_a_place_is_nothing(string text) => Assert.Equal(SoilMapOutcome.Nothing, SoilDataReader.Read(SoilAnswers.Bytes(text)).Outcome);

    [Theory]
    [InlineData("<html><body>down for upkeep</body></html>", "upkeep")]
    [InlineData("<?xml version=\"1.0\"?><ServiceExceptionReport><ServiceException>Invalid query</ServiceException></ServiceExceptionReport>", "error message")]
    [InlineData("{\"Table\":[[\"mukey\"", "ends too soon")]
    [InlineData("[1,2]", "Array")]
    [InlineData("{\"Other\":1}", "other fields")]
    [InlineData("{\"Table\":[[\"mukey\"],[\"m\"],[\"1\"]]}", "without it")]
    [InlineData("{\"Table\":[[\"mukey\",\"mukey\"],[\"m\",\"m\"]]}", "named twice")]
    [InlineData("{\"Table\":{\"a\":1}}", "Object")]
    public void What_is_no_answer_is_refused(string text, string says)
    {
        var answer = SoilDataReader.Read(SoilAnswers.Bytes(text));
        Assert.Equal(SoilMapOutcome.Refused, answer.Outcome);
        Assert.Null(answer.Unit);
        Assert.Contains(says, answer.Problem!.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("142", "sandtotal_r")]
    [InlineData("NaN", "sandtotal_r")]
    [InlineData("much", "sandtotal_r")]
    public void A_number_that_cannot_be_is_refused_with_its_column(string sand, string column)
    {
        var answer = SoilDataReader.Read(SoilAnswers.Table(["1", "U", "1", "E", "90", null, null, null, null, "0", "20", sand, null, "20", null, null, null, null]));
        Assert.Equal(SoilMapOutcome.Refused, answer.Outcome);
        Assert.Contains(column, answer.Problem!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Too_long_an_answer_is_not_parsed() => Assert.Equal(SoilMapOutcome.Refused, SoilDataReader.Read(new byte[SoilDataReader.MostBytes + 1]).Outcome);

    [Fact]
    public void Litter_above_the_soil_is_passed_over()
    {
        var answer = SoilDataReader.Read(SoilAnswers.Table(
            ["1", "U", "1", "E", "90", null, null, null, null, "0", "5", "10", "80", "10", "70", "4.5", null, null],
            ["1", "U", "1", "E", "90", null, null, null, null, "5", "25", "85", "10", "5", "2", "5.5", null, null]));
        Assert.Equal(SoilTexture.LoamySand, SurfaceSoil.Of(answer.Unit!)!.Texture);
    }

    [Fact]
    public void Broken_answers_never_throw() =>
        Gen.Select(Gen.Int[0, SoilAnswers.HouseLot.Length - 1], Gen.Byte, Gen.Int[0, SoilAnswers.HouseLot.Length]).Sample((at, value, length) =>
        {
            var bytes = SoilAnswers.HouseLot[..length];
            if (at < length)
            {
                bytes[at] = value;
            }

            Assert.True(Enum.IsDefined(SoilDataReader.Read(bytes).Outcome));
        }, iter: 3000);

    [Fact]
    public void The_query_carries_coordinates_only_in_digits_whatever_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            (odd.NumberFormat.NumberDecimalSeparator, odd.NumberFormat.NegativeSign) = (",", "~");
            CultureInfo.CurrentCulture = odd;
            Assert.Contains("point(-84.1235 42.3123)", SoilDataQuery.Text(new Place(42.31234567, -84.12345678, 280)), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        using var body = JsonDocument.Parse(SoilDataQuery.Body(new Place(42.31, -84.12, 280)));
        Assert.Equal("JSON+COLUMNNAME+METADATA", body.RootElement.GetProperty("format").GetString());
        Assert.StartsWith("SELECT mu.mukey", body.RootElement.GetProperty("query").GetString(), StringComparison.Ordinal);
        Assert.True(SoilDataQuery.MayKnow(new Place(42.31, -84.12, 280)));
        Assert.False(SoilDataQuery.MayKnow(new Place(50.1, 8.7, 100)));
        Assert.DoesNotContain("'--", Encoding.UTF8.GetString(SoilDataQuery.Body(new Place(-14.3, -170.7, 10))), StringComparison.Ordinal);
    }
}
