using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>Everything fitted without one station (estimates, column, regression, product), so that it can be scored on that station.</summary>
internal sealed class LeftOutFit
{
    /// <summary>Soil probes began in 2009; two years before warm the usual year and the deep soil.</summary>
    private const int FirstYear = 2007;

    private readonly DateOnly _date;
    private readonly List<StationWeather> _full;
    private readonly List<StationWeather> _extremes;
    private readonly EstimateFit _estimates;
    private readonly Func<string?, HeatParameters> _column;

    internal LeftOutFit(IReadOnlyList<WeatherHistory> histories, DateOnly date, int everyYears, int iterations, HeatParameters? keptColumn)
    {
        _date = date;
        _full = [.. histories.Select(h => StationWeather.Of(h, InputSet.Full, FirstYear))];
        _extremes = [.. histories.Select(h => StationWeather.Of(h, InputSet.Extremes, FirstYear))];
        _estimates = new EstimateFit(_full);
        var fit = keptColumn is null ? new ColumnFit(_full.Concat(_extremes.Select(Estimated)), everyYears, iterations) : null;
        _column = station => keptColumn ?? fit!.Without(station);
    }

    /// <summary>A plain station's days with what it lacks estimated: the column must do well with both.</summary>
    private StationWeather Estimated(StationWeather station) => station with
    {
        Days = DayEstimates.Complete(station.Days, station.Climate, station.Place, _estimates.Without(station.Name)),
    };

    /// <summary>Constants fitted without a station; null for all stations. Error figures are empty.</summary>
    internal SoilHeatConstants Without(string? station)
    {
        var estimates = _estimates.Without(station);
        var column = _column(station);
        return new SoilHeatConstants
        {
            Fitted = _date,
            Script = "bench/Seedfall.Fit",
            Data = "U.S. Climate Reference Network daily01, daily mean soil temperature at 5 cm, August to November; errors in degC with each station left out of the fit in turn",
            Stations = [.. _full.Select(h => h.Name).Where(n => n != station)],
            Features = RegressionFeatures.Names,
            Estimates = estimates,
            Column = column,
            Full = Models(new ProductFit(_full.Where(s => s.Name != station), estimates, column)),
            Extremes = Models(new ProductFit(_extremes.Where(s => s.Name != station), estimates, column)),
        };
    }

    private static FittedModels Models(ProductFit fit) => new(fit.Regression, fit.Product, new Dictionary<string, ErrorSummary>());
}
