using CsCheck;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Tests.Soil;

public sealed class JarLayersTests
{
    private static readonly Length Millimeter = Length.FromCentimeters(0.1);

    [Fact]
    public void A_jar_read_without_error_has_one_class()
    {
        var reading = Jar(40, 80, 100).Read(Length.Zero);
        Assert.Equal([new TextureChance(SoilTexture.Loam, 1.0)], reading.Chances);
        Assert.Equal(0.4, reading.Sand.Value, 1e-9);
        Assert.Equal(0.2, reading.Clay.Value, 1e-9);
    }

    [Fact]
    public void A_jar_on_a_border_is_torn_between_two_classes()
    {
        // 27 % clay parts loam from clay loam.
        var reading = Jar(36.5, 73, 100).Read(Millimeter);
        Assert.Equal([SoilTexture.Loam, SoilTexture.ClayLoam], reading.Chances.Select(c => c.Texture).Order());
        Assert.All(reading.Chances, c => Assert.InRange(c.Chance, 0.4, 0.6));
    }

    [Fact]
    public void The_chances_are_those_of_a_simulation_of_misread_marks()
    {
        var (random, hits, jar) = (new SplitMix64(11), new Dictionary<SoilTexture, int>(), Jar(20, 34, 48));
        var deviation = 0.001 / NormalDistribution.Inverse(0.95);
        for (var i = 0; i < 40_000; i++)
        {
            double[] marks = [.. new[] { 0.020, 0.034, 0.048 }.Select(m => m + (deviation * random.NextNormal()))];
            var texture = TextureTriangle.ClassOf(Fraction.Of(marks[0] / marks[2]), Fraction.Of((marks[2] - marks[1]) / marks[2]));
            hits[texture] = hits.GetValueOrDefault(texture) + 1;
        }

        Assert.All(jar.Read(Millimeter).Chances, c => Assert.Equal(hits.GetValueOrDefault(c.Texture) / 40_000.0, c.Chance, 0.02));
    }

    [Fact]
    public void Shares_sum_to_one_and_chances_nearly() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0, 50], Gen.Double[0.5, 50]).Sample((sand, silt, clay) =>
        {
            var reading = Jar(sand, sand + silt, sand + silt + clay).Read(Millimeter);
            Assert.Equal(1.0, reading.Sand.Value + reading.Silt.Value + reading.Clay.Value, 1e-9);
            Assert.InRange(reading.Chances.Sum(c => c.Chance), 0.94, 1.0 + 1e-12);
        }, iter: 60);

    [Fact]
    public void Marks_out_of_order_are_refused()
    {
        Assert.False(Jar(50, 40, 60).InOrder);
        Assert.Throws<ArgumentException>(() => Jar(50, 40, 60).Read(Millimeter));
        Assert.Throws<ArgumentException>(() => Jar(0, 0, 0).Read(Millimeter));
    }

    [Fact]
    public void The_smallest_grain_down_and_the_time_for_it_agree() =>
        Gen.Select(Gen.Double[1e-6, 6e-5], Gen.Double[0.02, 0.5], Gen.Double[1, 35]).Sample((diameter, fall, waterC) =>
        {
            var (length, water) = (Length.FromMeters(fall), Temperature.FromCelsius(waterC));
            Assert.Equal(diameter, StokesSettling.CutM(StokesSettling.Seconds(diameter, length, water), length, water), diameter * 1e-9);
        });

    [Fact]
    public void Neighbors_are_mutual_and_every_class_has_some()
    {
        foreach (var texture in Enum.GetValues<SoilTexture>())
        {
            Assert.NotEmpty(TextureNeighbors.Of(texture));
            Assert.All(TextureNeighbors.Of(texture), n => Assert.Contains(texture, TextureNeighbors.Of(n)));
        }

        Assert.Equal([SoilTexture.SiltLoam], TextureNeighbors.Of(SoilTexture.Silt));
        Assert.Equal([SoilTexture.LoamySand], TextureNeighbors.Of(SoilTexture.Sand));
    }

    private static JarLayers Jar(double sandMm, double siltMm, double clayMm) =>
        new(Length.FromCentimeters(sandMm / 10.0), Length.FromCentimeters(siltMm / 10.0), Length.FromCentimeters(clayMm / 10.0));
}
