using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>One line of a notice.</summary>
/// <param name="Label">What it says.</param>
/// <param name="Text">Null where it is filled in by hand.</param>
public sealed record NoticeLine(string Label, string? Text);

/// <summary>What is left in writing with the customer after an application, in our own words.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Lines">What was applied, where and when, re-entry, contact.</param>
/// <param name="Advice">What the customer does and leaves.</param>
/// <param name="Asked">What the state asks the customer to be told, line by line; empty where none was read.</param>
/// <param name="Neighbors">Who else is told; null where none was read.</param>
/// <param name="Source">The state's rule; null where none was read.</param>
public sealed record CustomerNotice(
    string Heading, IReadOnlyList<NoticeLine> Lines, IReadOnlyList<string> Advice, IReadOnlyList<string> Asked, string? Neighbors, string? Source)
{
    /// <summary>Re-entry where the record has none: the usual words of labels for lawns (from memory; the label binds).</summary>
    internal const string UsualReentry = "when it has dried, or later where the label says so";

    /// <summary>The notice of one application.</summary>
    public static CustomerNotice Of(Lawn lawn, LogEntry.Applied entry, RulePack pack, UnitSystem first)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(pack);
        var (what, flag) = (entry.What, pack.LawnFlag);
        return new(
            $"What was put on your lawn on {FigureText.DateText(entry.Day)}",
            [
                new("Lawn", lawn.Address is { } address ? $"{lawn.Name}, {address}" : lawn.Name),
                new("Customer", lawn.Owner),
                new("Date and time", RecordText.When(entry)),
                new("What", $"{what.Product} ({RecordText.Kind(what.Kind)})"),
                .. what.RegistrationNumber is { } number ? [new NoticeLine("Registration number", number)] : Array.Empty<NoticeLine>(),
                .. RecordText.Actives(what, first) is { } actives ? [new NoticeLine("Active ingredients", actives)] : Array.Empty<NoticeLine>(),
                new("How much", $"{RecordText.Amount(what.Amount, first)} on {RecordText.Area(what, first)}"),
                .. what.Target is { } target ? [new NoticeLine("Against or for", target)] : Array.Empty<NoticeLine>(),
                new("Keep off until", what.Reentry ?? (MissingFields.IsPesticide(what) ? UsualReentry : "granules are watered in and the grass is dry")),
                new("Applied by", Person(what)),
                new("Firm and telephone", null),
            ],
            Care(what, flag),
            flag?.Customer ?? [],
            flag?.Neighbors,
            flag?.Source);
    }

    private static string? Person(Application what) => (what.Applicator, what.License) switch
    {
        ({ } name, { } license) => $"{name}, license {license}",
        ({ } name, null) => name,
        (null, { } license) => $"license {license}",
        _ => null,
    };

    private static IReadOnlyList<string> Care(Application what, LawnFlagRule? flag) => MissingFields.IsPesticide(what)
        ?
        [
            "Keep people and pets off the lawn until then; bring in toys, bowls and washing first.",
            "Do not mow or water before the label allows it. What the label says goes before this sheet.",
            FormattableString.Invariant($"Leave the markers up{(flag?.StandHours is { } hours ? $" for {hours:0.##} hours" : flag?.UntilNextDay == true ? " until the next day" : " as long as they say")}."),
            "Ask for a copy of the label if you want to read it.",
        ]
        : ["Water it in as agreed. Sweep granules off paving back onto the lawn, and keep them out of drains and water."];
}
