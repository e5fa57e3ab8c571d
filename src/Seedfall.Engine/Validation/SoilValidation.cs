using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>Scores daily mean soil temperature at 5 cm against measuring stations, with constants as given and nothing refitted.</summary>
public static class SoilValidation
{
    /// <summary>
    /// Scores each station and pools all days. Every history needs its position and at least one measured soil day in
    /// season to count; a station without is listed with a note.
    /// </summary>
    /// <param name="stations">Weather with measured soil temperature.</param>
    /// <param name="constants">Fitted numbers; <see cref="SoilHeatConstants.Shipped"/> for the product as it is.</param>
    /// <param name="inputs">Extremes to hide measured mean, sun and humidity; null to use what each station has.</param>
    public static SoilScoreReport Score(IReadOnlyList<WeatherHistory> stations, SoilHeatConstants constants, InputSet? inputs = null)
    {
        var pooled = NewTallies();
        var scores = new List<SoilScore>();
        foreach (var station in stations)
        {
            var notes = new List<string>();
            var tallies = StationTrial.Of(station, constants, inputs, notes) is { } trial ? Tallies(trial) : NewTallies();
            foreach (var (method, tally) in tallies)
            {
                pooled[method].Add(tally);
            }

            scores.Add(new SoilScore(station.StationName, Summaries(tallies), notes));
        }

        return new SoilScoreReport(scores, new SoilScore("pooled", Summaries(pooled), []));
    }

    /// <summary>Errors of every method at one station.</summary>
    public static IReadOnlyDictionary<string, ErrorTally> Tallies(StationTrial trial)
    {
        var tallies = NewTallies();
        Add(tallies, trial);
        return tallies;
    }

    /// <summary>The day as a plain thermometer-and-rain station would report it.</summary>
    public static WeatherDay OnlyExtremes(WeatherDay day) => new(day.Date, day.TmaxC, day.TminC, day.RainMm) { Soil5CmC = day.Soil5CmC };

    private static void Add(Dictionary<string, ErrorTally> tallies, StationTrial trial)
    {
        var (days, use, methods) = (trial.Days, trial.Use, trial.Methods);
        var air = SoilBaselines.Air7(days);
        var climatology = SoilBaselines.ClimatologyOfOtherYears(days, use);
        for (var d = 0; d < days.Count; d++)
        {
            if (!use[d])
            {
                continue;
            }

            var observed = days[d].Soil5CmC!.Value;
            tallies[SoilScoreMethods.Column].Add(methods.ColumnC[d], observed);
            tallies[SoilScoreMethods.Product].Add(methods.ProductC[d], observed);
            tallies[SoilScoreMethods.Regression].Add(methods.RegressionC[d], observed);
            tallies[SoilScoreMethods.Air7].Add(air[d], observed);
            if (climatology[d] is { } usual)
            {
                tallies[SoilScoreMethods.Climatology].Add(usual, observed);
            }
        }
    }

    private static Dictionary<string, ErrorTally> NewTallies() => SoilScoreMethods.All.ToDictionary(m => m, _ => new ErrorTally());

    private static Dictionary<string, ErrorSummary> Summaries(IReadOnlyDictionary<string, ErrorTally> tallies) => SoilScoreMethods.All
        .Where(m => tallies[m].Summary() is not null)
        .ToDictionary(m => m, m => tallies[m].Summary()!);
}
