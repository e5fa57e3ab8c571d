using System.Globalization;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Calendar;

/// <summary>A week's watering as an iCalendar file, written as the season's is: one entry a run.</summary>
public static class WateringCalendar
{
    /// <summary>The calendar as text. A later one counts higher, so that a calendar taking it in sees what moved.</summary>
    /// <param name="plan">The plan of the season.</param>
    /// <param name="watering">Today and the days after.</param>
    /// <param name="stamp">The instant the file is made.</param>
    public static string Write(RecoveryPlan plan, LawnWatering watering, DateTimeOffset stamp)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(watering);
        return SeasonCalendar.Write(plan with { Tasks = [.. watering.Week.SelectMany(day => day.Runs.Select((run, i) => Task(day, run, i + 1)))] }, stamp, (int)(stamp.ToUnixTimeSeconds() / 60));
    }

    private static PlanTask Task(TapDay day, TapRun run, int number) => new()
    {
        Id = string.Create(CultureInfo.InvariantCulture, $"water.{day.Day:yyyyMMdd}.{number}"),
        Kind = TaskKind.Water,
        Title = string.Create(CultureInfo.InvariantCulture, $"Water, {run.SetName}, {run.AllMinutes} min"),
        Date = day.Day,
        LastDate = day.Day,
        Start = run.Start,
        Minutes = run.AllMinutes,
        Steps =
        [
            string.Create(CultureInfo.InvariantCulture, $"{run.Minutes} min{(run.Positions > 1 ? $" in each of {run.Positions} positions" : "")}: {string.Join(", ", run.PatchNames)}."),
            .. day.Forecast ? Array.Empty<string>() : ["Reckoned with usual weather of the date, no rain: look at the plan that morning."],
        ],
    };
}
