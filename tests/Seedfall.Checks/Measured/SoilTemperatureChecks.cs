using Seedfall.Checks.Published;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Weather;

namespace Seedfall.Checks.Measured;

/// <summary>
/// Soil temperature against stations of the U.S. Climate Reference Network (public domain; Diamond et al. 2013, Bell et al.
/// 2013). The bars for stations left out of the fit are held on the figures the fit script wrote; the shipped constants are
/// scored again here on three stations, so that code and constants cannot drift apart.
/// </summary>
public sealed class SoilTemperatureChecks
{
    private static readonly string[] Sample = ["KY_Versailles_3_NNW", "NY_Ithaca_13_E", "CO_Nunn_7_NNE"];

    [Fact]
    public void OnStationsLeftOutTheProductMeetsItsBars()
    {
        var (full, extremes) = (SoilHeatConstants.Shipped.Full.LeftOut, SoilHeatConstants.Shipped.Extremes.LeftOut);
        Assert.True(full[SoilScoreMethods.Product].Rmse <= 1.35);
        Assert.True(full[SoilScoreMethods.Product].Rmse <= full[SoilScoreMethods.Regression].Rmse);
        Assert.True(extremes[SoilScoreMethods.Product].Rmse <= full[SoilScoreMethods.Product].Rmse + 0.08);
        Assert.True(Math.Abs(full[SoilScoreMethods.Product].Bias) <= 0.3);
        Assert.Equal(20, SoilHeatConstants.Shipped.Stations.Count);
    }

    [Fact]
    public void ShippedConstantsScoreAsTheyDidWhenFitted()
    {
        var folder = Data.Path("uscrn_daily");
        var stations = StationFolders.Read(folder).Where(s => Sample.Contains(s.Name)).Select(s => s.History!).ToList();
        var report = SoilValidation.Score(stations, SoilHeatConstants.Shipped);
        Assert.Equal(3, report.Stations.Count);
        Assert.All(report.Stations, s => Assert.True(s.Methods[SoilScoreMethods.Product].N > 1400));
        Assert.True(report.Pooled.Methods[SoilScoreMethods.Product].Rmse <= 0.95);
        Assert.True(report.Pooled.Methods[SoilScoreMethods.Column].Rmse <= 1.10);
        Assert.True(report.Pooled.Methods[SoilScoreMethods.Product].Rmse < report.Pooled.Methods[SoilScoreMethods.Air7].Rmse);

        var plain = SoilValidation.Score(stations, SoilHeatConstants.Shipped, InputSet.Extremes);
        Assert.True(plain.Pooled.Methods[SoilScoreMethods.Product].Rmse <= report.Pooled.Methods[SoilScoreMethods.Product].Rmse + 0.15);
    }

    [Fact]
    public void WithoutElevationsTheScoresHardlyMove()
    {
        var folder = Data.Path("uscrn_daily");
        var stations = StationFolders.Read(folder).Where(s => s.Name == Sample[0]).Select(s => s.History!).ToList();
        var moved = stations.Select(s => s with { Station = s.Station! with { ElevationM = 0.0 } }).ToList();
        var there = SoilValidation.Score(stations, SoilHeatConstants.Shipped).Pooled.Methods[SoilScoreMethods.Product].Rmse;
        Assert.Equal(there, SoilValidation.Score(moved, SoilHeatConstants.Shipped).Pooled.Methods[SoilScoreMethods.Product].Rmse, 0.02);
    }
}
