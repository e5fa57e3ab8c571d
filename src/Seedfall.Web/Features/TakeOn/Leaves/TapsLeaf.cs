using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Taps beside the first.</summary>
internal sealed class TapsLeaf() : ListLeaf<FurtherTap>("taps", "More taps", "A second tap halves nothing by itself: what all give together decides how many sets may run at once.")
{
    private static readonly FlowRate Most = FlowRate.FromLitersPerMinute(400.0);

    private static readonly TextField Name = new("tapname", "Name of the tap") { Required = true, Longest = 60, Hint = "For example garage, or back wall. The tap of the leaf before needs no name." };
    private static readonly QuantityField<FlowRate> Flow = new("tapflow", "What it gives alone", UnitChoices.Flow, FlowRate.Zero, Most) { AboveLeast = true, Required = true, Hint = "Fill a bucket at it with the other taps shut: 5 gal in 60 seconds is 5 gal per min." };
    private static readonly QuantityField<FlowRate> Together = new("together", "What all taps give together", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromLitersPerMinute(4000.0)) { AboveLeast = true, Hint = "With the first tap running, fill a bucket at each at the same time and add the flows up. Left blank, all are taken to share one pipe." };

    public override string Each => "tap";

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => [new("The tap", [Name, Flow]), new("With all of them open", [Together])];

    protected override IReadOnlyList<FurtherTap> Items(Lawn lawn) => lawn.Water?.OtherTaps ?? [];

    protected override Lawn With(Lawn lawn, IReadOnlyList<FurtherTap> items) => lawn with { Water = (lawn.Water ?? new WaterSupply()) with { OtherTaps = items } };

    protected override string Gist(FurtherTap item, Lawn lawn, UnitSystem system) =>
        $"{item.Name}, {FigureText.Show(QuantityKind.FlowRate, item.Flow.LitersPerMinute, system)}";

    protected override void FillItem(FurtherTap? before, Lawn lawn, Entries entries)
    {
        Name.Fill(entries, before?.Name);
        Flow.Fill(entries, before?.Flow);
        Together.Fill(entries, lawn.Water?.Together);
    }

    protected override FurtherTap? ReadItem(FurtherTap? before, Lawn lawn, Entries entries)
    {
        var (name, flow) = (Name.Read(entries), Flow.Read(entries));
        if (name is not null && Items(lawn).Any(t => !ReferenceEquals(t, before) && string.Equals(t.Name, name, StringComparison.OrdinalIgnoreCase)))
        {
            entries.Wrong(Name.Name, $"{Name.Label}: another tap is already called “{name}”.");
        }

        return entries.Sound && name is not null && flow is { } f ? new FurtherTap(name, f) : null;
    }

    /// <summary>Sets that stand on the tap keep standing on it under its new name.</summary>
    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var together = Together.Read(entries);
        var (before, changed) = (Items(lawn), base.Apply(lawn, item, entries));
        if (!entries.Sound || changed.Water is not { } water)
        {
            return lawn;
        }

        var (was, now) = (item < before.Count ? before[item].Name : null, water.OtherTaps[item].Name);
        return changed with { Water = water with { Together = together, Sets = was is null || was == now ? water.Sets : [.. water.Sets.Select(s => s.Tap == was ? s with { Tap = now } : s)] } };
    }

    /// <summary>What the taps gave together says nothing once only the first is left.</summary>
    public override Lawn Remove(Lawn lawn, int item)
    {
        var left = base.Remove(lawn, item);
        return left.Water is { OtherTaps.Count: 0 } water ? left with { Water = water with { Together = null } } : left;
    }
}
