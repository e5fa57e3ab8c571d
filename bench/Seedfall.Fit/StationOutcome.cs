using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>One scored day of the product.</summary>
internal readonly record struct ScoredDay(DateOnly Date, double ComputedC, double MeasuredC);

/// <summary>Everything scored on one station left out of the fit, for one input set.</summary>
internal sealed record StationOutcome(
    string Station,
    bool Humid,
    IReadOnlyDictionary<string, ErrorTally> Methods,
    IReadOnlyDictionary<double, IReadOnlyList<SeasonCrossing>> Crossings,
    ErrorTally WithoutReadings,
    ErrorTally WithReadings,
    IReadOnlyDictionary<int, IReadOnlyList<CrossingForecast>> ForecastsByIssueMonth,
    IReadOnlyList<ScoredDay> Days)
{
    /// <summary>Months on whose first day crossing dates are forecast.</summary>
    internal static IReadOnlyList<int> IssueMonths { get; } = [8, 9];

    /// <summary>Thresholds reported, degF.</summary>
    internal static IReadOnlyList<double> ThresholdsF { get; } = [70.0, 65.0, 60.0, 55.0, 50.0];

    /// <summary>Rain over reference evapotranspiration from which a station counts as humid, as ln.</summary>
    private const double HumidAridityLog = -0.5;

    internal static StationOutcome Of(WeatherHistory station, SoilHeatConstants constants, InputSet inputs)
    {
        var trial = StationTrial.Of(station, constants, inputs, []) ?? throw new InvalidDataException($"{station.StationName}: nothing to score");
        var crossings = ThresholdsF.ToDictionary(f => f, f => CrossingScore.Seasons(trial.Days, trial.Methods.ProductC, trial.Use, trial.Place.LatitudeDeg, (f - 32.0) / 1.8));
        var (without, with) = (new ErrorTally(), new ErrorTally());
        ReadingScore.Add(trial.Days, trial.Methods.ProductC, trial.Use, trial.Place.LatitudeDeg, without, with);
        var humid = PlaceClimate.FromHistory(station.Days, trial.Place).AridityLog > HumidAridityLog;
        var forecasts = IssueMonths.ToDictionary(
            m => m,
            m => inputs == InputSet.Full ? CrossingForecast.Of(station, constants, crossings, m, 1) : []);
        IReadOnlyList<ScoredDay> days = [.. trial.Days.Select((d, i) => (Day: d, i)).Where(x => trial.Use[x.i]).Select(x => new ScoredDay(x.Day.Date, trial.Methods.ProductC[x.i], x.Day.Soil5CmC!.Value))];
        return new StationOutcome(station.StationName, humid, SoilValidation.Tallies(trial), crossings, without, with, forecasts, days);
    }
}
