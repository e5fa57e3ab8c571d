using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>What the thin and sloped places are covered with.</summary>
internal sealed class CoverLeaf() : Leaf("cover", "Covering", "A cover keeps thin and sloped places wet between rounds.")
{
    private static readonly ChoiceField<CoverKind> Kind = new("coverkind", "Cover for the thin places", Answers.Covers) { Blank = "Not decided" };
    private static readonly QuantityField<Depth> Layer = new("layer", "Layer, for peat and compost", UnitChoices.Depth, Depth.Zero, Depth.FromMillimeters(50.0)) { AboveLeast = true };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => [new("The cover", [Kind, Layer]), BagFields.Group];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) => lawn.Cover is { } cover ? [Answers.Covers.Words(cover.Kind)] : [];

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Kind.Fill(entries, lawn.Cover?.Kind);
        Layer.Fill(entries, lawn.Cover?.Layer);
        BagFields.Fill(lawn.Cover?.Bags ?? [], entries);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (kind, layer, bags) = (Kind.Read(entries), Layer.Read(entries), BagFields.Read(entries));
        if (kind is null && (layer is not null || bags.Count > 0))
        {
            entries.Wrong(Kind.Name, $"{Kind.Label}: choose the cover that the layer or the bags belong to.");
        }

        return lawn with { Cover = kind is { } k ? new CoverMaterial(k) { Layer = layer, Bags = bags } : null };
    }
}
