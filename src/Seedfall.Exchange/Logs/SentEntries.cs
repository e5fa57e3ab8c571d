using Seedfall.Exchange.Json;
using Seedfall.Planning.Field;

namespace Seedfall.Exchange.Logs;

/// <summary>One entry of a delivery: read, or why it could not be.</summary>
/// <param name="Id">Its id as sent, to answer it by; null where none could be read.</param>
/// <param name="Entry">Null where it could not be read.</param>
/// <param name="Problems">Each in one sentence; empty where it was read.</param>
public sealed record SentEntry(string? Id, LogEntry? Entry, IReadOnlyList<string> Problems);

/// <summary>What a phone sends: one entry of the log format, or a list of them. Each is read by itself, so that one that is wrong keeps no other out.</summary>
public static class SentEntries
{
    /// <summary>Entries in one delivery.</summary>
    public const int Most = 200;

    /// <summary>Null where the whole is no JSON of an entry or a list; <paramref name="problem"/> then says why.</summary>
    public static IReadOnlyList<SentEntry>? Read(ReadOnlySpan<byte> utf8, out string problem)
    {
        var problems = new ProblemList("sent");
        if (JsonTree.Read(utf8, problems) is not { } tree)
        {
            problem = problems.All[0].ToString();
            return null;
        }

        IReadOnlyList<JsonSpot> spots = tree.Kind switch { JsonSpotKind.Array => tree.Items, JsonSpotKind.Object => [tree], _ => [] };
        problem = spots.Count == 0 ? "an entry or a list of entries is needed" : spots.Count > Most ? FormattableString.Invariant($"at most {Most} entries are taken at once") : "";
        return problem.Length > 0 ? null : [.. spots.Select(One)];
    }

    private static SentEntry One(JsonSpot spot)
    {
        var problems = new ProblemList("sent");
        var id = spot.Members.FirstOrDefault(m => m.Key == "id").Value is { Kind: JsonSpotKind.Text } text ? text.Text : null;
        return LogEntryFormat.One.TryRead(spot, problems, out var entry)
            ? new(id, entry, [])
            : new(id, null, [.. problems.All.Select(p => $"{(p.Path.Length == 0 ? "" : $"{p.Path}: ")}expected {p.Expected}, found {p.Found}")]);
    }
}
