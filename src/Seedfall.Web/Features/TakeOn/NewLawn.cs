using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Features.TakeOn.Leaves;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>The first screen of a lawn: place, one patch and its grass. Everything else may wait.</summary>
internal static class NewLawn
{
    private static readonly PlaceLeaf Place = new();
    private static readonly PatchesLeaf Patches = new();

    private static readonly Lawn Nothing = new()
    {
        Id = "new",
        Name = "",
        Place = new Place(0.0, 0.0, 0.0),
        Patches = [],
    };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("The lawn and its place", PlaceLeaf.NeededFields), .. PatchesLeaf.NeededGroups()];

    public static Entries Blank(UnitSystem system)
    {
        var entries = new Entries(system);
        Patches.Fill(Nothing, 0, entries);
        return entries;
    }

    /// <summary>The lawn as entered; meaningless where problems were noted.</summary>
    public static Lawn Read(Entries entries) => Patches.Apply(Place.Apply(Nothing, 0, entries), 0, entries);
}
