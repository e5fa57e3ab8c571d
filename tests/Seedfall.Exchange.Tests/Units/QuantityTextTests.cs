using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Units;

namespace Seedfall.Exchange.Tests.Units;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("2400 sq ft")]
    [InlineData("100 m2")]
    [InlineData("0.25 acre")]
    public void An_area_is_written_back_as_it_was_typed(string text)
    {
        Assert.True(Quantities.Area.TryParse(text, out var area));
        Assert.Equal(text, Quantities.Area.Write(area));
    }

    [Theory]
    [InlineData("5 fl oz/acre")]
    [InlineData("1.5 gal/M")]
    [InlineData("3 L/ha")]
    public void A_liquid_rate_is_written_back_as_it_was_typed(string text)
    {
        Assert.True(Quantities.LiquidRate.TryParse(text, out var rate));
        Assert.Equal(text, Quantities.LiquidRate.Write(rate));
    }

    [Theory]
    [InlineData("0.5 in/h", 12.7)]
    [InlineData("12.7 mm/h", 12.7)]
    [InlineData("0.5in/h", 12.7)]
    public void Both_unit_systems_give_the_same_rate(string text, double millimetersPerHour)
    {
        Assert.True(Quantities.PrecipitationRate.TryParse(text, out var rate));
        Assert.Equal(millimetersPerHour, rate.MillimetersPerHour, 12);
    }

    [Theory]
    [InlineData("12 lb/M", 12 * 0.45359237 / 92.90304)]
    [InlineData("50 kg/ha", 0.005)]
    public void A_dry_rate_is_read_in_trade_units(string text, double kilogramsPerSquareMeter)
    {
        Assert.True(Quantities.DryRate.TryParse(text, out var rate));
        Assert.Equal(kilogramsPerSquareMeter, rate.KilogramsPerSquareMeter, 12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("12")]
    [InlineData("sq ft")]
    [InlineData("12  sq ft")]
    [InlineData(" 12 sq ft")]
    [InlineData("12 sq ft ")]
    [InlineData("+12 sq ft")]
    [InlineData("1 2 sq ft")]
    [InlineData("0x10 sq ft")]
    [InlineData("1,200 sq ft")]
    [InlineData("12. sq ft")]
    [InlineData("∞ sq ft")]
    [InlineData("１２ sq ft")]
    public void What_is_not_one_number_and_one_unit_is_refused(string text) => Assert.False(Quantities.Area.TryParse(text, out _));

    [Fact]
    public void Any_positive_value_survives_writing_and_reading() =>
        Gen.Double[0.0, 1.0e12].Sample(
            value =>
            {
                Assert.True(Quantities.Area.TryParse(Quantities.Area.Write(new Area(value)), out var area));
                Assert.Equal(value, area.SquareMeters);
                Assert.True(Quantities.Length.TryParse(Quantities.Length.Write(new Length(value)), out var length));
                Assert.Equal(value, length.Meters);
            });

    [Fact]
    public void A_share_beyond_one_hundred_percent_is_refused()
    {
        Assert.False(Quantities.Share.TryParse("100.1 %", out _));
        Assert.False(Quantities.Share.TryParse("-1 %", out _));
        Assert.True(Quantities.Share.TryParse("100 %", out var all));
        Assert.Equal(Fraction.All, all);
    }

    [Fact]
    public void Writing_a_negative_area_is_a_callers_mistake() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantities.Area.Write(new Area(-1.0)));
}
