using System.Diagnostics.CodeAnalysis;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Plans;

/// <summary>Either a plan, or the problems that kept it from being read.</summary>
public sealed record PlanReadResult
{
    /// <summary>The plan; null where the file was refused.</summary>
    public RecoveryPlan? Plan { get; private init; }

    /// <summary>Why the file was refused; empty where it was read.</summary>
    public IReadOnlyList<JsonProblem> Problems { get; private init; } = [];

    /// <summary>True where the file was read.</summary>
    [MemberNotNullWhen(true, nameof(Plan))]
    public bool IsRead => Plan is not null;

    internal static PlanReadResult Read(RecoveryPlan plan) => new() { Plan = plan };

    internal static PlanReadResult Refused(IReadOnlyList<JsonProblem> problems) => new() { Problems = problems };
}

/// <summary>plan.json: the whole plan as data. Each figure stands with its value in a canonical unit, as shown in both unit systems, and with its working.</summary>
public static class PlanJson
{
    /// <summary>The plan as UTF-8 JSON; the same plan gives the same bytes.</summary>
    public static byte[] Write(RecoveryPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return JsonText.Bytes(new PlanFormats(plan.Currency).Plan, plan);
    }

    /// <summary>Reads a plan back; a file whose shown texts do not follow from its values is refused.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="name">Name of the file, for messages.</param>
    public static PlanReadResult Read(ReadOnlySpan<byte> utf8, string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var problems = new ProblemList(name);
        var tree = JsonTree.Read(utf8, problems);
        return tree is not null && new PlanFormats(Currency(tree)).Plan.TryRead(tree, problems, out var plan)
            ? PlanReadResult.Read(plan)
            : PlanReadResult.Refused(problems.All);
    }

    /// <summary>The published JSON Schema of the file.</summary>
    public static string Schema() => SchemaBook.Text(
        "A recovery plan by Seedfall",
        "The whole recovery plan of one lawn in one season. Every figure carries its value in a canonical unit, both shown texts and its working.",
        new PlanFormats("USD").Plan);

    private static string Currency(JsonSpot tree) =>
        tree.Members.Find(m => m.Key == "currency").Value is { Kind: JsonSpotKind.Text } currency ? currency.Text : "USD";
}
