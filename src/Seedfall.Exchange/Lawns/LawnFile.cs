using System.Diagnostics.CodeAnalysis;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>Either a lawn, or the problems that kept it from being read; never half of each.</summary>
public sealed record LawnReadResult
{
    /// <summary>The lawn; null where the file was refused.</summary>
    public Lawn? Lawn { get; private init; }

    /// <summary>Why the file was refused; empty where it was read.</summary>
    public IReadOnlyList<JsonProblem> Problems { get; private init; } = [];

    /// <summary>True where the file was read.</summary>
    [MemberNotNullWhen(true, nameof(Lawn))]
    public bool IsRead => Lawn is not null;

    internal static LawnReadResult Read(Lawn lawn) => new() { Lawn = lawn };

    internal static LawnReadResult Refused(IReadOnlyList<JsonProblem> problems) => new() { Problems = problems };
}

/// <summary>
/// lawn.json: one lawn as a file, see docs/using/files.md. Quantities are texts with a unit; what is not in the schema is
/// refused; nothing is half-read. Whether the figures make sense for a lawn is judged afterwards by the trade's own rules.
/// </summary>
public static class LawnFile
{
    /// <summary>Reads a lawn from UTF-8 JSON.</summary>
    /// <param name="utf8">The file's bytes, at most 16 MB.</param>
    /// <param name="name">Name of the file, for messages.</param>
    public static LawnReadResult Read(ReadOnlySpan<byte> utf8, string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var problems = new ProblemList(name);
        var tree = JsonTree.Read(utf8, problems);
        return tree is not null && LawnFormat.One.TryRead(tree, problems, out var lawn)
            ? LawnReadResult.Read(lawn)
            : LawnReadResult.Refused(problems.All);
    }

    /// <summary>The lawn as UTF-8 JSON with line ends of one byte; reading it gives the same lawn back.</summary>
    public static byte[] Write(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        return JsonText.Bytes(LawnFormat.One, lawn);
    }

    /// <summary>The published JSON Schema of the file.</summary>
    public static string Schema() => SchemaBook.Text(
        "A lawn for Seedfall",
        "One property's turf as taken on. Only place, one patch and its grass are required; every other gap becomes a named assumption on the plan.",
        LawnFormat.One);
}
