using System.Runtime.Intrinsics;
using Seedfall.Engine.Simulation.Plant;

namespace Seedfall.Checks.Published.Biology;

public sealed class GerminationTests
{
    [Theory]
    // Base temperature and thermal time: Larsen & Bibby 2005, Crop Sci. 45:2030-2037 (abstract read); t50 = theta / (T - Tb), computed.
    [InlineData(3.6, 63.9, 12.0, 7.61)]
    [InlineData(3.6, 63.9, 20.0, 3.90)]
    [InlineData(2.6, 115.6, 12.0, 12.30)]
    [InlineData(2.6, 115.6, 20.0, 6.64)]
    [InlineData(2.6, 43.8, 12.0, 4.66)]
    [InlineData(2.6, 43.8, 20.0, 2.52)]
    public void HalfOfWetSeedGerminatesWhenTheThermalTimeIsReached(double baseC, double thermalTime, double temperatureC, double days)
    {
        var traits = new GerminationTraits(baseC, 25.0, 27.0, 40.0, thermalTime, -1.0, 0.3, 100.0);
        Assert.Equal(0.5, traits.GerminatedShare(temperatureC, 0.0, days), 2);
    }

    [Theory]
    // Hydrothermal time model of Gummerson 1986 and Bradford 2002 with made-up constants; times computed, not outside evidence.
    [InlineData(20.0, 0.0, 2.862, 0.10)]
    [InlineData(20.0, 0.0, 3.828, 0.50)]
    [InlineData(20.0, 0.0, 5.776, 0.90)]
    [InlineData(20.0, -0.3, 3.747, 0.10)]
    [InlineData(20.0, -0.3, 5.594, 0.50)]
    [InlineData(20.0, -0.3, 11.032, 0.90)]
    [InlineData(12.0, 0.0, 5.556, 0.10)]
    [InlineData(12.0, 0.0, 7.430, 0.50)]
    [InlineData(12.0, 0.0, 11.211, 0.90)]
    public void TheModelGivesTheSharesOfItsEquation(double temperatureC, double potentialMPa, double days, double share)
    {
        var traits = new GerminationTraits(3.5, 25.0, 27.5, 40.0, 60.0, -0.95, 0.25, 84.0);
        Assert.Equal(share, traits.GerminatedShare(temperatureC, potentialMPa, days), 3);
    }

    [Theory]
    // Sharifiamina, Moot & Bloomberg 2016, J. NZ Grassl. 78:163-168 (read): tall fescue, base 3.5, rate rising to 27.5 degC; 11.5/24 at 15 degC.
    [InlineData(15.0, 0.479)]
    [InlineData(27.5, 1.0)]
    public void TallFescueSpeedsUpInALineToItsOptimum(double temperatureC, double relativeRate)
    {
        var traits = new GerminationTraits(3.5, 27.5, 27.5, 32.5, 76.0, -0.95, 0.30, 84.0);
        Assert.Equal(relativeRate, traits.EffectiveDegrees(temperatureC) / traits.EffectiveDegrees(27.5), 3);
        Assert.Equal(0.0, traits.EffectiveDegrees(32.5), 12);
    }

    [Theory]
    // Base potential -0.95 MPa of tall fescue: Sharifiamina et al. 2016 (read); speed (psi - psi_b) / -psi_b, computed.
    [InlineData(-0.18, 0.81)]
    [InlineData(-0.37, 0.611)]
    [InlineData(-0.63, 0.34)]
    [InlineData(-0.95, 0.0)]
    public void DrierSoilSlowsTheMedianSeed(double potentialMPa, double relativeSpeed)
    {
        var traits = new GerminationTraits(3.5, 27.5, 27.5, 32.5, 76.0, -0.95, 0.30, 84.0);
        var speed = traits.MedianLabDays(20.0, 0.0) / traits.MedianLabDays(20.0, potentialMPa) ?? 0.0;
        Assert.Equal(relativeSpeed, speed, 2);
    }

    [Fact]
    public void NothingGerminatesAtOrBelowTheBaseTemperature() =>
        Assert.Null(new GerminationTraits(3.5, 27.5, 27.5, 32.5, 76.0, -0.95, 0.30, 84.0).MedianLabDays(3.5, 0.0));

    [Theory]
    // Lincoln University 1996 dissertation (read): days to half field emergence, mean of five New Zealand autumn sowings,
    // perennial ryegrass 15.5, tall fescue 19.4. The soil was about 10 to 12 degC (assumed here: 11), sown at 10 mm.
    [InlineData(3.6, 77.0, -1.2, 0.35, 15.5)]
    [InlineData(3.5, 76.0, -0.95, 0.30, 19.4)]
    public void FieldEmergenceTakesAboutAsLongAsMeasured(double baseC, double hydrothermal, double median, double spread, double days)
    {
        var traits = new GerminationTraits(baseC, 20.0, 27.0, 40.0, hydrothermal, median, spread, 100.0);
        var zone = new SeedZoneRecord(24 * 90);
        var record = new PlantRecord(traits, zone);
        var wet = Vector256<double>.Zero;
        for (var hour = 0; hour < 24 * 90; hour++)
        {
            zone.Add(Vector256.Create(11.0), wet, wet, wet, Vector256.Create(11.0));
            record.Add(Vector256.Create(11.0), Vector256.Create(-0.05));
        }

        var emerged = record.Fate(0, PlantRecord.Shares / 2, 0, 24 * 90, 10.0).EmergedHour / 24.0;
        Assert.InRange(emerged, 0.75 * days, 1.25 * days);
    }
}
