using Seedfall.Planning.Ground;
using Seedfall.Web.Data;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Photos;

/// <summary>A new photo spot as a form.</summary>
internal static class SpotForm
{
    private static readonly TextField Name = new("spotname", "Name of the spot") { Required = true, Hint = "For example: front walk, toward the oak." };
    private static readonly TextField StandOn = new("stand", "Stand on, look at") { Longest = 160, Hint = "So that anybody finds it again: stand on the third paving slab, phone at the chest, the oak at the left edge." };
    private static readonly ChoiceField<bool> Kind = new("kind", "Kind of picture", [(false, "down", "Straight down, about a square yard"), (true, "overview", "Overview of a whole patch")])
    {
        Blank = null,
        Required = true,
        Hint = "Straight down measures cover best. An overview shows where it is thin.",
    };

    public static IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new("The spot", [Name, Kind, Patch(lawn), StandOn])];

    public static void Fill(Lawn lawn, Entries entries)
    {
        Kind.Fill(entries, false);
        Patch(lawn).Fill(entries, lawn.Patches.Count == 1 ? 0 : null);
    }

    /// <summary>Meaningless where problems were noted.</summary>
    public static PhotoSpotRow Read(string lawnId, Lawn lawn, Entries entries, DateTimeOffset now) => new()
    {
        Id = Guid.NewGuid(),
        LawnId = lawnId,
        Name = Name.Read(entries) ?? "",
        IsOverview = Kind.Read(entries) ?? false,
        PatchId = Patch(lawn).Read(entries) is { } patch ? lawn.Patches[patch].Id : null,
        StandOn = StandOn.Read(entries),
        Added = now,
    };

    private static ChoiceField<int> Patch(Lawn lawn) => new("spotpatch", "Patch it shows", [.. lawn.Patches.Select((p, i) => (i, p.Id, p.Name))]) { Blank = "The whole lawn" };
}
