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
            var tallies = Tallies(station, constants, inputs, notes);
            foreach (var (method, tally) in tallies)
            {
                pooled[method].Add(tally);
            }

            scores.Add(new SoilScore(station.StationName, Summaries(tallies), notes));
        }

        return new SoilScoreReport(scores, new SoilScore("pooled", Summaries(pooled), []));
    }

    /// <summary>Errors of every method at one station.</summary>
    public static IReadOnlyDictionary<string, ErrorTally> Tallies(WeatherHistory station, SoilHeatConstants constants, InputSet? inputs, ICollection<string> notes)
    {
        var tallies = NewTallies();
        if (station.Station is not { } place || station.Days.Count == 0)
        {
            notes.Add("not scored: the files give no position or no days");
            return tallies;
        }

        var use = MeasuredSoil.ScoredDays(station.Days, place.LatitudeDeg, out var stuck);
        if (stuck > 0)
        {
            notes.Add($"{stuck} days left out: the soil probe stood at one value for {MeasuredSoil.StuckDays} days or more");
        }

        if (!use.Contains(true))
        {
            notes.Add("not scored: no measured soil temperature in season");
            return tallies;
        }

        Add(tallies, station.Days, use, Methods(station.Days, place, constants, inputs));
        return tallies;
    }

    private static SoilMethodValues Methods(IReadOnlyList<WeatherDay> days, Place place, SoilHeatConstants constants, InputSet? inputs)
    {
        var given = inputs == InputSet.Extremes ? [.. days.Select(OnlyExtremes)] : days;
        return SoilMethods.At5Cm(given, place, PlaceClimate.FromHistory(given, place), inputs ?? InputSets.Of(given), constants);
    }

    /// <summary>The day as a plain thermometer-and-rain station would report it.</summary>
    public static WeatherDay OnlyExtremes(WeatherDay day) => new(day.Date, day.TmaxC, day.TminC, day.RainMm) { Soil5CmC = day.Soil5CmC };

    private static void Add(Dictionary<string, ErrorTally> tallies, IReadOnlyList<WeatherDay> days, bool[] use, SoilMethodValues methods)
    {
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
