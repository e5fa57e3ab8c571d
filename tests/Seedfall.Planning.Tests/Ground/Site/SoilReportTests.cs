using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Tests.Ground.Site;

public sealed class SoilReportTests
{
    [Fact]
    public void Nothing_known_reads_nothing() => Assert.Empty(SoilReadings.Of(null).Concat(SoilReadings.Of(new SoilFacts())));

    [Theory]
    [InlineData(SoilExtract.Mehlich3, 20, SoilLevel.Low)]
    [InlineData(SoilExtract.Mehlich3, 29, SoilLevel.Optimum)]
    [InlineData(SoilExtract.Mehlich3, 45, SoilLevel.High)]
    [InlineData(SoilExtract.Bray1, 14, SoilLevel.Low)]
    [InlineData(SoilExtract.Bray1, 29, SoilLevel.Optimum)]
    [InlineData(SoilExtract.Bray1, 31, SoilLevel.High)]
    [InlineData(SoilExtract.Olsen, 11, SoilLevel.Low)]
    [InlineData(SoilExtract.Olsen, 29, SoilLevel.High)]
    public void Phosphorus_is_graded_by_its_own_extract(SoilExtract extract, double ppm, SoilLevel level)
    {
        Assert.Equal(level, SoilReadings.Of(new SoilFacts { Extract = extract, PhosphorusPpm = ppm }).Single().Level);
        Assert.Equal(level == SoilLevel.High, ppm >= PhosphorusLimit.EnoughFor(extract));
    }

    [Fact]
    public void Lime_is_the_laboratorys_and_is_split()
    {
        var lime = SoilReadings.Of(new SoilFacts { Ph = 5.4, BufferPh = 6.3, LabLime = MassPerArea.FromPoundsPerThousandSquareFeet(120) });
        Assert.Equal(SoilLevel.Low, lime[0].Level);
        Assert.Contains("is used", lime[1].Sentence, StringComparison.Ordinal);
        Assert.Contains("3 applications", lime[2].Sentence, StringComparison.Ordinal);
        Assert.Equal(3, SoilReadings.LimeApplications(MassPerArea.FromPoundsPerThousandSquareFeet(150)));
        Assert.Equal(125.0, SoilReadings.LimeProduct(MassPerArea.FromPoundsPerThousandSquareFeet(100), 0.8).PoundsPerThousandSquareFeet, 1e-9);
        Assert.Contains("enter the lime the lab recommends", SoilReadings.Of(new SoilFacts { BufferPh = 6.3 }).Single().Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30, false, SoilLevel.Low)]
    [InlineData(60, false, SoilLevel.Optimum)]
    [InlineData(150, false, SoilLevel.Optimum)]
    [InlineData(150, true, SoilLevel.High)]
    public void Potassium_lines_are_lower_on_sand(double ppm, bool sand, SoilLevel level) =>
        Assert.Equal(level, SoilReadings.Of(new SoilFacts { PotassiumPpm = ppm, Texture = sand ? SoilTexture.Sand : null }).Single().Level);

    [Fact]
    public void Every_reading_carries_its_lines_and_a_source()
    {
        var all = SoilReadings.Of(new SoilFacts
        {
            Ph = 6.5,
            BufferPh = 6.9,
            PhosphorusPpm = 30,
            PotassiumPpm = 90,
            CalciumPpm = 900,
            MagnesiumPpm = 40,
            CationExchange = 12,
            SaltsDsPerM = 4,
            OrganicMatter = Fraction.FromPercent(2),
            LabLime = MassPerArea.Zero,
        });
        Assert.Equal(10, all.Count);
        Assert.All(all, r => Assert.True(r.Sentence.Length > 10 && r.Figure.Working.Source.Length > 10));
        Assert.Equal(all.Count, all.Select(r => r.Figure.Id).Distinct().Count());
        Assert.Equal(SoilLevel.High, all.Single(r => r.Figure.Id == "soil.salts").Level);
    }

    [Fact]
    public void The_times_to_mark_a_jar_follow_its_depth_and_warmth()
    {
        var (shallow, deep) = (JarTest.Times(Length.FromCentimeters(10), Temperature.FromCelsius(20)), JarTest.Times(Length.FromCentimeters(20), Temperature.FromCelsius(20)));
        Assert.Equal(2.0, deep[0].Value / shallow[0].Value, 1e-9);
        Assert.True(JarTest.Times(Length.FromCentimeters(10), Temperature.FromCelsius(10))[1].Value > shallow[1].Value);
    }

    [Fact]
    public void Marking_the_silt_after_two_hours_is_told_to_be_early()
    {
        var layers = new JarLayers(Length.FromCentimeters(2), Length.FromCentimeters(4), Length.FromCentimeters(5));
        var (depth, water) = (Length.FromCentimeters(18), Temperature.FromCelsius(20));
        Assert.Contains("fine silt is counted as clay", JarTest.Shares(layers, layers.Read(JarTest.ReadingError), 120, depth, water)[2].Working.Note, StringComparison.Ordinal);
        Assert.DoesNotContain("fine silt is counted as clay", JarTest.Shares(layers, layers.Read(JarTest.ReadingError), 24 * 60, depth, water)[2].Working.Note, StringComparison.Ordinal);
    }
}
