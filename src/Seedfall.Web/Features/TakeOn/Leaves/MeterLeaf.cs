using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Supply;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>A water bill in steps, and what the household uses of them.</summary>
internal sealed class MeterLeaf() : Leaf("meter", "Water price in steps", "Where the bill has steps, the lawn’s water falls into the dearest: its cost is the bill with it less the bill without.")
{
    /// <summary>Gallons a price may be for, US first, then cubic meters, then hundreds of cubic feet; exact by definition.</summary>
    private static readonly (string Key, string Text, decimal PerThousandGallons)[] Per =
        [("kgal", "per 1,000 gal", 1m), ("m3", "per m³", 3.785411784m), ("ccf", "per 100 cu ft", 3785.411784m / 2831.6846592m)];

    private static readonly ChoiceField<int> PricePer = new("priceper", "Prices are", [.. Per.Select((p, i) => (i, p.Key, p.Text))]) { Blank = null };
    private static readonly QuantityField<Volume> Household = new("household", "What the household uses in a month", UnitChoices.Billed, Volume.Zero, Volume.FromLiters(1_000_000.0)) { Hint = "From a winter bill, when nothing is watered." };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("The bill", [PricePer, Household]) { Hint = "Add the sewer charge where it is billed on the same meter. With one price for all water, the leaf on prices is enough; steps count before it." },
        .. Rows(lawn).Select((row, i) => new FieldGroup(i == 0 ? "First step" : $"Step {(i + 1).ToString(CultureInfo.InvariantCulture)}", row.Fields) { Folded = i > 1, Hint = i == 1 ? "The last step has no end: leave its “up to” blank." : null }),
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system)
    {
        List<string> known = [];
        if (lawn.Water?.Meter is { } meter)
        {
            var last = meter.Steps[^1].PerThousandGallons;
            known.Add(string.Create(CultureInfo.InvariantCulture, $"{meter.Steps.Count} step{(meter.Steps.Count == 1 ? "" : "s")}, {meter.Steps[0].PerThousandGallons:0.00##}{(meter.Steps.Count == 1 ? "" : $" to {last:0.00##}")} per 1,000 gal"));
        }

        if (lawn.Water?.HouseholdPerMonth is { } own)
        {
            known.Add($"the house uses {FigureText.Show(QuantityKind.Volume, own.Liters, system)} a month");
        }

        return known.Count == 0 ? [] : [string.Join("; ", known)];
    }

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        var steps = lawn.Water?.Meter?.Steps ?? [];
        var usual = entries.System == UnitSystem.Metric ? 1 : 0;
        int[] tried = [usual, 0, 1, 2];
        var per = steps.Count == 0 ? usual : tried.FirstOrDefault(i => steps.All(s => Shown(s.PerThousandGallons, i) is { } shown && Stored(shown, i) == s.PerThousandGallons), 0);
        PricePer.Fill(entries, per);
        Household.Fill(entries, lawn.Water?.HouseholdPerMonth);
        foreach (var (row, i) in Rows(lawn).Select((r, i) => (r, i)))
        {
            row.UpTo.Fill(entries, i < steps.Count ? steps[i].UpTo : null);
            row.Price.FillMoney(entries, i < steps.Count ? Shown(steps[i].PerThousandGallons, per) : null);
        }
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var per = PricePer.Read(entries) ?? 0;
        var steps = new List<MeterStep>();
        var rows = Rows(lawn);
        var last = rows.Select((r, i) => entries.Text(r.Price.Name).Length + entries.Text(r.UpTo.Name).Length > 0 ? i : -1).Max();
        for (var i = 0; i <= last; i++)
        {
            var (end, price) = ((rows[i].UpTo with { Required = i < last }).Read(entries), (rows[i].Price with { Required = true }).ReadMoney(entries));
            if (i == last && end is not null)
            {
                entries.Wrong(rows[i].UpTo.Name, $"{rows[i].UpTo.Label}: the last step has no end; leave it blank, or give the price beyond it as one more step.");
            }

            if (i > 0 && end is { } to && steps.Count == i && to <= steps[i - 1].UpTo)
            {
                entries.Wrong(rows[i].UpTo.Name, $"{rows[i].UpTo.Label}: more than in the step before is needed.");
            }

            steps.Add(new MeterStep(end, Stored(price ?? 0m, per)));
        }

        return lawn with
        {
            Water = (lawn.Water ?? new WaterSupply()) with { Meter = steps.Count == 0 ? null : new MeterPrice(steps), HouseholdPerMonth = Household.Read(entries) },
        };
    }

    /// <summary>One row for each step, and two more; four at least.</summary>
    private static IReadOnlyList<Row> Rows(Lawn lawn) => [.. Enumerable.Range(1, Math.Max(4, (lawn.Water?.Meter?.Steps.Count ?? 0) + 2)).Select(n => new Row(n))];

    /// <summary>Prices for 1,000 gal as typed for another volume, and back; to a hundred-millionth.</summary>
    private static decimal Stored(decimal typed, int per) => per == 0 ? typed : Math.Round(typed * Per[per].PerThousandGallons, 8);

    private static decimal Shown(decimal perThousandGallons, int per) => per == 0 ? perThousandGallons : Math.Round(perThousandGallons / Per[per].PerThousandGallons, 4);

    /// <summary>The fields of one step.</summary>
    private sealed class Row(int number)
    {
        public QuantityField<Volume> UpTo { get; } = new(FormattableString.Invariant($"upto{number}"), "Up to, in a month", UnitChoices.Billed, Volume.Zero, Volume.FromLiters(10_000_000.0)) { AboveLeast = true };

        public NumberField Price { get; } = new(FormattableString.Invariant($"stepprice{number}"), "Price", 0.0, 100_000.0);

        public IReadOnlyList<Field> Fields => [UpTo, Price];
    }
}
