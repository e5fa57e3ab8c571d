using Seedfall.Checks.Published;
using Seedfall.Checks.Published.Trade;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation.Watering;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;
using Seedfall.Weather;

namespace Seedfall.Checks.Measured;

/// <summary>The daily watering plan beside fixed rounds and the least water, in the weather of two measuring stations: one wet, one dry.</summary>
public sealed class WateringChecks
{
    private static readonly string[] Sample = ["IL_Champaign_9_SW", "ND_Medora_7_E"];

    [Fact]
    public void TheDailyPlanKeepsItsBarsOnEverySoil()
    {
        var folder = Data.Path("uscrn_daily");
        var stations = StationFolders.Read(folder).Where(s => Sample.Contains(s.Name)).Select(s => s.History!).ToList();
        var reports = WateringValidation.Score(stations, WateringScenes.All(TradeData.Tables), ChoiceScenes.UsualDay, SoilHeatConstants.Shipped);
        Assert.Equal(["sand", "loam", "clay"], reports.Select(r => r.Soil));
        foreach (var pooled in reports.Select(r => r.Pooled!))
        {
            Assert.Equal(20, pooled.Seasons);
            Assert.True(pooled.NoDrier);
            Assert.True(pooled.SavesThreeTenths);
            Assert.True(pooled.NearLeast);
            Assert.Equal(0.0, pooled.Ways[WateringWays.Least].ShortHours);
            Assert.True(pooled.Ways[WateringWays.LeastDry].WaterMm <= pooled.Ways[WateringWays.Least].WaterMm);
            Assert.True(pooled.Ways[WateringWays.Daily].UpShare >= pooled.Ways[WateringWays.Textbook].UpShare - 0.05);
        }
    }
}
