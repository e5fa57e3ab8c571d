using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>What the household keeps for itself, and the well behind the taps.</summary>
internal sealed class HouseLeaf() : Leaf("house", "Household and well", "Water the house draws is not there for the lawn, and a well runs dry.")
{
    private static readonly FlowRate Most = FlowRate.FromLitersPerMinute(400.0);

    private static readonly QuantityField<FlowRate> Reserved = new("reserved", "Flow kept free at all hours", UnitChoices.Flow, FlowRate.Zero, Most) { Hint = "So that somebody can draw a glass or flush meanwhile. Time a jug at the kitchen tap." };
    private static readonly QuantityField<Volume> Stored = new("stored", "Water standing ready above the pump", UnitChoices.Volume, Volume.Zero, Volume.FromLiters(1_000_000.0)) { AboveLeast = true, Hint = "Run a tap wide open after a rest and measure what comes until it falters." };
    private static readonly QuantityField<FlowRate> Recovery = new("recovery", "How fast it comes back", UnitChoices.Flow, FlowRate.Zero, Most) { Hint = "The flow that keeps coming after it has faltered, or from the well driller’s report." };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("For the house", [Reserved]) { Hint = "The gallons used in a month stand in the leaf on price steps." },
        .. Rows(lawn).Select((row, i) => new FieldGroup(i == 0 ? "Hours in which the house draws more" : $"More such hours ({(i + 1).ToString(CultureInfo.InvariantCulture)})", row.Fields) { Folded = true, Hint = i == 0 ? "Showers in the morning, dishes at night. Hold a bucket under the shower and time it." : null }),
        new("A well", [Stored, Recovery]) { Folded = true, Hint = "Leave it blank where the water comes from a main." },
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        List<string> known = [];
        if (lawn.Water?.Reserved is { } reserved)
        {
            known.Add($"{Flow(reserved)} kept free");
        }

        known.AddRange((lawn.Water?.Household ?? []).Select(h => string.Create(CultureInfo.InvariantCulture, $"{Flow(h.Flow)} from {h.From:HH:mm} to {h.To:HH:mm}")));
        if (lawn.Water?.Well is { } well)
        {
            known.Add($"well: {FigureText.Show(QuantityKind.Volume, well.Stored.Liters, system)}, {Flow(well.Recovery)} back");
        }

        return known.Count == 0 ? [] : [string.Join("; ", known)];

        string Flow(FlowRate flow) => FigureText.Show(QuantityKind.FlowRate, flow.LitersPerMinute, system).ToString();
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Reserved.Fill(entries, lawn.Water?.Reserved);
        foreach (var (row, i) in Rows(lawn).Select((r, i) => (r, i)))
        {
            row.Fill(i < lawn.Water?.Household.Count ? lawn.Water.Household[i] : null, entries);
        }

        Stored.Fill(entries, lawn.Water?.Well?.Stored);
        Recovery.Fill(entries, lawn.Water?.Well?.Recovery);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (stored, recovery) = (Stored.Read(entries), Recovery.Read(entries));
        if (stored is null != recovery is null)
        {
            entries.Wrong(stored is null ? Stored.Name : Recovery.Name, "A well needs both: what stands ready, and how fast it comes back.");
        }

        return lawn with
        {
            Water = (lawn.Water ?? new WaterSupply()) with
            {
                Reserved = Reserved.Read(entries),
                Household = [.. Rows(lawn).Select(r => r.Read(entries)).OfType<HouseholdHours>()],
                Well = stored is { } s && recovery is { } r ? new WellLimit(s, r) : null,
            },
        };
    }

    /// <summary>One row for each stretch of hours, and two more.</summary>
    private static IReadOnlyList<Row> Rows(Lawn lawn) => [.. Enumerable.Range(1, (lawn.Water?.Household.Count ?? 0) + 2).Select(n => new Row(n))];

    /// <summary>The fields of one stretch of hours.</summary>
    private sealed class Row(int number)
    {
        private readonly TimeField _from = new(FormattableString.Invariant($"from{number}"), "From");
        private readonly TimeField _to = new(FormattableString.Invariant($"to{number}"), "To");
        private readonly QuantityField<FlowRate> _flow = new(FormattableString.Invariant($"draws{number}"), "The house draws", UnitChoices.Flow, FlowRate.Zero, Most) { AboveLeast = true };

        public IReadOnlyList<Field> Fields => [_from, _to, _flow];

        public void Fill(HouseholdHours? hours, Entries entries)
        {
            _from.Fill(entries, hours?.From);
            _to.Fill(entries, hours?.To);
            _flow.Fill(entries, hours?.Flow);
        }

        /// <summary>Null where the row is blank or a problem was noted.</summary>
        public HouseholdHours? Read(Entries entries)
        {
            if (Fields.All(f => entries.Text(f.Name).Length == 0))
            {
                return null;
            }

            var (from, to, flow) = ((_from with { Required = true }).Read(entries), (_to with { Required = true }).Read(entries), (_flow with { Required = true }).Read(entries));
            if (to <= from)
            {
                entries.Wrong(_to.Name, "To: a time later than “from” is needed; enter hours past midnight as their own.");
            }

            return from is { } f && to is { } t && flow is { } q ? new HouseholdHours(f, t, q) : null;
        }
    }
}
