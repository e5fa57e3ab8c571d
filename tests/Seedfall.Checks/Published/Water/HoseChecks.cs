using Seedfall.Engine.Units;
using Seedfall.Planning.Water;

namespace Seedfall.Checks.Published.Water;

/// <summary>Pressure and flow in hoses and nozzles.</summary>
public sealed class HoseChecks
{
    private static readonly Length FiveEighths = Length.FromInches(0.625);

    // Hazen-Williams with 4.52 as printed (exponents rounded there): 5/8 in, C 140, psi per 100 ft. Computed from the read equation.
    [Theory]
    [InlineData(5.0, 9.3)]
    [InlineData(8.0, 22.2)]
    [InlineData(10.0, 33.6)]
    public void LossPerHundredFeet(double gpm, double psi) =>
        Assert.Equal(psi, Loss(gpm), psi * 0.005);

    // A printed pump-manual chart for 5/8 in hose: 10, 25, 38 psi per 100 ft, which is 7 to 13 % more than the equation.
    [Theory]
    [InlineData(5.0, 10.0)]
    [InlineData(8.0, 25.0)]
    [InlineData(10.0, 38.0)]
    public void PrintedChartShowsSomewhatMore(double gpm, double psi) => Assert.InRange(psi / Loss(gpm), 1.06, 1.14);

    // Computed upper bound, not outside evidence: open hose, 40 psi all lost in it.
    [Theory]
    [InlineData(50.0, 16.0)]
    [InlineData(100.0, 11.0)]
    public void OpenHose(double feet, double gpm) => Assert.Equal(
        gpm, HazenWilliams.FlowFor(Pressure.FromPoundsPerSquareInch(40.0), Length.FromFeet(feet), FiveEighths).GallonsPerMinute, 0.2);

    // Arithmetic: loss and flow undo each other.
    [Theory]
    [InlineData(3.0)]
    [InlineData(12.0)]
    public void FlowIsTheInverseOfLoss(double gpm)
    {
        var loss = HazenWilliams.Loss(FlowRate.FromGallonsPerMinute(gpm), Length.FromFeet(75.0), FiveEighths);
        Assert.Equal(gpm, HazenWilliams.FlowFor(loss, Length.FromFeet(75.0), FiveEighths).GallonsPerMinute, 1e-9);
    }

    // Orifice 29.84 c d^2 sqrt(P): common practice, no source read. 1/8 in at 40 psi: 2.89 gpm; 40 to 60 psi raises flow 22 %.
    [Fact]
    public void Nozzle()
    {
        var at40 = HazenWilliams.NozzleFlow(Pressure.FromPoundsPerSquareInch(40.0), Length.FromInches(0.125)).GallonsPerMinute;
        var at60 = HazenWilliams.NozzleFlow(Pressure.FromPoundsPerSquareInch(60.0), Length.FromInches(0.125)).GallonsPerMinute;
        Assert.Equal(2.89, at40, 0.01);
        Assert.Equal(1.22, at60 / at40, 0.01);
    }

    private static double Loss(double gpm) =>
        HazenWilliams.Loss(FlowRate.FromGallonsPerMinute(gpm), Length.FromFeet(100.0), FiveEighths).PoundsPerSquareInch;
}
