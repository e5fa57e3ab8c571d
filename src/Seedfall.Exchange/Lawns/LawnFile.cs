using System.Diagnostics.CodeAnalysis;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

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
/// refused; nothing is half-read.
/// </summary>
public static class LawnFile
{
    /// <summary>Reads a lawn from UTF-8 JSON and holds it against the rules every lawn must keep.</summary>
    /// <param name="utf8">The file's bytes, at most 16 MB.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="tables">Where given, rule pack and species are looked up in it.</param>
    public static LawnReadResult Read(ReadOnlySpan<byte> utf8, string name, TradeTables? tables = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        var problems = new ProblemList(name);
        var tree = JsonTree.Read(utf8, problems);
        if (tree is null || !LawnFormat.One.TryRead(tree, problems, out var lawn))
        {
            return LawnReadResult.Refused(problems.All);
        }

        foreach (var problem in LawnRules.Problems(lawn, tables))
        {
            var at = tree.Nearest(problem.Path);
            problems.Add(problem.Path, at.Line, at.Column, problem.Expected, problem.Found);
        }

        return problems.Any ? LawnReadResult.Refused(problems.All) : LawnReadResult.Read(lawn);
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
