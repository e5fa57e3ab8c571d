using System.Globalization;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Tables;

/// <summary>A week's watering as a table: one row a run of one set, in order of time.</summary>
public static class WateringCsv
{
    /// <summary>The table with a byte-order mark, so that spreadsheets read it as UTF-8. A day without water has a row without minutes.</summary>
    public static string Write(LawnWatering watering)
    {
        ArgumentNullException.ThrowIfNull(watering);
        var csv = new CsvText();
        foreach (var name in new[] { "day", "start", "set", "patches", "minutes_each_position", "positions", "minutes", "weather", "in_allowed_hours" })
        {
            csv.Cell(name);
        }

        csv.EndRow();
        foreach (var day in watering.Week)
        {
            var (date, weather) = (day.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), day.Forecast ? "known" : "usual");
            if (day.Runs.Count == 0)
            {
                csv.Cell(date).Cell("").Cell("").Cell("").Cell(0.0).Cell((double?)null).Cell(0.0).Cell(weather).Cell("").EndRow();
            }

            foreach (var run in day.Runs)
            {
                csv.Cell(date).Cell(run.Start.ToString("HH:mm", CultureInfo.InvariantCulture)).Cell(run.SetName).Cell(string.Join("; ", run.PatchNames))
                    .Cell(run.Minutes).Cell(run.Positions).Cell(run.AllMinutes).Cell(weather).Cell(run.Allowed ? "yes" : "no").EndRow();
            }
        }

        return csv.ToString();
    }
}
