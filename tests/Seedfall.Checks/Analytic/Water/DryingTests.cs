using Seedfall.Engine.Soil.Water;

namespace Seedfall.Checks.Analytic.Water;

public sealed class DryingTests
{
    [Theory]
    // Coefficients of Ritchie 1972 (from memory, common practice), days 1, 2, 3, 5 and 10 under 5 mm/d; sums computed.
    [InlineData(9.0, 4.04, 5.0, 10.81, 13.43, 16.23, 20.57)]
    [InlineData(6.0, 3.5, 5.0, 9.13, 10.70, 12.82, 16.38)]
    [InlineData(6.0, 3.34, 5.0, 8.99, 10.48, 12.51, 15.91)]
    [InlineData(12.0, 5.08, 5.0, 10.0, 15.93, 20.19, 26.00)]
    public void TwoStagesOfDrying(double firstStage, double alpha, double one, double two, double three, double five, double ten)
    {
        var soil = new RitchieDrying(firstStage, alpha);
        (double Days, double Mm)[] expected = [(1, one), (2, two), (3, three), (5, five), (10, ten)];
        Assert.All(expected, e => Assert.Equal(e.Mm, soil.CumulativeMm(e.Days, 5.0), 6e-3));
    }

    [Fact]
    public void TheEvaporationLayerDriesAsTheEquationsSay()
    {
        // FAO-56 eq. 74 and 77 (from memory, common practice) on bare loam, 4.5 mm/d, Kcmax - Kcb 1.05, TEW 20, REW 9; series computed.
        var layer = new EvaporationLayer(20.0, 9.0);
        double[] ends = [4.73, 9.45, 13.98, 16.57, 18.04, 18.88, 19.36, 19.64, 19.79, 19.88];
        double[] reductions = [1.0, 1.0, 0.959, 0.547, 0.312, 0.178];
        var depleted = 0.0;
        for (var day = 0; day < ends.Length; day++)
        {
            if (day < reductions.Length)
            {
                Assert.Equal(reductions[day], layer.Reduction(depleted), 1e-3);
            }

            depleted = layer.AfterDryDayMm(depleted, 4.5, 1.05);
            Assert.Equal(ends[day], depleted, 0.01);
        }
    }

    [Fact]
    public void TotalEvaporableWater() =>
        // FAO-56 eq. 73: theta_FC 0.28, theta_WP 0.14, 0.10 m gives 21 mm.
        Assert.Equal(21.0, EvaporationLayer.TotalEvaporableMm(0.28, 0.14, 0.10), 12);

    [Theory]
    // Carsel & Parrish 1988, Water Resour. Res. 24:755, means (read in several codes); water contents and conductivity computed.
    [InlineData(0.078, 0.43, 0.036, 1.56, 24.96, -100.0, 0.2421)]
    [InlineData(0.078, 0.43, 0.036, 1.56, 24.96, -330.0, 0.1654)]
    [InlineData(0.065, 0.41, 0.075, 1.89, 106.1, -100.0, 0.1218)]
    [InlineData(0.068, 0.38, 0.008, 1.09, 4.80, -15000.0, 0.2707)]
    public void ClassMeansHoldTheirWater(double residual, double saturated, double alpha, double n, double perDayCm, double headCm, double water) =>
        Assert.Equal(water, new VanGenuchtenCurves(residual, saturated, alpha, n, perDayCm / 24.0).WaterContent(headCm), 1e-4);

    [Theory]
    [InlineData(0.078, 0.43, 0.036, 1.56, 24.96, 0.03392)]
    [InlineData(0.065, 0.41, 0.075, 1.89, 106.1, 0.004552)]
    public void ClassMeansConduct(double residual, double saturated, double alpha, double n, double perDayCm, double conductivityCmD) =>
        Assert.InRange(24.0 * new VanGenuchtenCurves(residual, saturated, alpha, n, perDayCm / 24.0).ConductivityCmH(-100.0), 0.998 * conductivityCmD, 1.002 * conductivityCmD);
}
