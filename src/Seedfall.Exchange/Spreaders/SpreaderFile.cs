using System.Diagnostics.CodeAnalysis;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Exchange.Spreaders;

/// <summary>Either a spreader, or the problems that kept it from being read.</summary>
public sealed record SpreaderResult(KeptSpreader? Spreader, IReadOnlyList<JsonProblem> Problems)
{
    /// <summary>True where the file was read.</summary>
    [MemberNotNullWhen(true, nameof(Spreader))]
    public bool IsRead => Spreader is not null;
}

/// <summary>spreader.json: one spreader and all it was weighed in, see docs/using/spreader.md. Read whole or refused.</summary>
public static class SpreaderFile
{
    /// <summary>Reads a spreader from UTF-8 JSON.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="name">Name of the file, for messages.</param>
    public static SpreaderResult Read(ReadOnlySpan<byte> utf8, string name)
    {
        var problems = new ProblemList(name);
        var tree = JsonTree.Read(utf8, problems);
        if (tree is null || !SpreaderFormat.One.TryRead(tree, problems, out var page))
        {
            return new(null, problems.All);
        }

        var (scale, at) = (page.Scale, tree.Nearest("scale"));
        if (SpreaderScale.Fault(scale.Least, scale.Greatest, scale.Step, scale.Letters) is { } fault)
        {
            problems.Add("scale", at.Line, at.Column, fault, "this scale");
            return new(null, problems.All);
        }

        var spreader = page.Card with { Scale = new(scale.Least, scale.Greatest, scale.Step, scale.Letters), Entries = page.Entries };
        foreach (var (entry, i) in page.Entries.Select((e, i) => (e, i)))
        {
            var path = $"entries[{i}]";
            if (SpreaderRules.Problem(spreader.Scale, entry) is { } problem)
            {
                problems.Add(path, tree.Nearest(path).Line, tree.Nearest(path).Column, "an entry that can stand", problem);
            }
        }

        return problems.Any ? new(null, problems.All) : new(spreader, []);
    }

    /// <summary>The spreader as UTF-8 JSON; reading it gives the same back.</summary>
    public static byte[] Write(KeptSpreader spreader)
    {
        ArgumentNullException.ThrowIfNull(spreader);
        return JsonText.Bytes(SpreaderFormat.One, new SpreaderPage(spreader, new(spreader.Scale.Least, spreader.Scale.Greatest, spreader.Scale.Step, spreader.Scale.Letters), spreader.Entries));
    }

    /// <summary>One entry as UTF-8 JSON, as a database keeps it.</summary>
    public static byte[] WriteEntry(SpreaderEntry entry) => JsonText.Bytes(SpreaderEntryFormat.One, entry);

    /// <summary>One entry from UTF-8 JSON; throws where it cannot be read, which a stored one always can.</summary>
    public static SpreaderEntry ReadEntry(ReadOnlySpan<byte> utf8)
    {
        var problems = new ProblemList("entry");
        return JsonTree.Read(utf8, problems) is { } tree && SpreaderEntryFormat.One.TryRead(tree, problems, out var entry)
            ? entry
            : throw new InvalidDataException(string.Join("; ", problems.All));
    }

    /// <summary>The published JSON Schema of the file.</summary>
    public static string Schema() => SchemaBook.Text("A spreader for Seedfall", "One spreader and every run it was weighed in, append-only.", SpreaderFormat.One);
}
