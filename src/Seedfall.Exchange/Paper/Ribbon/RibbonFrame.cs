using System.Globalization;
using System.Text;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;

namespace Seedfall.Exchange.Paper.Ribbon;

/// <summary>Measures of one drawing of the season ribbon: where a date lies across, where each panel lies down.</summary>
/// <param name="Wide">True for desk and print, false for the phone.</param>
/// <param name="From">First day drawn.</param>
/// <param name="To">Last day drawn.</param>
/// <param name="Lanes">Kinds of work that have a lane.</param>
public sealed record RibbonFrame(bool Wide, DateOnly From, DateOnly To, IReadOnlyList<RibbonLane> Lanes)
{
    public double Width => Wide ? 760.0 : 360.0;

    public double Left => Wide ? 78.0 : 68.0;

    public double Right => Width - (Wide ? 46.0 : 42.0);

    public double SoilTop => 50.0;

    public double SoilBottom => SoilTop + (Wide ? 124.0 : 170.0);

    public double ChanceTop => SoilBottom + (Wide ? 34.0 : 52.0);

    public double ChanceBottom => ChanceTop + (Wide ? 76.0 : 110.0);

    public double FrostTop => ChanceBottom + (Wide ? 32.0 : 50.0);

    public double FrostBottom => FrostTop + 36.0;

    public double PhaseTop => FrostBottom + 29.0;

    public double PhaseBottom => PhaseTop + 22.0;

    public double LaneTop => PhaseBottom + 12.0;

    private double LaneStep => Wide ? 18.0 : 21.0;

    public double LaneY(int lane) => LaneTop + (LaneStep * (lane + 0.5));

    public double Bottom => LaneTop + (LaneStep * Lanes.Count) + 4.0;

    public double Height => Bottom + 24.0;

    /// <summary>How far across a day lies, its middle.</summary>
    public double X(DateOnly date) => Left + ((Right - Left) * (date.DayNumber - From.DayNumber) / Math.Max(1, To.DayNumber - From.DayNumber));

    public bool Shows(DateOnly date) => date >= From && date <= To;

    public DateOnly Clamp(DateOnly date) => date < From ? From : date > To ? To : date;

    /// <summary>A chance 0 to 1 as height within a panel.</summary>
    public static double Up(double chance, double top, double bottom) => bottom - (Math.Clamp(chance, 0.0, 1.0) * (bottom - top));

    /// <summary>The firsts of the months drawn.</summary>
    public IEnumerable<DateOnly> Months()
    {
        for (var month = new DateOnly(From.Year, From.Month, 1); month <= To; month = month.AddMonths(1))
        {
            if (month >= From)
            {
                yield return month;
            }
        }
    }

    /// <summary>The frame of a season: the days the soil fan covers, else those of phases and tasks; null where nothing has a date.</summary>
    public static RibbonFrame? Of(SeasonTiming timing, IReadOnlyList<PlanTask> tasks, bool wide)
    {
        var dates = timing.SoilFan.Count > 0
            ? [.. timing.SoilFan.Select(d => d.Date)]
            : (List<DateOnly>)[.. timing.Phases.SelectMany(p => new[] { p.From, p.To }), .. tasks.SelectMany(t => new[] { t.Date, t.LastDate }), .. timing.Stand.Select(s => s.Date)];
        return dates.Count == 0 ? null : new RibbonFrame(wide, dates.Min(), dates.Max(), RibbonLane.Of(tasks));
    }

    /// <summary>A number as SVG writes it, to a tenth.</summary>
    public static string N(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A path of upright hatching lines, each from its top to its foot.</summary>
    public static string Hatch(IEnumerable<(double X, double Top, double Foot)> lines) =>
        string.Concat(lines.Select(l => $"M{N(l.X)} {N(l.Top)}V{N(l.Foot)}"));

    /// <summary>Points as SVG writes them.</summary>
    public static string Points(IEnumerable<(double X, double Y)> points)
    {
        var text = new StringBuilder();
        foreach (var (x, y) in points)
        {
            text.Append(text.Length > 0 ? " " : "").Append(N(x)).Append(',').Append(N(y));
        }

        return text.ToString();
    }

    /// <summary>Every item on the phone's and desk's grid: about one point for every 4 px.</summary>
    public IEnumerable<T> Thinned<T>(IReadOnlyList<T> days)
    {
        var step = Math.Max(1, (int)Math.Round(days.Count * 4.0 / (Right - Left)));
        return days.Where((_, i) => i % step == 0 || i == days.Count - 1);
    }
}

/// <summary>One lane of work on the ribbon.</summary>
public sealed record RibbonLane(string Name, string Class, IReadOnlyList<PlanTask> Tasks)
{
    private static readonly (string Name, string Class, TaskKind[] Kinds)[] All =
    [
        ("Prepare", "prepare", [TaskKind.Buy, TaskKind.Prepare]),
        ("Seed", "seed", [TaskKind.Seed, TaskKind.Cover]),
        ("Feed", "feed", [TaskKind.Feed]),
        ("Spray", "spray", [TaskKind.Spray]),
        ("Mow", "mow", [TaskKind.Mow]),
        ("Look", "look", [TaskKind.Look, TaskKind.Photo]),
    ];

    /// <summary>The lanes that have work; watering stands in the phases.</summary>
    public static IReadOnlyList<RibbonLane> Of(IReadOnlyList<PlanTask> tasks) =>
        [.. All.Select(l => new RibbonLane(l.Name, l.Class, [.. tasks.Where(t => l.Kinds.Contains(t.Kind))])).Where(l => l.Tasks.Count > 0)];
}
