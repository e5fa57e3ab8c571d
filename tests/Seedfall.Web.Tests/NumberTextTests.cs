using CsCheck;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Tests;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("12.5", 12.5)]
    [InlineData("12,5", 12.5)]
    [InlineData("1,250", 1250.0)]
    [InlineData("1,250,000.5", 1250000.5)]
    [InlineData("2 3/4", 2.75)]
    [InlineData("1/2", 0.5)]
    [InlineData(" -7 ", -7.0)]
    [InlineData(".25", 0.25)]
    public void Numbers_are_read_as_people_type_them(string text, double value) => Assert.Equal(value, NumberText.Parse(text));

    [Theory]
    [InlineData("")]
    [InlineData("1/0")]
    [InlineData("1e5")]
    [InlineData("0x10")]
    [InlineData("1,2,3")]
    [InlineData("12 ft")]
    [InlineData("∞")]
    public void What_is_no_number_is_none(string text) => Assert.Null(NumberText.Parse(text));

    [Fact]
    public void What_is_written_reads_back_to_seven_digits() =>
        Gen.Double[-1.0e6, 1.0e6].Where(v => v == 0.0 || Math.Abs(v) > 1.0e-3).Sample(v =>
        {
            var back = NumberText.Parse(NumberText.Write(v));
            return back is { } b && Math.Abs(b - v) <= 1.0e-6 * Math.Abs(v);
        });
}
