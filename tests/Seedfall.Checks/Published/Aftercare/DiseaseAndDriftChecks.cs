using Seedfall.Engine.Units;
using Seedfall.Planning.Aftercare;

namespace Seedfall.Checks.Published.Aftercare;

/// <summary>Disease warnings and drift weather.</summary>
public sealed class DiseaseAndDriftChecks
{
    // Smith et al. 2018; coefficients common practice, no source read.
    [Theory]
    [InlineData(80, 20, 0.404)]
    [InlineData(70, 15, 0.0955)]
    [InlineData(90, 22, 0.709)]
    [InlineData(85, 12, 0.184)]
    public void DollarSpot(double humidity, double celsius, double expected) =>
        Assert.Equal(expected, DollarSpotRisk.Chance(Fraction.FromPercent(humidity), Temperature.FromCelsius(celsius))!.Value, 0.0005);

    // Smith et al. 2018: made for about 10 to 35 degC; 20 % is the line for acting.
    [Fact]
    public void DollarSpotKeepsToItsRange()
    {
        Assert.Null(DollarSpotRisk.Chance(Fraction.FromPercent(80), Temperature.FromCelsius(9.9)));
        Assert.Null(DollarSpotRisk.Chance(Fraction.FromPercent(80), Temperature.FromCelsius(35.1)));
        Assert.Equal(DollarSpotRisk.ActionChance, DollarSpotRisk.Chance(Fraction.FromPercent(80), Temperature.FromCelsius(14.8))!.Value, 0.005);
    }

    // Fidanza, Dernoeden and Grybauskas 1996: warn at 6; a Kentucky pathologist found 5 better.
    [Theory]
    [InlineData(90, 18.0, 6.508, true, true)]
    [InlineData(80, 18.0, 5.008, false, true)]
    [InlineData(84, 21.2, 5.948, false, true)]
    [InlineData(95, 20.0, 7.550, true, true)]
    [InlineData(95, 12.0, 4.798, false, false)]
    public void BrownPatch(double humidity, double celsius, double index, bool warns, bool warnsEarlier)
    {
        var e = BrownPatchRisk.Index(Fraction.FromPercent(humidity), Temperature.FromCelsius(celsius));
        Assert.Equal(index, e, 0.001);
        Assert.Equal(warns, e >= BrownPatchRisk.Warning);
        Assert.Equal(warnsEarlier, e >= BrownPatchRisk.EarlierWarning);
    }

    // Fidanza et al. 1996: no temperature warns below 84.3 % humidity.
    [Fact]
    public void BrownPatchNeedsHumidAir()
    {
        for (var celsius = 0.0; celsius <= 35.0; celsius += 0.1)
        {
            Assert.True(BrownPatchRisk.Index(Fraction.FromPercent(84.2), Temperature.FromCelsius(celsius)) < BrownPatchRisk.Warning);
        }
    }

    // Nutter, Cole and Schein 1983: above 30 degC, above 20 degC, 14 humid hours.
    [Theory]
    [InlineData(31, 21, 15, true)]
    [InlineData(31, 21, 13, false)]
    [InlineData(30, 21, 15, false)]
    [InlineData(31, 20, 15, false)]
    public void Pythium(double highest, double lowest, double hours, bool warns) =>
        Assert.Equal(warns, PythiumRisk.Warns(Temperature.FromCelsius(highest), Temperature.FromCelsius(lowest), hours));

    // Hall 1984, as used at Kentucky: 28 degC, 20 degC, 9 hours.
    [Theory]
    [InlineData(29, 21, 9, true)]
    [InlineData(28, 21, 12, false)]
    [InlineData(29, 21, 8.9, false)]
    public void PythiumEarlier(double highest, double lowest, double hours, bool warns) =>
        Assert.Equal(warns, PythiumRisk.WarnsEarlier(Temperature.FromCelsius(highest), Temperature.FromCelsius(lowest), hours));

    // Stull 2011: coefficients common practice, no source read.
    [Theory]
    [InlineData(20, 50, 6.30)]
    [InlineData(30, 30, 11.63)]
    [InlineData(15, 90, 1.16)]
    [InlineData(25, 60, 5.50)]
    public void DeltaTOfStull(double celsius, double humidity, double expected) =>
        Assert.Equal(expected, DeltaT.DifferenceC(Temperature.FromCelsius(celsius), Fraction.FromPercent(humidity)), 0.01);

    // NDSU, Australian Bureau of Meteorology: 2 to 8 good, above 10 avoid.
    [Fact]
    public void DryHotAirIsToBeAvoided() =>
        Assert.True(DeltaT.DifferenceC(Temperature.FromCelsius(30), Fraction.FromPercent(30)) > DeltaT.AvoidC);
}
