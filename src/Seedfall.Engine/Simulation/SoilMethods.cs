using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// Daily mean soil temperature at 5 cm by each of the product's methods, side by side. The product is a linear correction
/// of the column by what the regression looks at.
/// </summary>
public static class SoilMethods
{
    /// <summary>Number of features of the product: those of the regression and the column's answer.</summary>
    public static int ProductFeatureCount => RegressionFeatures.Names.Count + 1;

    /// <summary>
    /// Features of the product's linear model for every day, row by row, <see cref="ProductFeatureCount"/> each: the
    /// regression's, then the column's answer for reference ground.
    /// </summary>
    /// <param name="days">Ascending days, completed by <see cref="DayEstimates"/>.</param>
    /// <param name="place">Where.</param>
    /// <param name="climate">Its usual year.</param>
    /// <param name="columnC">The column's daily means, one per day.</param>
    public static double[] ProductFeatures(IReadOnlyList<WeatherDay> days, Place place, PlaceClimate climate, ReadOnlySpan<double> columnC)
    {
        var width = ProductFeatureCount;
        var features = new RegressionFeatures(climate, place.LatitudeDeg);
        var rows = new double[days.Count * width];
        for (var d = 0; d < days.Count; d++)
        {
            features.Next(days[d], rows.AsSpan(d * width, width - 1));
            rows[(d * width) + width - 1] = columnC[d];
        }

        return rows;
    }

    /// <summary>Every method for reference ground, one value per day, degC.</summary>
    /// <param name="days">Ascending days as measured.</param>
    /// <param name="place">Where.</param>
    /// <param name="climate">Its usual year.</param>
    /// <param name="inputs">Which fitted models to use.</param>
    /// <param name="constants">Fitted numbers.</param>
    public static SoilMethodValues At5Cm(IReadOnlyList<WeatherDay> days, Place place, PlaceClimate climate, InputSet inputs, SoilHeatConstants constants)
    {
        var complete = DayEstimates.Complete(days, climate, place, constants.Estimates);
        var column = ColumnRun.DailyMeanC(complete, place, climate, SoilTempSite.Reference, constants.Column);
        var rows = ProductFeatures(complete, place, climate, column);
        var models = constants.For(inputs);
        var regression = new double[days.Count];
        var product = new double[days.Count];
        for (var d = 0; d < regression.Length; d++)
        {
            var row = rows.AsSpan(d * ProductFeatureCount, ProductFeatureCount);
            regression[d] = models.Regression.At(row[..^1]);
            product[d] = models.RegressionIsBetter ? regression[d] : models.Product.At(row);
        }

        return new SoilMethodValues(complete, column, regression, product);
    }
}

/// <summary>Daily means at 5 cm by method, degC, aligned to the days.</summary>
/// <param name="CompleteDays">The days with what was not measured estimated.</param>
/// <param name="ColumnC">The calibrated heat column alone.</param>
/// <param name="RegressionC">The pooled regression alone.</param>
/// <param name="ProductC">What a plan uses: the two together, or the regression where it does better alone.</param>
public sealed record SoilMethodValues(WeatherDay[] CompleteDays, double[] ColumnC, double[] RegressionC, double[] ProductC);
