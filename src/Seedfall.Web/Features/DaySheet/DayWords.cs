using System.Globalization;
using Seedfall.Planning.Field;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>Fixed words and addresses of the day sheet.</summary>
internal static class DayWords
{
    public static string Anchor(DayStep step) => $"do-{step.Id.Replace('.', '-')}";

    public static string Name(DayTool tool) => tool switch
    {
        DayTool.Spreader => "Find the spreader opening",
        DayTool.Pace => "Walk the pace",
        DayTool.Tank => "Tank mix",
        DayTool.SprayNow => "Judge the wind now",
        DayTool.SprayWindow => "Hours fit for spraying",
        _ => throw new ArgumentOutOfRangeException(nameof(tool), tool, "is no tool of the day sheet"),
    };

    public static string Address(DayTool tool) => tool switch
    {
        DayTool.Spreader => "spreader",
        DayTool.Pace => "sprayer/pace",
        DayTool.Tank => "tank",
        DayTool.SprayNow => "spray-window/now",
        DayTool.SprayWindow => "spray-window",
        _ => throw new ArgumentOutOfRangeException(nameof(tool), tool, "is no tool of the day sheet"),
    };

    /// <summary>Minutes as a clock shows them: <c>12:30</c>.</summary>
    public static string Clock(double minutes)
    {
        var seconds = (int)Math.Round(minutes * 60.0);
        return string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }

    /// <summary>Standing entries of the day that say what the record would.</summary>
    public static IReadOnlyList<LogEntry> Already(DayLawn day, DayRecord record) =>
    [
        .. day.Log.Standing.Where(e => e.Day == day.Date && e.PatchId == record.Entry.PatchId && (e, record.Entry) switch
        {
            (LogEntry.Note, _) => false,
            (LogEntry.Watered there, LogEntry.Watered asked) => there.Set == asked.Set,
            (LogEntry.Applied there, LogEntry.Applied asked) => there.What.Kind == asked.What.Kind && there.What.Product == asked.What.Product,
            _ => e.GetType() == record.Entry.GetType(),
        }),
    ];
}
