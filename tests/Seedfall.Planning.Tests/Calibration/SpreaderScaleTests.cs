using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Planning.Tests.Calibration;

public sealed class SpreaderScaleTests
{
    [Theory]
    [InlineData(false, "4.25", 4.25)]
    [InlineData(false, "4,25", 4.25)]
    [InlineData(true, "K", 11.0)]
    [InlineData(true, "k + 0.5", 11.5)]
    [InlineData(true, "K0.5", 11.5)]
    public void Openings_read_as_they_stand_on_the_spreader(bool letters, string text, double opening) =>
        Assert.Equal(opening, Scale(letters).Read(text));

    [Theory]
    [InlineData(false, "K")]
    [InlineData(true, "K + 2")]
    [InlineData(true, "KK")]
    [InlineData(false, "")]
    public void What_is_no_opening_is_none(bool letters, string text) => Assert.Null(Scale(letters).Read(text));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Every_opening_reads_back_from_what_is_shown(bool letters) =>
        Assert.All(Scale(letters).Openings, o => Assert.Equal(o, Scale(letters).Read(Scale(letters).Show(o))));

    [Theory]
    [InlineData(5.0, 5.0, 1.0, false)]
    [InlineData(0.0, 10.0, 0.0, false)]
    [InlineData(0.0, 10.0, 11.0, false)]
    [InlineData(0.0, 10.0, 0.001, false)]
    [InlineData(0.0, 26.0, 1.0, true)]
    public void What_is_no_scale_is_refused(double least, double greatest, double step, bool letters)
    {
        Assert.NotNull(SpreaderScale.Fault(least, greatest, step, letters));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpreaderScale(least, greatest, step, letters));
    }

    private static SpreaderScale Scale(bool letters) => letters ? new(1.0, 26.0, 0.5, letters: true) : new(0.0, 10.0, 0.25);
}
