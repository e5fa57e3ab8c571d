using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>The marker put up on a treated lawn, and how it must stand.</summary>
/// <param name="Big">Its large words, line by line.</param>
/// <param name="Small">What stands below them.</param>
/// <param name="WidthInches">Width it is printed at, in.</param>
/// <param name="HeightInches">Height it is printed at, in.</param>
/// <param name="LetterInches">Height of the large capitals, in.</param>
/// <param name="Steps">How it is put up and when it comes down.</param>
/// <param name="UseOwnForm">True where the state prescribes the whole sign: this one then does not serve.</param>
/// <param name="Source">Where the sizes come from.</param>
public sealed record LawnFlag(
    IReadOnlyList<string> Big,
    IReadOnlyList<string> Small,
    double WidthInches,
    double HeightInches,
    double LetterInches,
    IReadOnlyList<string> Steps,
    bool UseOwnForm,
    string Source)
{
    /// <summary>Least height of large capitals where none was read: the strictest read elsewhere, in.</summary>
    private const double UsualLetterInches = 0.375;

    /// <summary>The marker of one application.</summary>
    public static LawnFlag Of(Lawn lawn, LogEntry.Applied entry, RulePack pack)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(pack);
        var rule = pack.LawnFlag;
        return new(
            Words(rule),
            [
                $"Treated {RecordText.When(entry)}",
                $"{entry.What.Product} ({RecordText.Kind(entry.What.Kind)})",
                $"Keep off until: {entry.What.Reentry ?? CustomerNotice.UsualReentry}",
                "Ask: ______________________________",
            ],
            Math.Max(5.0, rule?.LeastWidthInches ?? 0.0),
            Math.Max(4.0, rule?.LeastHeightInches ?? 0.0),
            Math.Max(UsualLetterInches, rule?.LeastLetterInches ?? 0.0),
            rule is null ? Unruled : Ruled(rule),
            rule?.FormPrescribed == true,
            rule?.Source ?? "no rule of this state was read: sizes that meet those of Indiana (357 IAC 1-5-2) and New York (Environmental Conservation Law 33-1003)");
    }

    private static IReadOnlyList<string> Words(LawnFlagRule? rule) => rule switch
    {
        { Words: { Count: > 0 } prescribed } => prescribed,
        _ => ["LAWN TREATED", "DO NOT ENTER", "LEAVE SIGN UP", rule?.UntilNextDay == true ? "UNTIL TOMORROW" : FormattableString.Invariant($"{rule?.StandHours ?? 24.0:0} HOURS")],
    };

    private static IReadOnlyList<string> Unruled { get; } =
    [
        "What the state asks was not entered: ask its pesticide office before the first job for pay.",
        "Where nothing is asked: bottom edge 14 to 18 in above the ground, seen plainly from every way onto the lawn, left up 24 hours.",
    ];

    private static IReadOnlyList<string> Ruled(LawnFlagRule rule) =>
    [
        .. rule.FormPrescribed ? ["The state prescribes the whole sign with its picture: put up theirs. What follows is how it must stand."] : Array.Empty<string>(),
        FormattableString.Invariant($"At least {rule.LeastHeightInches:0.##} by {rule.LeastWidthInches:0.##} in{(rule.LeastLetterInches is { } letter ? FormattableString.Invariant($", letters at least {letter:0.###} in high") : "")}. Check the print with a ruler: printed smaller, it does not count."),
        $"Bottom edge {rule.Above}.",
        .. rule.Make is { } make ? [make] : Array.Empty<string>(),
        .. rule.Where is { } where ? [where] : Array.Empty<string>(),
        $"{char.ToUpperInvariant(rule.Down[0])}{rule.Down[1..]}.",
        .. rule.Neighbors is { } neighbors ? [$"Neighbors: {neighbors}"] : Array.Empty<string>(),
    ];
}
