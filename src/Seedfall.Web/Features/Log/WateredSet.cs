using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Log;

/// <summary>Which sprinkler set was run; asked only where there is more than one.</summary>
internal static class WateredSet
{
    public const string Name = "set";

    /// <summary>The question, where the lawn has more than one set.</summary>
    public static IReadOnlyList<Field> Fields(Lawn lawn) => Choice(lawn) is { } choice ? [choice] : [];

    /// <summary>The entry with the set chosen.</summary>
    public static LogEntry.Watered Named(LogEntry.Watered entry, Lawn lawn, Entries entries) =>
        Choice(lawn)?.Read(entries) is { } set ? entry with { Set = WateredSets.Of(lawn)[set].Name } : entry;

    /// <summary>The patch of a set that wets only one; null else.</summary>
    public static string? OnlyPatch(LogEntry? entry, Lawn lawn) =>
        entry is LogEntry.Watered { Set: { } name } && WateredSets.Of(lawn).FirstOrDefault(s => s.Name == name).PatchIds is { Count: 1 } ids ? ids[0] : null;

    private static ChoiceField<int>? Choice(Lawn lawn)
    {
        var sets = WateredSets.Of(lawn);
        return sets.Count < 2 ? null : new ChoiceField<int>(Name, "Set that ran", [.. sets.Select((s, i) => (i, s.Name.Trim(), Text(s.Name, s.PatchIds)))])
        {
            Blank = "Not said",
            Hint = "Minutes mean another depth under each set.",
        };

        string Text(string name, IReadOnlyList<string> ids) => lawn.Patches.Count == 1 ? name : $"{name} ({string.Join(", ", lawn.Patches.Where(p => ids.Contains(p.Id)).Select(p => p.Name))})";
    }
}
