using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Correction;

/// <summary>Soil temperature before and after the field had its say; both are kept so that the gain can be shown.</summary>
/// <param name="Uncorrected">As computed from weather alone.</param>
/// <param name="DailyMeanC">Corrected daily mean at 5 cm, degC, one per day.</param>
/// <param name="Bias">What the readings taught.</param>
/// <param name="Problems">Readings refused, each with the reason; empty where none.</param>
public sealed record CorrectedSoil(
    SoilTemperatureSeries Uncorrected,
    double[] DailyMeanC,
    SoilBias Bias,
    IReadOnlyList<string> Problems)
{
    /// <summary>
    /// Shifts a soil temperature series by what thermometer readings say. Each is compared with the model at its own hour
    /// and depth; days before the first reading stay as they are.
    /// </summary>
    /// <param name="series">From <see cref="SoilTemperature"/>, for the same place and site.</param>
    /// <param name="place">Where.</param>
    /// <param name="site">The ground.</param>
    /// <param name="readings">Readings in any order; those on days without weather are refused with a reason.</param>
    /// <param name="constants">Fitted numbers.</param>
    public static CorrectedSoil From(
        SoilTemperatureSeries series, Place place, SoilTempSite site, IReadOnlyList<ProbeReading> readings, SoilHeatConstants constants) =>
        From(series, place, site, [.. readings.Select(reading => (reading, site))], constants);

    /// <summary>The same with readings from ground of different kinds: each is compared with the model for its own.</summary>
    /// <param name="series">From <see cref="SoilTemperature"/>.</param>
    /// <param name="place">Where.</param>
    /// <param name="site">The ground of the series.</param>
    /// <param name="readings">Readings in any order, each with the ground it was taken in.</param>
    /// <param name="constants">Fitted numbers.</param>
    public static CorrectedSoil From(
        SoilTemperatureSeries series, Place place, SoilTempSite site, IReadOnlyList<(ProbeReading Reading, SoilTempSite Site)> readings, SoilHeatConstants constants)
    {
        var shift = Shift(series, place, site, constants);
        var problems = new List<string>();
        var pairs = new List<(DateOnly Date, double ReadC, double ModelC)>();
        foreach (var there in readings.Where(r => Usable(r.Reading, problems)).GroupBy(r => r.Site, r => r.Reading))
        {
            var usable = there.ToList();
            var modeled = ModelAt(series, place, shift, there.Key, usable, constants);
            for (var i = 0; i < usable.Count; i++)
            {
                if (modeled[i] is { } model)
                {
                    pairs.Add((usable[i].Date, usable[i].Read.Celsius, model));
                }
                else
                {
                    problems.Add($"reading of {usable[i].Date:yyyy-MM-dd}: no weather for that day");
                }
            }
        }

        var bias = SoilBias.From(pairs);
        var corrected = series.Days.Select((day, d) => series.DailyMeanC[d] + bias.AtC(day.Date)).ToArray();
        return new CorrectedSoil(series, corrected, bias, problems);
    }

    private static bool Usable(ProbeReading reading, List<string> problems)
    {
        if (reading.Problem() is { } problem)
        {
            problems.Add($"reading of {reading.Date:yyyy-MM-dd}: {problem}");
            return false;
        }

        return true;
    }

    /// <summary>The model at hour and depth: the column there, moved by what the product differs from the column that day.</summary>
    private static double?[] ModelAt(
        SoilTemperatureSeries series, Place place, double[] shift, SoilTempSite site, List<ProbeReading> readings, SoilHeatConstants constants)
    {
        var days = DayEstimates.Complete(series.Days, series.Climate, place, constants.Estimates);
        var column = ColumnRun.DailyMeanC(days, place, series.Climate, site, constants.Column);
        var byDay = series.Days.Select((day, d) => (day.Date, Mean: column[d] + shift[d], Shift: shift[d])).ToDictionary(d => d.Date);
        var moments = readings.Select(r => new SoilMoment(r.Date, r.Hour ?? 12.0, r.Depth.Millimeters / 1000.0)).ToList();
        var hourly = ColumnRun.AtHourC(days, place, series.Climate, site, constants.Column, moments);
        return [.. readings.Select((reading, i) => !byDay.TryGetValue(reading.Date, out var day) ? (double?)null
            : reading.Hour is null ? day.Mean
            : hourly[i] + day.Shift)];
    }

    /// <summary>What the series lies off the bare column of its own ground, by day, degC.</summary>
    private static double[] Shift(SoilTemperatureSeries series, Place place, SoilTempSite site, SoilHeatConstants constants)
    {
        var days = DayEstimates.Complete(series.Days, series.Climate, place, constants.Estimates);
        var column = ColumnRun.DailyMeanC(days, place, series.Climate, site, constants.Column);
        return [.. column.Select((c, d) => series.DailyMeanC[d] - c)];
    }
}
