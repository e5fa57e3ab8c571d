using System.Globalization;

namespace Seedfall.Exchange.Calendar;

/// <summary>
/// A calendar handed out again: entries that stayed the same keep their stamp and number, changed ones count up, and work no
/// longer planned is marked as cancelled, so that whoever imported the earlier file can follow.
/// </summary>
internal static class CalendarRevision
{
    private const string Begin = "BEGIN:VEVENT";
    private const string End = "END:VEVENT";

    /// <summary>The fresh calendar with numbers and stamps carried over from the earlier one.</summary>
    /// <param name="fresh">The calendar as written for the first time, number 0.</param>
    /// <param name="earlier">The file handed out before; what is not an entry of ours in it is ignored.</param>
    /// <param name="prefix">What our entries' ids begin with.</param>
    /// <param name="stamp">The fresh calendar's instant as iCalendar writes it.</param>
    internal static string Of(string fresh, string earlier, string prefix, string stamp)
    {
        var before = Entries(earlier).Where(e => e.Uid.StartsWith(prefix, StringComparison.Ordinal)).GroupBy(e => e.Uid).ToDictionary(g => g.Key, g => g.First());
        var lines = new List<string>();
        var taken = new HashSet<string>();
        foreach (var part in Parts(fresh))
        {
            if (part.Uid.Length == 0)
            {
                lines.AddRange(part.Lines);
                continue;
            }

            taken.Add(part.Uid);
            lines.AddRange(before.TryGetValue(part.Uid, out var old) ? Renumbered(part, old, stamp) : part.Lines);
        }

        var withdrawn = before.Values.Where(e => !taken.Contains(e.Uid)).SelectMany(e => Cancelled(e, stamp));
        lines.InsertRange(lines.LastIndexOf("END:VCALENDAR"), withdrawn);
        return Folding.Fold(string.Join("\r\n", lines));
    }

    private static IReadOnlyList<string> Renumbered(Entry fresh, Entry old, string stamp) =>
        fresh.Meaning.SequenceEqual(old.Meaning) ? old.Lines : [.. fresh.Lines.Select(l => Line(l, old.Sequence + 1, stamp))];

    private static IReadOnlyList<string> Cancelled(Entry old, string stamp) => old.Lines.Contains("STATUS:CANCELLED")
        ? old.Lines
        : [.. WithoutAlarms(old.Lines).Select(l => l.StartsWith("STATUS:", StringComparison.Ordinal) ? "STATUS:CANCELLED" : Line(l, old.Sequence + 1, stamp))];

    private static string Line(string line, int sequence, string stamp) =>
        line.StartsWith("SEQUENCE:", StringComparison.Ordinal) ? FormattableString.Invariant($"SEQUENCE:{sequence}")
        : line.StartsWith("DTSTAMP:", StringComparison.Ordinal) ? $"DTSTAMP:{stamp}"
        : line;

    private static IEnumerable<string> WithoutAlarms(IReadOnlyList<string> lines)
    {
        var inside = false;
        foreach (var line in lines)
        {
            inside |= line == "BEGIN:VALARM";
            if (!inside)
            {
                yield return line;
            }

            inside &= line != "END:VALARM";
        }
    }

    private static IEnumerable<Entry> Entries(string text) => Parts(text).Where(p => p.Uid.Length > 0);

    /// <summary>The entries, and the stretches of lines around them, in order.</summary>
    private static IEnumerable<Entry> Parts(string text)
    {
        var part = new List<string>();
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            if (line == Begin)
            {
                yield return new Entry("", part);
                part = [];
            }

            part.Add(line);
            if (line == End)
            {
                yield return new Entry(part.Find(l => l.StartsWith("UID:", StringComparison.Ordinal))?[4..] ?? "", part);
                part = [];
            }
        }

        yield return new Entry("", part);
    }

    private sealed record Entry(string Uid, IReadOnlyList<string> Lines)
    {
        public int Sequence => Lines.FirstOrDefault(l => l.StartsWith("SEQUENCE:", StringComparison.Ordinal)) is { } line
            && int.TryParse(line.AsSpan(9), NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n < int.MaxValue ? n : 0;

        /// <summary>Everything but number and stamp.</summary>
        public IEnumerable<string> Meaning => Lines.Where(l => !l.StartsWith("SEQUENCE:", StringComparison.Ordinal) && !l.StartsWith("DTSTAMP:", StringComparison.Ordinal));
    }
}
