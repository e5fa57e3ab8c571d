using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Regression;

namespace Seedfall.Fit;

/// <summary>Ridge fits of the regression and of the product for given estimates and column numbers.</summary>
internal sealed class ProductFit
{
    internal const double Ridge = 30.0;

    private readonly RidgeFit _regression = new(RegressionFeatures.Names.Count);
    private readonly RidgeFit _product = new(SoilMethods.ProductFeatureCount);

    internal ProductFit(IEnumerable<StationWeather> stations, DayEstimateModels estimates, HeatParameters column)
    {
        foreach (var station in stations)
        {
            Add(station, estimates, column);
        }
    }

    internal LinearModel Regression => _regression.Solve(Ridge);

    internal LinearModel Product => _product.Solve(Ridge);

    private void Add(StationWeather station, DayEstimateModels estimates, HeatParameters parameters)
    {
        var days = DayEstimates.Complete(station.Days, station.Climate, station.Place, estimates);
        var column = ColumnRun.DailyMeanC(days, station.Place, station.Climate, SoilTempSite.Reference, parameters);
        var rows = SoilMethods.ProductFeatures(days, station.Place, station.Climate, column);
        for (var d = 0; d < days.Length; d++)
        {
            if (StationWeather.Scored(days[d]))
            {
                var row = rows.AsSpan(d * SoilMethods.ProductFeatureCount, SoilMethods.ProductFeatureCount);
                _regression.Add(row[..^1], days[d].Soil5CmC!.Value);
                _product.Add(row, days[d].Soil5CmC!.Value);
            }
        }
    }
}
