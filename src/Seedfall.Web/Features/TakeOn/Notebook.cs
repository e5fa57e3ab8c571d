using Seedfall.Planning.Ground;
using Seedfall.Web.Features.TakeOn.Leaves;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>Every leaf of a lawn's notes, in the order they are walked.</summary>
internal static class Notebook
{
    public static IReadOnlyList<Leaf> Leaves { get; } =
    [
        new PlaceLeaf(), new PatchesLeaf(), new SoilLeaf(), new SprayedLeaf(), new WaterLeaf(), new TapsLeaf(), new HouseLeaf(), new TimersLeaf(), new SetsLeaf(), new HoursLeaf(), new EquipmentLeaf(),
        new SeedLeaf(), FeedLeaf.Starter(), FeedLeaf.Late(), new PreEmergentLeaf(), new PartnersLeaf(), new CoverLeaf(), new PricesLeaf(), new MeterLeaf(), new RulesLeaf(),
    ];

    /// <summary>Null where there is no such leaf.</summary>
    public static Leaf? Find(string id) => Leaves.FirstOrDefault(l => l.Id == id);

    /// <summary>The leaf after this one; null after the last.</summary>
    public static Leaf? After(Leaf leaf)
    {
        for (var i = 0; i < Leaves.Count - 1; i++)
        {
            if (Leaves[i].Id == leaf.Id)
            {
                return Leaves[i + 1];
            }
        }

        return null;
    }

    /// <summary>Number of the leaf in the walk, from 1.</summary>
    public static int NumberOf(Leaf leaf)
    {
        for (var i = 0; i < Leaves.Count; i++)
        {
            if (Leaves[i].Id == leaf.Id)
            {
                return i + 1;
            }
        }

        throw new ArgumentException($"the leaf {leaf.Id} is not in the notebook", nameof(leaf));
    }

    /// <summary>Where a leaf is filled in: a list leaf at its first item, or at a new one where it has none.</summary>
    public static string Address(Leaf leaf, string lawnId, Lawn lawn) => leaf.Each is null
        ? $"/lawns/{lawnId}/notes/{leaf.Id}"
        : ItemAddress(leaf, lawnId, leaf.Gists(lawn, default).Count == 0 ? null : 0);

    /// <summary>Where one item of a list leaf is filled in; null for a new one.</summary>
    public static string ItemAddress(Leaf leaf, string lawnId, int? item) =>
        FormattableString.Invariant($"/lawns/{lawnId}/notes/{leaf.Id}/") + (item is { } i ? (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) : "new");
}
