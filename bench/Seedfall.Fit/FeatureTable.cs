using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>One scored day: features and the measured daily mean at 5 cm.</summary>
internal readonly record struct ScoredRow(DateOnly Date, double[] Features, double SoilC);

/// <summary>Scored days of one station and their ridge sums.</summary>
internal sealed class FeatureTable
{
    internal FeatureTable(WeatherHistory station, IReadOnlyList<ScoredRow> rows, int features)
    {
        (Station, Rows, Sums) = (station, rows, new RidgeFit(features));
        foreach (var row in rows)
        {
            Sums.Add(row.Features, row.SoilC);
        }
    }

    internal WeatherHistory Station { get; }

    internal IReadOnlyList<ScoredRow> Rows { get; }

    internal RidgeFit Sums { get; }

    /// <summary>August to November days with a measured soil temperature.</summary>
    internal static FeatureTable Regression(WeatherHistory station, InputSet inputs)
    {
        var climate = PlaceClimate.FromHistory(station.Days, station.Station!);
        var state = new RegressionFeatures(inputs, climate, station.Station!.LatitudeDeg);
        var rows = new List<ScoredRow>();
        foreach (var day in station.Days)
        {
            var values = new double[RegressionFeatures.Names.Count];
            state.Next(day, values);
            if (day is { Soil5CmC: { } soil, Date.Month: >= 8 and <= 11 })
            {
                rows.Add(new ScoredRow(day.Date, values, soil));
            }
        }

        return new FeatureTable(station, rows, RegressionFeatures.Names.Count);
    }
}
