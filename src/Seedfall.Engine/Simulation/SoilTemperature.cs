using System.Globalization;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation;

/// <summary>Soil temperature under turf from daily weather: what a plan uses.</summary>
public static class SoilTemperature
{
    /// <summary>Name of the shipped method in <see cref="FittedModels.LeftOut"/> and in validation tables.</summary>
    public const string ProductName = SoilScoreMethods.Product;

    /// <summary>
    /// Daily mean at 5 cm for every day given. The usual year of the place is taken from the same days, so give the
    /// whole history where there is one.
    /// </summary>
    /// <param name="days">Days in ascending order, at least one; gaps are carried across. Throws where they do not ascend.</param>
    /// <param name="place">Where.</param>
    /// <param name="site">The ground; <see cref="SoilTempSite.Reference"/> for station-like ground.</param>
    public static SoilTemperatureSeries DailyMeanAt5Cm(IReadOnlyList<WeatherDay> days, Place place, SoilTempSite site) =>
        DailyMeanAt5Cm(days, place, site, PlaceClimate.FromHistory(days, place), InputSets.Of(days), SoilHeatConstants.Shipped);

    /// <summary>The same with the usual year, the input set and the constants given.</summary>
    public static SoilTemperatureSeries DailyMeanAt5Cm(
        IReadOnlyList<WeatherDay> days, Place place, SoilTempSite site, PlaceClimate climate, InputSet inputs, SoilHeatConstants constants)
    {
        ArgumentNullException.ThrowIfNull(site);
        RequireAscending(days);
        var methods = SoilMethods.At5Cm(days, place, climate, inputs, constants);
        var values = site == SoilTempSite.Reference ? methods.ProductC : AtSite(methods, place, climate, site, constants);
        var models = constants.For(inputs);
        var method = models.RegressionIsBetter ? SoilMethod.Regression : SoilMethod.ColumnAndRegression;
        var errors = models.LeftOut[method == SoilMethod.Regression ? SoilScoreMethods.Regression : ProductName];
        return new SoilTemperatureSeries(days, values, climate, method, inputs, errors, Statement(method, errors, inputs, constants), Assumptions(climate, inputs));
    }

    /// <summary>The product at reference ground, moved by what the column says this ground differs.</summary>
    private static double[] AtSite(SoilMethodValues methods, Place place, PlaceClimate climate, SoilTempSite site, SoilHeatConstants constants)
    {
        var here = ColumnRun.DailyMeanC(methods.CompleteDays, place, climate, site, constants.Column);
        for (var d = 0; d < here.Length; d++)
        {
            here[d] += methods.ProductC[d] - methods.ColumnC[d];
        }

        return here;
    }

    private static string Statement(SoilMethod method, ErrorSummary errors, InputSet inputs, SoilHeatConstants constants)
    {
        var from = inputs == InputSet.Full ? "measured mean temperature and sun" : "daily highs, lows and rain";
        var by = method == SoilMethod.Regression ? "pooled regression, which did better alone than with the heat column" : "a heat column corrected by regression";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Soil temperature at 2 in by {by}, from {from}; off by {errors.Rmse * 1.8:F1} degF (root mean square) at {constants.Stations.Count} measuring stations it was not fitted to, August to November.");
    }

    private static IReadOnlyList<string> Assumptions(PlaceClimate climate, InputSet inputs)
    {
        var assumptions = new List<string>();
        if (climate.Assumed)
        {
            assumptions.Add($"Only {climate.MonthsKnown} months of the year are in the weather history: the rest of the usual year is judged from latitude, elevation and those months, so the soil temperature is somewhat less sure than stated.");
        }

        if (inputs == InputSet.Extremes)
        {
            assumptions.Add("No measured sun, humidity or mean temperature: they are estimated from the high, the low and the rain.");
        }

        return assumptions;
    }

    private static void RequireAscending(IReadOnlyList<WeatherDay> days)
    {
        if (days.Count == 0)
        {
            throw new ArgumentException("at least one day is needed", nameof(days));
        }

        for (var i = 1; i < days.Count; i++)
        {
            if (days[i].Date <= days[i - 1].Date)
            {
                throw new ArgumentException($"days must ascend: {days[i].Date:yyyy-MM-dd} follows {days[i - 1].Date:yyyy-MM-dd}", nameof(days));
            }
        }
    }
}
