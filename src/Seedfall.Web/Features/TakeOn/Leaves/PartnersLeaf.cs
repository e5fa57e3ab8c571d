using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Soil conditioner, wetting agent, surfactant.</summary>
internal sealed class PartnersLeaf() : ListLeaf<TankPartner>("partners", "Conditioner and wetting agent", "Each adds a line to the tank, in the order its formulation asks for.")
{
    private static readonly TextField Name = new("partner", "What it is") { Required = true, Longest = 60, Hint = "The generic class.", Offers = ["wetting agent", "soil conditioner", "surfactant"] };
    private static readonly ChoiceField<FormulationClass> Formulation = new("formulation", "Formulation", Answers.Formulations);
    private static readonly EitherField<VolumePerArea, MassPerArea, ProductRate> Rate = ProductFields.Rate("rate", "Rate", 1000.0) with { Required = true };
    private static readonly TickField Shares = new("shares", "Shares the tank with the pre-emergent") { Hint = "Only where both labels allow it." };

    public override string Each => "product";

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => [new("The product", [Name, Formulation, Rate, Shares])];

    protected override IReadOnlyList<TankPartner> Items(Lawn lawn) => lawn.TankPartners;

    protected override Lawn With(Lawn lawn, IReadOnlyList<TankPartner> items) => lawn with { TankPartners = items };

    protected override string Gist(TankPartner item, Lawn lawn, UnitSystem system) =>
        $"{item.Name}, {ProductFields.Show(item.Rate, system)}";

    protected override void FillItem(TankPartner? before, Lawn lawn, Entries entries)
    {
        Name.Fill(entries, before?.Name);
        Formulation.Fill(entries, before?.Formulation);
        Rate.Fill(entries, before?.Rate);
        Shares.Fill(entries, before?.WithPreEmergent ?? false);
    }

    protected override TankPartner? ReadItem(TankPartner? before, Lawn lawn, Entries entries)
    {
        var (name, formulation, rate, shares) = (Name.Read(entries), Formulation.Read(entries), Rate.Read(entries), Shares.Read(entries));
        return entries.Sound && name is not null && rate is { } r
            ? new TankPartner { Name = name, Formulation = formulation ?? FormulationClass.Solution, Rate = r, WithPreEmergent = shares }
            : null;
    }
}
