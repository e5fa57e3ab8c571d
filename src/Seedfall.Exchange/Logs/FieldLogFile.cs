using System.Diagnostics.CodeAnalysis;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Logs;

/// <summary>Either a field log, or the problems that kept it from being read.</summary>
public sealed record FieldLogResult(FieldLog? Log, IReadOnlyList<JsonProblem> Problems)
{
    /// <summary>True where the file was read.</summary>
    [MemberNotNullWhen(true, nameof(Log))]
    public bool IsRead => Log is not null;
}

/// <summary>log.json: what was written in the field about one lawn, see docs/using/files.md. Read whole or refused.</summary>
public static class FieldLogFile
{
    /// <summary>Reads a log from UTF-8 JSON.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="lawn">The lawn it is of: entries are held against its patches.</param>
    public static FieldLogResult Read(ReadOnlySpan<byte> utf8, string name, Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        var problems = new ProblemList(name);
        var tree = JsonTree.Read(utf8, problems);
        if (tree is null || !LogFormat.One.TryRead(tree, problems, out var page))
        {
            return new(null, problems.All);
        }

        if (page.LawnId != lawn.Id)
        {
            var at = tree.Nearest("lawn");
            problems.Add("lawn", at.Line, at.Column, $"the log of {lawn.Id}", page.LawnId);
        }

        var log = FieldLog.Of(page.Entries);
        foreach (var (entry, i) in page.Entries.Select((e, i) => (e, i)))
        {
            var path = $"entries[{i}]";
            var at = tree.Nearest(path);
            foreach (var problem in LogRules.Problems(lawn, entry).Concat(LogRules.ProblemsIn(log, entry)))
            {
                problems.Add(path, at.Line, at.Column, "an entry that can stand", problem);
            }
        }

        return problems.Any ? new(null, problems.All) : new(log, []);
    }

    /// <summary>The log as UTF-8 JSON; reading it gives the same entries back.</summary>
    public static byte[] Write(string lawnId, FieldLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return JsonText.Bytes(LogFormat.One, new LogPage(lawnId, log.Entries));
    }

    /// <summary>One entry as UTF-8 JSON, as a database keeps it.</summary>
    public static byte[] WriteEntry(LogEntry entry) => JsonText.Bytes(LogEntryFormat.One, entry);

    /// <summary>One entry from UTF-8 JSON; throws where it cannot be read, which a stored one always can.</summary>
    public static LogEntry ReadEntry(ReadOnlySpan<byte> utf8)
    {
        var problems = new ProblemList("entry");
        return JsonTree.Read(utf8, problems) is { } tree && LogEntryFormat.One.TryRead(tree, problems, out var entry)
            ? entry
            : throw new InvalidDataException(string.Join("; ", problems.All));
    }

    /// <summary>The published JSON Schema of the file.</summary>
    public static string Schema() => SchemaBook.Text("A field log for Seedfall", "What was seen and done on one lawn, append-only.", LogFormat.One);
}
