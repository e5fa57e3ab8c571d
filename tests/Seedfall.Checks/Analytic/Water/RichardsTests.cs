using CsCheck;
using Seedfall.Engine.Soil.Water;

namespace Seedfall.Checks.Analytic.Water;

/// <summary>The reference solver against published infiltration problems.</summary>
public sealed class RichardsTests
{
    // Celia, Bouloutas & Zarba 1990, Water Resour. Res. 26:1483, case 1: parameters read in public codes; cm/s times 3600.
    private static readonly HaverkampCurves Celia1 = new(0.075, 0.287, 1.611e6, 3.96, 0.00944 * 3600.0, 1.175e6, 4.74);

    // Case 2: from memory, common practice.
    private static readonly VanGenuchtenCurves Celia2 = new(0.102, 0.368, 0.0335, 2.0, 0.00922 * 3600.0);

    [Fact]
    public void TheFirstCurvesGiveTheirValues()
    {
        // Computed from the published equations, not outside evidence.
        Assert.Equal(0.099851, Celia1.WaterContent(-61.5), 6);
        Assert.Equal(0.267559, Celia1.WaterContent(-20.7), 6);
        Assert.Equal(3.6648e-5, Celia1.ConductivityCmH(-61.5) / 3600.0, 9);
        Assert.Equal(3.8201e-3, Celia1.ConductivityCmH(-20.7) / 3600.0, 7);
        Assert.Equal(0.200366, Celia2.WaterContent(-75.0), 6);
        Assert.Equal(0.109937, Celia2.WaterContent(-1000.0), 6);
    }

    [Fact]
    public void CapacityIsTheSlopeOfTheWaterContent()
    {
        WaterCurves[] all = [Celia1, Celia2, new ExponentialCurves(0.06, 0.4, 0.1, 1.0), new PowerCurves(0.46, 5.4, 20.0, 1.5)];
        Gen.Select(Gen.OneOfConst(all), Gen.Double[-5000, -25]).Sample((curves, head) =>
        {
            const double Step = 1e-3;
            var slope = (curves.WaterContent(head + Step) - curves.WaterContent(head - Step)) / (2.0 * Step);
            Assert.InRange(curves.CapacityPerCm(head), slope - 1e-8 - (1e-5 * slope), slope + 1e-8 + (1e-5 * slope));
        });
    }

    [Fact]
    public void TheFirstCaseHasItsProfileAfterSixMinutes()
    {
        var (column, balance) = Infiltrate(Celia1, 40.0, 160, -61.5, -20.7, -61.5, 0.1, 0.5 / 3600.0);

        // Fine-grid reference of the same equations, computed; the front's place agrees with the published figure.
        (double DepthCm, double HeadCm)[] profile = [(2, -21.080), (5, -21.944), (8, -23.429), (10, -25.080), (12, -27.81), (15, -37.13), (20, -60.76)];
        Assert.All(profile, point => Assert.InRange(HeadAt(column, 40.0, point.DepthCm), point.HeadCm - 0.3, point.HeadCm + 0.3));
        Assert.InRange(column.StoredCm - (40.0 * Celia1.WaterContent(-61.5)), 2.36, 2.38);
        Assert.InRange(FrontCm(column, 40.0, 0.5 * (Celia1.WaterContent(-61.5) + Celia1.WaterContent(-20.7))), 14.72, 15.02);
        Assert.InRange(balance, 1.0 - 1e-6, 1.0 + 1e-6);
    }

    [Fact]
    public void TheSecondCaseHasItsFrontAfterADay()
    {
        var (column, balance) = Infiltrate(Celia2, 100.0, 200, -1000.0, -75.0, -1000.0, 24.0, 0.02);
        (double DepthCm, double HeadCm, double Within)[] profile = [(10, -76.9, 0.5), (20, -80.3, 0.5), (30, -86.7, 0.7), (40, -100.4, 1.5), (50, -142.5, 5.0)];
        Assert.All(profile, point => Assert.InRange(HeadAt(column, 100.0, point.DepthCm), point.HeadCm - point.Within, point.HeadCm + point.Within));
        Assert.InRange(FrontCm(column, 100.0, 0.5 * (Celia2.WaterContent(-1000.0) + Celia2.WaterContent(-75.0))), 49.9, 50.9);
        Assert.InRange(column.StoredCm - (100.0 * Celia2.WaterContent(-1000.0)), 4.07, 4.17);

        // Celia et al. 1990: the mixed form keeps mass where the head form loses it.
        Assert.InRange(balance, 1.0 - 1e-4, 1.0 + 1e-4);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void HalvingTheStepHalvesTheErrorInBothCases(bool first)
    {
        // Against a far finer step on the same cells, so that only the step counts: the solver is first order in time.
        RichardsColumn Run(double seconds) => first
            ? Infiltrate(Celia1, 40.0, 40, -61.5, -20.7, -61.5, 0.1, seconds / 3600.0).Column
            : Infiltrate(Celia2, 100.0, 50, -1000.0, -75.0, -1000.0, 6.0, seconds / 3600.0).Column;
        var (step, fine) = first ? (6.0, Run(0.1)) : (60.0, Run(2.0));
        double Error(double seconds)
        {
            var column = Run(seconds);
            return Math.Sqrt(Enumerable.Range(0, column.HeadCm.Length).Sum(i => Math.Pow(column.WaterContent(i) - fine.WaterContent(i), 2.0)));
        }

        Assert.InRange(Math.Log2(Error(step) / Error(0.5 * step)), 0.8, 1.25);
    }

    [Fact]
    public void AnyRainKeepsItsWater()
    {
        var rain = Gen.Double[0, 0.4].Array[1, 12];
        Gen.Select(rain, Gen.Double[-900, -40], Gen.Bool).Sample((hours, start, drains) =>
        {
            var column = new RichardsColumn(Celia2, Cells(60.0, 30), Enumerable.Repeat(start, 30).ToArray());
            var (before, flow) = (column.StoredCm, 0.0);
            foreach (var hour in hours)
            {
                var moved = column.Step(1.0, new EndCondition(ColumnEnd.Flux, hour), drains ? new EndCondition(ColumnEnd.FreeDrainage) : new EndCondition(ColumnEnd.Flux));
                flow += moved.InCm - moved.OutCm;
            }

            Assert.Equal(before + flow, column.StoredCm, 1e-7);
        }, iter: 40);
    }

    [Fact]
    public void ImpossibleColumnsAreRefused() =>
        Assert.Throws<ArgumentException>(() => new RichardsColumn(Celia1, [1.0, 1.0], [-10.0]));

    private static double[] Cells(double depthCm, int cells) => [.. Enumerable.Repeat(depthCm / cells, cells)];

    private static (RichardsColumn Column, double MassBalance) Infiltrate(
        WaterCurves curves, double depthCm, int cells, double startCm, double topCm, double bottomCm, double hours, double stepH)
    {
        var column = new RichardsColumn(curves, Cells(depthCm, cells), Enumerable.Repeat(startCm, cells).ToArray());
        var (before, net) = (column.StoredCm, 0.0);
        for (var step = 0; step < (int)Math.Round(hours / stepH); step++)
        {
            var flow = column.Step(stepH, new EndCondition(ColumnEnd.Head, topCm), new EndCondition(ColumnEnd.Head, bottomCm));
            net += flow.InCm - flow.OutCm;
        }

        return (column, (column.StoredCm - before) / net);
    }

    private static double HeadAt(RichardsColumn column, double depthCm, double atCm)
    {
        var place = (atCm / (depthCm / column.HeadCm.Length)) - 0.5;
        var i = (int)Math.Floor(place);
        return column.HeadCm[i] + ((place - i) * (column.HeadCm[i + 1] - column.HeadCm[i]));
    }

    private static double FrontCm(RichardsColumn column, double depthCm, double water)
    {
        var thickness = depthCm / column.HeadCm.Length;
        for (var i = 1; i < column.HeadCm.Length; i++)
        {
            if (column.WaterContent(i) < water)
            {
                var above = column.WaterContent(i - 1);
                return thickness * (i - 0.5 + ((above - water) / (above - column.WaterContent(i))));
            }
        }

        return depthCm;
    }
}
