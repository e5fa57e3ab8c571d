using Seedfall.Planning.Judgment;
using Seedfall.Planning.Water;

namespace Seedfall.Web.Features.Plan;

/// <summary>Verdicts and proofs in the words of the trade.</summary>
internal static class Words
{
    public static string Of(VerdictKind kind) => kind switch
    {
        VerdictKind.Recover => "Recover",
        VerdictKind.StartOver => "Start over",
        VerdictKind.Wait => "Wait",
        VerdictKind.CureFirst => "Cure first",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a verdict"),
    };

    /// <summary>The verdict's sentence after its word, which often opens it.</summary>
    public static string Rest(Verdict verdict)
    {
        var word = Of(verdict.Kind);
        return verdict.Sentence.StartsWith(word, StringComparison.Ordinal) ? verdict.Sentence[word.Length..] : ": " + verdict.Sentence;
    }

    /// <summary>Style class: red is kept for stop.</summary>
    public static string Class(VerdictKind kind) => kind is VerdictKind.Recover or VerdictKind.StartOver ? "on" : "stop";

    public static string Of(ProofResult result) => result switch
    {
        ProofResult.Holds => "Water proven",
        ProofResult.Refused => "Water short",
        ProofResult.Assumed => "Water assumed",
        ProofResult.NotProven => "Water not proven",
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "is not a proof"),
    };
}
