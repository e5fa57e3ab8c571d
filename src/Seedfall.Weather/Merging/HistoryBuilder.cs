namespace Seedfall.Weather.Merging;

/// <summary>The files together: one station, one row a day, gaps filled, the report written.</summary>
internal static class HistoryBuilder
{
    internal static WeatherReadResult Build(
        IReadOnlyList<FileDraft> drafts, IReadOnlyList<WeatherFile> entries, IReadOnlyList<string> passedOver, WeatherReadOptions options)
    {
        var problems = new ProblemList();
        var station = StationCheck.Check(drafts, problems);
        foreach (var draft in drafts)
        {
            RangeCheck.Clean(draft, problems);
        }

        var notes = new List<string>();
        if (!problems.IsEmpty)
        {
            return WeatherReadResult.Refused(problems.All());
        }

        var rows = DayRows(drafts, problems, notes);
        if (!problems.IsEmpty)
        {
            return WeatherReadResult.Refused(problems.All());
        }

        RowTidying.Tidy(rows, notes);
        var filled = GapFill.Fill(rows);
        if (filled.Days.Length == 0)
        {
            return WeatherReadResult.Refused([new FileProblem(drafts[0].Name, 0, 0, "at least one day with highest and lowest temperature and rain", Lacks(rows))]);
        }

        notes.AddRange(drafts.SelectMany(d => d.AllNotes().Select(n => drafts.Count == 1 ? n : $"{d.Name}: {n}")));
        notes.AddRange(Oddities.Find(filled.Days, drafts));
        notes.AddRange(passedOver.Select(name => $"{name}: passed over, not a weather file known here"));
        return ReportBuilder.Build(station, drafts, entries, filled, notes, options);
    }

    private static List<Row> DayRows(IReadOnlyList<FileDraft> drafts, ProblemList problems, List<string> notes)
    {
        var daily = drafts.Where(d => !d.IsHourly).SelectMany(d => d.Rows).ToList();
        var twice = RowMerge.Join(daily, drafts, problems);
        if (twice > 0)
        {
            notes.Add(FormattableString.Invariant($"{twice} days stand in the files more than once with the same values; each is used once."));
        }

        return drafts.Any(d => d.IsHourly) ? WithHours(daily, drafts, problems, notes) : daily;
    }

    private static List<Row> WithHours(List<Row> daily, IReadOnlyList<FileDraft> drafts, ProblemList problems, List<string> notes)
    {
        var hours = drafts.Where(d => d.IsHourly).SelectMany(d => d.Rows).ToList();
        var twice = RowMerge.Join(hours, drafts, problems);
        if (twice > 0)
        {
            notes.Add(FormattableString.Invariant($"{twice} hours stand in the files more than once with the same values; each is used once."));
        }

        var folded = HourFold.ToDays(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(hours));
        notes.Add(FormattableString.Invariant($"Days were made from hours; a quantity needs {HourFold.HoursNeeded} of a day's 24 hours."));
        return daily.Count == 0 ? folded : DailyFirst(daily, folded, notes);
    }

    /// <summary>The daily product where there is one; the days made from hours fill what it lacks.</summary>
    private static List<Row> DailyFirst(List<Row> daily, List<Row> folded, List<string> notes)
    {
        var byDay = folded.ToDictionary(r => r.Day);
        var completed = 0;
        for (var i = 0; i < daily.Count; i++)
        {
            if (byDay.Remove(daily[i].Day, out var hours))
            {
                var row = daily[i];
                completed += RowMerge.TakeMissing(ref row, hours) ? 1 : 0;
                daily[i] = row;
            }
        }

        notes.Add(FormattableString.Invariant($"Daily rows go before days made from hours; the hours completed {completed} days and added {byDay.Count}."));
        daily.AddRange(byDay.Values);
        daily.Sort((a, b) => a.Day.CompareTo(b.Day));
        return daily;
    }

    private static string Lacks(List<Row> rows)
    {
        var missing = new[] { Element.TmaxC, Element.TminC, Element.RainMm }.Where(e => !rows.Exists(r => r.Has(e))).Select(Elements.Name).ToList();
        return missing.Count > 0 ? "no " + string.Join(", no ", missing) : "none on which all three are present";
    }
}
