using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Regression;

namespace Seedfall.Fit;

/// <summary>Ridge fits of clearness, mean temperature and dew point on what a plain station measures, May to November.</summary>
internal sealed class EstimateFit
{
    private const double Ridge = 100.0;
    private const double ClearShare = 0.75;

    private readonly Dictionary<string, RidgeFit[]> _byStation = [];

    internal EstimateFit(IEnumerable<StationWeather> fullStations)
    {
        foreach (var station in fullStations)
        {
            _byStation[station.Name] = Sums(station);
        }
    }

    /// <summary>The models from every station but one; null for all.</summary>
    internal DayEstimateModels Without(string? station) => new(Solve(0, station), Solve(1, station), Solve(2, station));

    private LinearModel Solve(int target, string? without)
    {
        var sums = new RidgeFit(DayEstimates.FeatureNames.Count);
        foreach (var (name, fits) in _byStation)
        {
            if (name != without)
            {
                sums.Add(fits[target]);
            }
        }

        return sums.Solve(Ridge);
    }

    private static RidgeFit[] Sums(StationWeather station)
    {
        var count = DayEstimates.FeatureNames.Count;
        RidgeFit[] fits = [new(count), new(count), new(count)];
        var features = new double[count];
        for (var d = 0; d < station.Days.Count; d++)
        {
            var day = station.Days[d];
            if (day.Date.Month is < 5 or > 11)
            {
                continue;
            }

            DayEstimates.Features(station.Days, d, station.Climate, station.Place, features);
            if (day.SolarMJ is { } sun)
            {
                fits[0].Add(features, sun / (ClearShare * SolarGeometry.ExtraterrestrialDailyMJ(station.Place.LatitudeDeg, day.Date.DayOfYear)));
            }

            if (day.MeanC is { } mean)
            {
                fits[1].Add(features, mean - day.MidC);
            }

            if (ActualVapor.RouteFor(day) != VaporRoute.LowestTemperature)
            {
                fits[2].Add(features, day.TminC - Humidity.DewPointCore(Math.Max(0.05, ActualVapor.ForDayKPa(day))));
            }
        }

        return fits;
    }
}
