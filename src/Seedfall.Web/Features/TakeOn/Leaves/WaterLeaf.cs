using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>What the tap gives.</summary>
internal sealed class WaterLeaf() : Leaf("tap", "The tap", "Most seedings fail for lack of water: the tap’s flow is half of the water proof.")
{
    private static readonly QuantityField<Volume> Bucket = new("bucket", "Bucket", UnitChoices.Volume, Volume.Zero, Volume.FromLiters(1000.0)) { AboveLeast = true, Hint = "Fill a bucket from the hose you will use, with nothing else running." };
    private static readonly NumberField Seconds = new("seconds", "Filled in", 1.0, 3600.0, "seconds");
    private static readonly QuantityField<FlowRate> Flow = new("flow", "Flow, if known without a bucket", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromLitersPerMinute(2000.0)) { AboveLeast = true };
    private static readonly ChoiceField<bool> Timer = new("timer", "Can a timer start rounds with nobody at home?", Answers.YesNo);
    private static readonly TickField Permit = new("permit", "The town has granted extra watering for new seed");

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("Bucket test", [Bucket, Seconds]) { Hint = "It takes two minutes and is worth more than any guess." },
        new("Or typed", [Flow]),
        new("Running it", [Timer, Permit]),
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        var flow = lawn.Water?.Bucket?.Flow ?? lawn.Water?.Flow;
        return flow is { } f
            ? [$"{FigureText.Show(QuantityKind.FlowRate, f.LitersPerMinute, system)}{(lawn.Water?.Bucket is null ? "" : " by the bucket")}{(lawn.Water?.Timer == true ? ", timer" : "")}"]
            : [];
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Bucket.Fill(entries, lawn.Water?.Bucket?.Volume);
        Seconds.Fill(entries, lawn.Water?.Bucket?.Seconds);
        Flow.Fill(entries, lawn.Water?.Flow);
        Timer.Fill(entries, lawn.Water?.Timer);
        Permit.Fill(entries, lawn.Water?.NewSeedPermit ?? false);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (volume, seconds) = (Bucket.Read(entries), Seconds.Read(entries));
        if (volume is null != seconds is null)
        {
            entries.Wrong(volume is null ? Bucket.Name : Seconds.Name, "A bucket test needs both the bucket’s size and the seconds.");
        }

        return lawn with
        {
            Water = (lawn.Water ?? new WaterSupply()) with
            {
                Bucket = volume is { } v && seconds is { } s ? new BucketTest(v, s) : null,
                Flow = Flow.Read(entries),
                Timer = Timer.Read(entries),
                NewSeedPermit = Permit.Read(entries),
            },
        };
    }
}
