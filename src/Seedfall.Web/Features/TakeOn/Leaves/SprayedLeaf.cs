using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>What was sprayed in the last months.</summary>
internal sealed class SprayedLeaf() : ListLeaf<PastSpray>("sprayed", "Sprayed in the last six months", "Some herbicides bar seeding for weeks or months; the label says how long.")
{
    private static readonly TextField Active = new("active", "Active ingredient") { Required = true, Hint = "The chemical’s name from the label, not the brand." };
    private static readonly DateField Date = new("date", "Date it was sprayed") { Required = true };
    private static readonly NumberField Interval = new("interval", "The label’s wait before seeding", 0.0, 730.0, "days") { Whole = true, Hint = "From the label in hand. Blank is said on the plan." };
    private static readonly EitherField<VolumePerArea, MassPerArea, ProductRate> Rate = ProductFields.Rate("sprayrate", "Rate applied, if known");

    public override string Each => "spraying";

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => [new("The spraying", [Active, Date, Interval, Rate])];

    protected override IReadOnlyList<PastSpray> Items(Lawn lawn) => lawn.Sprayed;

    protected override Lawn With(Lawn lawn, IReadOnlyList<PastSpray> items) => lawn with { Sprayed = items };

    protected override string Gist(PastSpray item, Lawn lawn, UnitSystem system) =>
        $"{item.ActiveIngredient}, {FigureText.DateText(item.Date, system == UnitSystem.UsCustomary)}";

    protected override void FillItem(PastSpray? before, Lawn lawn, Entries entries)
    {
        Active.Fill(entries, before?.ActiveIngredient);
        Date.Fill(entries, before?.Date);
        Interval.Fill(entries, before?.LabelSeedingIntervalDays);
        Rate.Fill(entries, before?.Rate);
    }

    protected override PastSpray? ReadItem(PastSpray? before, Lawn lawn, Entries entries)
    {
        var (active, date, interval, rate) = (Active.Read(entries), Date.Read(entries), Interval.ReadWhole(entries), Rate.Read(entries));
        return entries.Sound && active is not null && date is { } day
            ? new PastSpray { ActiveIngredient = active, Date = day, LabelSeedingIntervalDays = interval, Rate = rate }
            : null;
    }
}
