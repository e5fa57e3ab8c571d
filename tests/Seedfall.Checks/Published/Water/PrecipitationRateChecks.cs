using Seedfall.Engine.Units;
using Seedfall.Planning.Water;

namespace Seedfall.Checks.Published.Water;

/// <summary>Precipitation rate by flow, by grid and by cans.</summary>
public sealed class PrecipitationRateChecks
{
    // University irrigation training slides: 8.0 gpm over 60 x 15 ft give 0.86 in/h.
    [Fact]
    public void EightGallonsOverNineHundredSquareFeet() => Assert.Equal(
        0.86, PrecipitationRateOf.Flow(FlowRate.FromGallonsPerMinute(8.0), Area.FromSquareFeet(60 * 15)).InchesPerHour, 0.005);

    // Same slides: 6 gpm heads 25 ft apart on triangles of 30 ft, 0.866 of it from row to row, give 0.89 in/h.
    [Fact]
    public void TriangularSpacing() => Assert.Equal(
        0.89, PrecipitationRateOf.Grid(FlowRate.FromGallonsPerMinute(6.0), Length.FromFeet(25.0), Length.FromFeet(30.0 * 0.866)).InchesPerHour, 0.005);

    // Same slides: 300 gallons in one hour on 20 x 20 ft are 1.20 in.
    [Fact]
    public void ThreeHundredGallonsAnHour() => Assert.Equal(
        1.20, PrecipitationRateOf.Flow(FlowRate.FromGallonsPerMinute(5.0), Area.FromSquareFeet(400.0)).InchesPerHour, 0.005);

    // 3.66 mL / (min x sq in): the constant is common practice, no source read; 20 mL in 10 min over 16.5 sq in.
    [Fact]
    public void CanByVolume()
    {
        var depth = PrecipitationRateOf.CaughtDepth(Volume.FromMilliliters(20.0), Area.FromSquareFeet(16.5 / 144.0));
        Assert.Equal(0.444, PrecipitationRateOf.Cans(new CatchCanTest([depth], 10.0)).InchesPerHour, 0.001);
    }

    // Arithmetic, not outside evidence: 1 in on 1,000 sq ft is 623.4 gal; 0.1 in x 3 x 14 days on 7,500 sq ft is 19,636 gal, 98.18 at 5 per 1,000 gal.
    [Fact]
    public void WaterOfAnInch()
    {
        var liters = Depth.FromInches(1.0).Millimeters * Area.FromSquareFeet(1000.0).SquareMeters;
        var seedbed = Depth.FromInches(0.1).Millimeters * 3 * 14 * Area.FromSquareFeet(7500.0).SquareMeters;

        Assert.Equal(623.4, new Volume(liters).Gallons, 0.05);
        Assert.Equal(19636.0, new Volume(seedbed).Gallons, 1.0);
        Assert.Equal(98.18, new Volume(seedbed).Gallons / 1000.0 * 5.0, 0.01);
    }
}
