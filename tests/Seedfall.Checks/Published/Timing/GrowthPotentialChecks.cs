using Seedfall.Engine.Timing;
using Seedfall.Engine.Units;

namespace Seedfall.Checks.Published.Timing;

/// <summary>Growth potential of cool-season grass.</summary>
public sealed class GrowthPotentialChecks
{
    // Gelernter and Stowell 2005: the optimum is 68 degF (read); the spread of 5.5 degC is common practice, no source read.
    [Fact]
    public void BestAt68Fahrenheit() => Assert.Equal(1.0, GrowingDays.GrowthPotential(Temperature.FromFahrenheit(68)), 1e-12);

    // Computed from the equation, not outside evidence.
    [Theory]
    [InlineData(5, 0.024)]
    [InlineData(10, 0.191)]
    [InlineData(15, 0.662)]
    [InlineData(25, 0.662)]
    [InlineData(30, 0.191)]
    public void FallsOffOnBothSides(double celsius, double expected) =>
        Assert.Equal(expected, GrowingDays.GrowthPotential(Temperature.FromCelsius(celsius)), 0.0005);
}
