using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Tests.Water.Coverage;

/// <summary>
/// Endless square grids of full circles. The values were computed apart from this code by summing the classic profiles over one square
/// of the grid; no printed table of them was read. The uniform disc at 1.2 throws by counting 90,000 points.
/// </summary>
public sealed class SquareGridTests
{
    private const double ThrowM = 10.0;

    private const double Within = 0.005;

    public static TheoryData<SprayProfile, double, double, double> Known => new()
    {
        { new SprayProfile.Triangular(), 1.0, 0.964, 0.950 },
        { new SprayProfile.Parabolic(), 1.0, 0.903, 0.859 },
        { new SprayProfile.Elliptic(), 1.0, 0.855, 0.798 },
        { new SprayProfile.Uniform(), 1.0, 0.828, 0.733 },
        { new SprayProfile.Triangular(), 1.2, 0.905, 0.847 },
        { new SprayProfile.Parabolic(), 1.2, 0.928, 0.897 },
        { new SprayProfile.Elliptic(), 1.2, 0.877, 0.770 },
        { new SprayProfile.Uniform(), 1.2, 0.763, 0.697 },
    };

    [Theory]
    [MemberData(nameof(Known), DisableDiscoveryEnumeration = true)]
    public void UniformityOfClassicProfiles(SprayProfile profile, double spacingOverThrow, double christiansen, double lowQuarter)
    {
        var depths = UnitSquare(profile, spacingOverThrow * ThrowM);
        Assert.Equal(christiansen, WaterUniformity.Christiansen(depths)!.Value, Within);
        Assert.Equal(lowQuarter, WaterUniformity.LowQuarter(depths)!.Value, Within);
    }

    [Fact]
    public void TheDriestPointOfHeadToHeadTriangles() =>
        Assert.Equal(1.0 / 0.928, WaterUniformity.SchedulingCoefficient(UnitSquare(new SprayProfile.Triangular(), ThrowM))!.Value, 0.01);

    [Fact]
    public void ALegThatFallsInAStraightLineIsTheTriangle() =>
        Assert.Equal(
            WaterUniformity.Christiansen(UnitSquare(new SprayProfile.Triangular(), ThrowM))!.Value,
            WaterUniformity.Christiansen(UnitSquare(new SprayProfile.Leg([4.0, 3.0, 2.0, 1.0, 0.0]), ThrowM))!.Value,
            1e-9);

    private static Depth[] UnitSquare(SprayProfile profile, double spacingM)
    {
        const int Cells = 100;
        SprayPattern[] patterns = [.. Enumerable.Range(-1, 4).SelectMany(i => Enumerable.Range(-1, 4), (i, j) => new SprayPattern(
            new CoverageHead(new GroundPoint(i * spacingM, j * spacingM), Length.FromMeters(ThrowM), FlowRate.FromLitersPerMinute(10.0), profile), SprayWind.Still))];
        return [.. Enumerable.Range(0, Cells * Cells).Select(c => new GroundPoint(((c % Cells) + 0.5) / Cells * spacingM, ((c / Cells) + 0.5) / Cells * spacingM))
            .Select(point => Depth.FromMillimeters(patterns.Sum(p => p.RateMmh(point))))];
    }
}
