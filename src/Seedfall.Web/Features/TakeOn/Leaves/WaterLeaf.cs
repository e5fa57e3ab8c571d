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
    private static readonly QuantityField<Pressure> Still = new("still", "Pressure with nothing running", UnitChoices.Pressure, Pressure.Zero, Pressure.FromKilopascals(2000.0)) { AboveLeast = true, Hint = "Screw a gauge on the tap, open it, and shut everything else in the house." };
    private static readonly QuantityField<Pressure> Running = new("running", "Pressure while it runs", UnitChoices.Pressure, Pressure.Zero, Pressure.FromKilopascals(2000.0)) { Hint = "The gauge on a splitter, the other side running into the bucket." };
    private static readonly QuantityField<FlowRate> At = new("runningflow", "Flow into the bucket meanwhile", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromLitersPerMinute(400.0)) { AboveLeast = true };
    private static readonly ChoiceField<bool> Timer = new("timer", "Can a timer start rounds with nobody at home?", Answers.YesNo);
    private static readonly TickField Permit = new("permit", "The town has granted extra watering for new seed");

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("Bucket test", [Bucket, Seconds]) { Hint = "It takes two minutes and is worth more than any guess." },
        new("Or typed", [Flow]),
        new("Pressure, if there is a gauge", [Still, Running, At]) { Folded = true, Hint = "With the hose and the nozzle of a set it tells what is left at the sprinkler. The still reading alone is worth having." },
        new("Running it", [Timer, Permit]),
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        var water = lawn.Water;
        List<string> known = [];
        if ((water?.Bucket?.Flow ?? water?.Flow) is { } flow)
        {
            known.Add(FigureText.Show(QuantityKind.FlowRate, flow.LitersPerMinute, system) + (water?.Bucket is null ? "" : " by the bucket"));
        }

        if (water?.Pressure is { } pressure)
        {
            known.Add(Answers.Shown(pressure.Still, system));
        }

        if (known.Count > 0 && water!.Timer == true)
        {
            known.Add("timer");
        }

        return known.Count == 0 ? [] : [string.Join(", ", known)];
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Bucket.Fill(entries, lawn.Water?.Bucket?.Volume);
        Seconds.Fill(entries, lawn.Water?.Bucket?.Seconds);
        Flow.Fill(entries, lawn.Water?.Flow);
        Still.Fill(entries, lawn.Water?.Pressure?.Still);
        Running.Fill(entries, lawn.Water?.Pressure?.Running);
        At.Fill(entries, lawn.Water?.Pressure?.At);
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
                Pressure = ReadPressure(entries),
                Timer = Timer.Read(entries),
                NewSeedPermit = Permit.Read(entries),
            },
        };
    }

    private static PressureTest? ReadPressure(Entries entries)
    {
        var (still, running, at) = (Still.Read(entries), Running.Read(entries), At.Read(entries));
        if (running is null != at is null)
        {
            entries.Wrong(running is null ? Running.Name : At.Name, "The running pressure and the flow are read at the same time: both are needed, or neither.");
        }

        if (running is not null && still is null)
        {
            entries.Wrong(Still.Name, $"{Still.Label}: needed beside the running pressure.");
        }

        if (still is { } high && running >= high)
        {
            entries.Wrong(Running.Name, $"{Running.Label}: less than with nothing running is needed.");
        }

        return still is { } read ? new PressureTest(read, running, at) : null;
    }
}
