using System.Globalization;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Sheets;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Coverage;

/// <summary>What a search for places needs: a drawn patch and the sprinkler that is moved over it.</summary>
internal static class PlacesForm
{
    private static readonly ChoiceField<int> Profile = new("profile", "How its water falls off", [.. HeadForm.Profiles.Select((p, i) => (i, p.Value, p.Text))]) { Required = true, Blank = null };

    private static readonly TickField Sets = new("arcs", "Its arc can be set to half the round");

    private static readonly (double FromDeg, double SweepDeg) Whole = (0.0, 360.0);

    /// <summary>Names of its fields: what an address carries.</summary>
    public static IReadOnlyList<string> Names { get; } = ["patch", "radius", "radius.unit", "flow", "flow.unit", "profile", "arcs"];

    public static IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new("The sprinkler", [PatchOf(lawn), HeadForm.Radius, HeadForm.Flow, Profile, Sets]) { Bare = true }];

    public static void Blank(Lawn lawn, Entries entries)
    {
        PatchOf(lawn).Fill(entries, 0);
        HeadForm.Radius.Fill(entries, null);
        HeadForm.Flow.Fill(entries, lawn.Water?.Bucket?.Flow ?? lawn.Water?.Flow);
        Profile.Fill(entries, 0);
    }

    /// <summary>The patch and the sprinkler, or null where a problem was noted.</summary>
    public static (Patch Patch, PatchShape.Outline Outline, MovedSprinkler Sprinkler)? Read(Lawn lawn, Entries entries)
    {
        var (patch, radius, flow, profile) = (PatchOf(lawn).Read(entries), HeadForm.Radius.Read(entries), HeadForm.Flow.Read(entries), Profile.Read(entries));
        if (!entries.Sound)
        {
            return null;
        }

        var (found, outline) = DrawnPatches.Of(lawn)[patch!.Value];
        IReadOnlyList<(double, double)> arcs = Sets.Read(entries) ? [Whole, (0.0, 180.0), (90.0, 180.0), (180.0, 180.0), (270.0, 180.0)] : [Whole];
        return (found, outline, new(radius!.Value, flow!.Value, HeadForm.Profiles[profile!.Value].Profile, arcs));
    }

    private static ChoiceField<int> PatchOf(Lawn lawn) =>
        new("patch", "Patch to cover", [.. DrawnPatches.Of(lawn).Select((d, i) => (i, (i + 1).ToString(CultureInfo.InvariantCulture), d.Patch.Name))]) { Required = true, Blank = null };
}
