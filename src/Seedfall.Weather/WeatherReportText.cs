using System.Globalization;

namespace Seedfall.Weather;

/// <summary>The report as plain lines for a terminal.</summary>
public static class WeatherReportText
{
    /// <summary>Lines of at most about 110 characters, no trailing blanks.</summary>
    public static IReadOnlyList<string> Lines(WeatherReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var lines = new List<string> { $"Station  {report.StationName}", $"Place    {Place(report.Position)}", Days(report), string.Empty, "Files" };
        lines.AddRange(report.Files.Select(f => Invariant($"  {f.Name}  {f.Format}, {f.Records} records")));
        Section(lines, "Columns", report.Columns.Select(c => Invariant($"  {c.Name,-26} {c.Days,6} days  {c.Unit} ({c.UnitSource})")));
        Section(lines, "Years", Years(report.Years));
        Section(lines, "Gaps", Gaps(report.Gaps));
        Section(lines, "Will be assumed", report.Assumptions.Select(a => "  " + a));
        Section(lines, "Notes", report.Notes.Select(n => "  " + n));
        return lines;
    }

    private static string Days(WeatherReport r) =>
        Invariant($"Days     {r.DayCount} from {r.FirstDay:yyyy-MM-dd} to {r.LastDay:yyyy-MM-dd}, {r.FilledCount} of them filled");

    private static string Place(StationPosition? p)
    {
        if (p is null)
        {
            return "not in the files";
        }

        var elevation = p.ElevationM is { } m ? Invariant($"{m:0.#} m") : "elevation not in the files";
        var distance = p.LawnDistanceKm is { } km ? Invariant($", {km:0.#} km from the lawn") : string.Empty;
        return Invariant($"{p.LatitudeDeg:0.####}, {p.LongitudeDeg:0.####}, {elevation}{distance}");
    }

    /// <summary>A line a year; complete years in a row share one.</summary>
    private static IEnumerable<string> Years(IReadOnlyList<WeatherYear> years)
    {
        for (var i = 0; i < years.Count;)
        {
            var end = i;
            while (end < years.Count && years[end].Missing == 0)
            {
                end++;
            }

            if (end > i + 1)
            {
                yield return Invariant($"  {years[i].Year} to {years[end - 1].Year}  complete, {years.Skip(i).Take(end - i).Sum(y => y.Filled)} days filled");
                i = end;
            }
            else
            {
                yield return Year(years[i++]);
            }
        }
    }

    private static string Year(WeatherYear y)
    {
        var missing = y.Missing == 0 ? "complete" : Invariant($"{y.Missing} missing, longest run {y.LongestMissingRun}");
        return Invariant($"  {y.Year}  {y.Days,3} days, {y.Filled} filled, {missing}");
    }

    private static IEnumerable<string> Gaps(IReadOnlyList<WeatherGap> gaps)
    {
        foreach (var g in gaps.Where(g => !g.Filled))
        {
            yield return Invariant($"  {g.First:yyyy-MM-dd} to {g.Last:yyyy-MM-dd}  {g.Days} days, {Lacks(g.Kind)}: left out");
        }

        var filled = gaps.Where(g => g.Filled).ToList();
        if (filled.Count > 0)
        {
            yield return Invariant($"  {filled.Count} short gaps ({filled.Sum(g => g.Days)} days) filled: temperatures in a straight line, rain 0");
        }
    }

    private static string Lacks(GapKind kind) => kind switch
    {
        GapKind.NoRows => "nothing recorded",
        GapKind.Temperature => "no temperature",
        _ => "no rain reading",
    };

    private static void Section(List<string> lines, string title, IEnumerable<string> body)
    {
        var all = body.ToList();
        if (all.Count > 0)
        {
            lines.Add(string.Empty);
            lines.Add(title);
            lines.AddRange(all);
        }
    }

    private static string Invariant(FormattableString s) => s.ToString(CultureInfo.InvariantCulture);
}
