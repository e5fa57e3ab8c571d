namespace Seedfall.Planning.Field;

/// <summary>Records that each stand in the place of one and the same application, as two phones may have written them. Both stand until one is struck.</summary>
/// <param name="First">Id of the first record of that application; it may not have arrived yet.</param>
/// <param name="Rivals">The records that stand, two or more, in the order of the log.</param>
public sealed record CorrectionClash(Guid First, IReadOnlyList<LogEntry.Applied> Rivals);

/// <summary>
/// Which application stands in whose place. A record is replaced while any record that is not struck leads back to it, over one
/// correction or several; a struck correction leads on but holds nothing, so striking the last of a chain brings back the one before.
/// A link to an entry of another kind, to itself or round in a ring counts for nothing: what can not be sorted out stands.
/// The order of arrival plays no part.
/// </summary>
internal sealed class Corrections
{
    private readonly Dictionary<Guid, Guid> _links;
    private readonly HashSet<Guid> _struck;

    private Corrections(Dictionary<Guid, Guid> links, HashSet<Guid> struck) => (_links, _struck) = (links, struck);

    /// <summary>By id of the record replaced: ids of the live records that lead back to it.</summary>
    public Dictionary<Guid, List<Guid>> Replaced { get; } = [];

    public IReadOnlyList<CorrectionClash> Clashes { get; private set; } = [];

    /// <summary>The corrections among entries whose ids are all different.</summary>
    public static Corrections Among(IReadOnlyList<LogEntry> entries, HashSet<Guid> struck)
    {
        var found = new Corrections(Links(entries), struck);
        LogEntry.Applied[] live = [.. entries.OfType<LogEntry.Applied>().Where(entry => !struck.Contains(entry.Id))];
        foreach (var entry in live)
        {
            foreach (var earlier in found.Back(entry.Id))
            {
                (found.Replaced.TryGetValue(earlier, out var by) ? by : found.Replaced[earlier] = []).Add(entry.Id);
            }
        }

        found.Clashes =
        [
            .. live.Where(entry => !found.Replaced.ContainsKey(entry.Id))
                .GroupBy(entry => found.Back(entry.Id).LastOrDefault(entry.Id))
                .Where(rivals => rivals.Count() > 1)
                .Select(rivals => new CorrectionClash(rivals.Key, [.. rivals])),
        ];
        return found;
    }

    public bool Stands(LogEntry entry) => entry is not LogEntry.Struck && !_struck.Contains(entry.Id) && !Replaced.ContainsKey(entry.Id);

    /// <summary>The ids a record leads back to, nearest first, whether their entries have arrived or not.</summary>
    private IEnumerable<Guid> Back(Guid entry)
    {
        while (_links.TryGetValue(entry, out var earlier))
        {
            yield return earlier;
            entry = earlier;
        }
    }

    /// <summary>Which record each says it replaces, without the links that count for nothing.</summary>
    private static Dictionary<Guid, Guid> Links(IReadOnlyList<LogEntry> entries)
    {
        var others = entries.Where(entry => entry is not LogEntry.Applied).Select(entry => entry.Id).ToHashSet();
        var links = entries.OfType<LogEntry.Applied>()
            .Where(entry => entry.What.Replaces is { } earlier && !others.Contains(earlier))
            .ToDictionary(entry => entry.Id, entry => entry.What.Replaces!.Value);
        foreach (var ring in Rings(links))
        {
            links.Remove(ring);
        }

        return links;
    }

    /// <summary>Ids on a ring: a walk from one that comes upon its own path has found the ring, from there to the end.</summary>
    private static List<Guid> Rings(Dictionary<Guid, Guid> links)
    {
        var (rings, done) = (new List<Guid>(), new HashSet<Guid>());
        foreach (var from in links.Keys)
        {
            var path = new List<Guid>();
            var at = from;
            while (links.TryGetValue(at, out var next) && done.Add(at))
            {
                path.Add(at);
                at = next;
            }

            rings.AddRange(path.IndexOf(at) is >= 0 and var start ? path[start..] : []);
        }

        return rings;
    }
}
