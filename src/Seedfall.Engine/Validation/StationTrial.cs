using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>One station with every method's answer beside what was measured.</summary>
/// <param name="Place">Where.</param>
/// <param name="Days">Its days as measured.</param>
/// <param name="Use">Which of them are scored.</param>
/// <param name="Methods">Answers, aligned to the days.</param>
public sealed record StationTrial(Place Place, IReadOnlyList<WeatherDay> Days, bool[] Use, SoilMethodValues Methods)
{
    /// <summary>Runs every method; null, with a note, where the station cannot be scored.</summary>
    public static StationTrial? Of(WeatherHistory station, SoilHeatConstants constants, InputSet? inputs, ICollection<string> notes)
    {
        if (station.Station is not { } place || station.Days.Count == 0)
        {
            notes.Add("not scored: the files give no position or no days");
            return null;
        }

        var use = MeasuredSoil.ScoredDays(station.Days, place.LatitudeDeg, out var stuck);
        if (stuck > 0)
        {
            var runs = MeasuredSoil.StuckRuns(station.Days).Select(run => FormattableString.Invariant(
                $"{run.ValueC:0.##} degC from {station.Days[run.First].Date:yyyy-MM-dd} to {station.Days[run.Last].Date:yyyy-MM-dd}"));
            notes.Add($"{stuck} days left out: the soil probe stood at one value for {MeasuredSoil.StuckDays} days or more ({string.Join("; ", runs)})");
        }

        if (!use.Contains(true))
        {
            notes.Add("not scored: no measured soil temperature in season");
            return null;
        }

        var given = inputs == InputSet.Extremes ? [.. station.Days.Select(SoilValidation.OnlyExtremes)] : station.Days;
        var methods = SoilMethods.At5Cm(given, place, PlaceClimate.FromHistory(given, place), inputs ?? InputSets.Of(given), constants);
        return new StationTrial(place, station.Days, use, methods);
    }
}
