using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water;

namespace Seedfall.Checks.Published.Water;

/// <summary>How often and how lightly a seedbed is watered.</summary>
public sealed class SeedbedWateringChecks
{
    // UNL (at second hand) and WVU: the top 1/2 to 1 in moist, several times a day in the first two weeks. Common practice of 2 to 4
    // rounds of 0.05 to 0.10 in, no source read, on days that draw 0.10 to 0.22 in.
    [Theory]
    [InlineData(0.10)]
    [InlineData(0.15)]
    [InlineData(0.22)]
    public void RoundsAndDepthsKeepToPractice(double lossInches)
    {
        foreach (var texture in Enum.GetValues<SoilTexture>())
        {
            var need = SeedbedNeed.For(Depth.FromInches(lossInches), texture);
            Assert.InRange(need.Rounds, 2, 4);
            Assert.InRange(need.PerRound.Inches, 0.05 - 1e-9, 0.11);
            Assert.True(need.PerRound.Inches * need.Rounds >= lossInches - 1e-9);
        }
    }

    // 2014 Crop Science Society abstract: 0.51 cm daily beat the same water given every second or third day; the seedbed is never
    // watered less than daily.
    [Fact]
    public void NeverLessThanTwiceADay() => Assert.Equal(2, SeedbedNeed.For(Depth.Zero, SoilTexture.SiltLoam).Rounds);

    // CSU Fresno homeowner tutorial: standard spray heads 1.7 in/h, DU 60 %; impact 0.5 in/h, DU 70 %.
    [Theory]
    [InlineData(SprinklerKind.FixedSpray, 1.7, 0.60)]
    [InlineData(SprinklerKind.Impact, 0.5, 0.70)]
    public void UsualSprinklers(SprinklerKind kind, double rate, double lowQuarter)
    {
        var usual = SprinklerDefaults.For(kind);
        Assert.Equal(rate, usual.Rate.InchesPerHour, 1e-9);
        Assert.Equal(lowQuarter, usual.LowQuarter.Value, 1e-9);
    }
}
