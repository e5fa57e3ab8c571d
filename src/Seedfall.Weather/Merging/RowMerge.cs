namespace Seedfall.Weather.Merging;

/// <summary>
/// One row for each day (or hour). The same row twice is noted; rows that complete each other are joined; rows that
/// contradict each other are refused with both their places.
/// </summary>
internal static class RowMerge
{
    /// <summary>Sorts and joins in place; returns how many rows were there twice.</summary>
    internal static int Join(List<Row> rows, IReadOnlyList<FileDraft> files, ProblemList problems)
    {
        if (!IsAscending(rows))
        {
            rows.Sort(Compare);
        }

        var (kept, twice) = (0, 0);
        var all = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(rows);
        for (var i = 1; i < all.Length; i++)
        {
            if (all[i].Day != all[kept].Day || all[i].Hour != all[kept].Hour)
            {
                all[++kept] = all[i];
            }
            else
            {
                twice++;
                Complete(ref all[kept], all[i], files, problems);
            }
        }

        rows.RemoveRange(Math.Min(kept + 1, rows.Count), Math.Max(0, rows.Count - kept - 1));
        return twice;
    }

    /// <summary>Takes from the second row what the first lacks, and nothing else.</summary>
    /// <returns>True where something was taken.</returns>
    internal static bool TakeMissing(ref Row first, in Row second)
    {
        var took = false;
        for (var e = 0; e < Elements.Count; e++)
        {
            if (!first.Has((Element)e) && second.Has((Element)e))
            {
                first.Set((Element)e, second[(Element)e]);
                took = true;
            }
        }

        return took;
    }

    private static bool IsAscending(List<Row> rows)
    {
        for (var i = 1; i < rows.Count; i++)
        {
            if (Compare(rows[i - 1], rows[i]) > 0)
            {
                return false;
            }
        }

        return true;
    }

    private static int Compare(Row a, Row b)
    {
        var byTime = (a.Day, a.Hour).CompareTo((b.Day, b.Hour));
        return byTime != 0 ? byTime : (a.File, a.Line).CompareTo((b.File, b.Line));
    }

    private static void Complete(ref Row first, in Row second, IReadOnlyList<FileDraft> files, ProblemList problems)
    {
        for (var i = 0; i < Elements.Count; i++)
        {
            var e = (Element)i;
            if (first.Has(e) && second.Has(e) && Math.Abs(first[e] - second[e]) > 1e-9)
            {
                var other = FormattableString.Invariant($"{files[first.File].Name}:{first.Line}");
                problems.Add(
                    files[second.File], second.Line, files[second.File].ColumnOf[i],
                    FormattableString.Invariant($"{Elements.Name(e)} of {DateOnly.FromDayNumber(first.Day):yyyy-MM-dd} as at {other}, {first[e]:0.###} {Elements.Unit(e)}"),
                    FormattableString.Invariant($"{second[e]:0.###} {Elements.Unit(e)}"));
                return;
            }
        }

        TakeMissing(ref first, second);
    }
}
