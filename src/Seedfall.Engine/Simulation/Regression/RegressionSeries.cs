using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Regression;

/// <summary>The pooled regression over a run of days.</summary>
public static class RegressionSeries
{
    /// <summary>Daily mean at 5 cm, degC, one per day; days ascending.</summary>
    public static double[] DailyMeanC(IReadOnlyList<WeatherDay> days, Place place, PlaceClimate climate, InputSet inputs, LinearModel model)
    {
        var features = new RegressionFeatures(inputs, climate, place.LatitudeDeg);
        Span<double> row = stackalloc double[RegressionFeatures.Names.Count];
        var values = new double[days.Count];
        for (var d = 0; d < values.Length; d++)
        {
            features.Next(days[d], row);
            values[d] = model.At(row);
        }

        return values;
    }
}
