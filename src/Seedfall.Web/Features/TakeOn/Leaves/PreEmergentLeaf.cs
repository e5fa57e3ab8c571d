using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>The pre-emergent as its label says.</summary>
internal sealed class PreEmergentLeaf() : Leaf("pre-emergent", "Pre-emergent", "The label is the law. What you do not copy from it is not assumed in your favor.")
{
    private static readonly VolumePerArea Nothing = VolumePerArea.FromLitersPerHectare(0.0);
    private static readonly VolumePerArea Most = VolumePerArea.FromLitersPerHectare(200.0);

    private static readonly TextField Active = new("active", "Active ingredient") { Hint = "The chemical’s name, not the brand. Blank means none is planned." };
    private static readonly ChoiceField<FormulationClass> Formulation = new("formulation", "Formulation", Answers.Formulations);
    private static readonly NumberField Strength = new("strength", "Active ingredient in the product", 0.001, 20.0, "lb per gal");
    private static readonly QuantityField<VolumePerArea> Rate = LabelRate("rate", "Rate to apply");
    private static readonly QuantityField<VolumePerArea> MaxRate = LabelRate("maxrate", "Label’s highest rate for one application");
    private static readonly QuantityField<VolumePerArea> MaxYear = LabelRate("maxyear", "Label’s highest amount in one year");
    private static readonly QuantityField<VolumePerArea> Applied = new("applied", "Already applied this year", UnitChoices.LabelRate, Nothing, Most);
    private static readonly TicksField<GrassSpecies> Safe = new("safe", "Grasses the label names as safe at seeding", Answers.Grasses);
    private static readonly TicksField<GrassSpecies> Barred = new("barred", "Grasses the label bars", Answers.Grasses);
    private static readonly NumberField Interval = new("interval", "Wait after it before seeding", 0.0, 730.0, "days") { Whole = true, Hint = "0 where the label allows it at seeding." };
    private static readonly NumberField Repeat = new("repeat", "Repeat, after emergence", 0.0, 365.0, "days") { Whole = true, Hint = "Blank means no repeat is planned." };
    private static readonly QuantityField<VolumePerArea> Carrier = new("mincarrier", "Label’s least carrier", UnitChoices.Carrier, Nothing, VolumePerArea.FromLitersPerHectare(20_000.0)) { AboveLeast = true };
    private static readonly QuantityField<Speed> Wind = new("maxwind", "Label’s highest wind", UnitChoices.Speed, Speed.FromMetersPerSecond(0.0), Speed.FromMetersPerSecond(20.0)) { AboveLeast = true };
    private static readonly QuantityField<Speed> LeastWind = new("minwind", "Label’s least wind", UnitChoices.Speed, Speed.FromMetersPerSecond(0.0), Speed.FromMetersPerSecond(10.0)) { Hint = "Some labels bar still air." };
    private static readonly NumberField RainFree = new("rainfree", "Without rain afterward", 0.0, 168.0, "hours") { Hint = "As the label asks; 0 where rain may follow at once. Blank: 6 hours are assumed." };
    private static readonly QuantityField<Temperature> Lowest = new("lowair", "Label’s lowest air temperature", UnitChoices.Temperature, Temperature.FromCelsius(-10.0), Temperature.FromCelsius(50.0));
    private static readonly QuantityField<Temperature> Highest = new("highair", "Label’s highest air temperature", UnitChoices.Temperature, Temperature.FromCelsius(0.0), Temperature.FromCelsius(50.0));
    private static readonly TickField HoseEnd = new("hoseend", "The label bars hose-end sprayers");
    private static readonly TextField Registration = new("registration", "Registration number") { Longest = 40 };
    private static readonly TextField Reentry = new("reentry", "When people and pets may go back on") { Longest = 200, Hint = "As the label words it." };

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("The product", [Active, Formulation, Rate]) { Hint = "Copy from the label in your hand. Applying it for pay usually needs a license." },
        new("The label’s walls", [MaxRate, MaxYear, Applied, Interval, Repeat, Carrier, HoseEnd]),
        new("The label’s weather", [Wind, LeastWind, RainFree, Lowest, Highest]) { Hint = "The spray window holds every hour to it. What is left blank is assumed, and said to be." },
        new("Grasses", [Safe, Barred]),
        new("For the record", [Strength, Registration, Reentry]) { Folded = true },
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) => lawn.PreEmergent is { } label
        ? [$"{label.ActiveIngredient}, {FigureText.Show(QuantityKind.LabelRate, label.Rate.LitersPerSquareMeter, system)}"]
        : [];

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        var label = lawn.PreEmergent;
        Active.Fill(entries, label?.ActiveIngredient);
        Formulation.Fill(entries, label?.Formulation);
        Strength.Fill(entries, label?.StrengthKgPerLiter * Volume.FromGallons(1.0).Liters / Mass.FromPounds(1.0).Kilograms);
        Rate.Fill(entries, label?.Rate);
        MaxRate.Fill(entries, label?.MaximumRate);
        MaxYear.Fill(entries, label?.MaximumPerYear);
        Applied.Fill(entries, label?.AppliedThisYear);
        Safe.Fill(entries, label?.LabeledAtSeeding ?? []);
        Barred.Fill(entries, label?.Barred ?? []);
        Interval.Fill(entries, label?.SeedingIntervalDays);
        Repeat.Fill(entries, label?.RepeatAfterEmergenceDays);
        Carrier.Fill(entries, label?.MinimumCarrier);
        Wind.Fill(entries, label?.MaximumWind);
        LeastWind.Fill(entries, label?.MinimumWind);
        RainFree.Fill(entries, label?.RainFreeHours);
        Lowest.Fill(entries, label?.LowestAir);
        Highest.Fill(entries, label?.HighestAir);
        HoseEnd.Fill(entries, label?.HoseEndBarred ?? false);
        Registration.Fill(entries, label?.RegistrationNumber);
        Reentry.Fill(entries, label?.Reentry);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        if (Active.Read(entries) is not { } active)
        {
            return lawn with { PreEmergent = null };
        }

        var strength = Strength.Read(entries);
        var (safe, barred) = (Safe.Read(entries, lawn.PreEmergent?.LabeledAtSeeding), Barred.Read(entries, lawn.PreEmergent?.Barred));
        if (safe.Intersect(barred).Any())
        {
            entries.Wrong(Barred.Name, $"{Barred.Label}: a grass cannot be both safe and barred.");
        }

        return lawn with
        {
            PreEmergent = new HerbicideLabel
            {
                ActiveIngredient = active,
                Formulation = Formulation.Read(entries) ?? FormulationClass.SuspensionConcentrate,
                StrengthKgPerLiter = strength is { } s ? s * Mass.FromPounds(1.0).Kilograms / Volume.FromGallons(1.0).Liters : null,
                Rate = (Rate with { Required = true }).Read(entries) ?? Nothing,
                MaximumRate = MaxRate.Read(entries),
                MaximumPerYear = MaxYear.Read(entries),
                AppliedThisYear = Applied.Read(entries) ?? Nothing,
                LabeledAtSeeding = safe,
                Barred = barred,
                SeedingIntervalDays = Interval.ReadWhole(entries),
                RepeatAfterEmergenceDays = Repeat.ReadWhole(entries),
                MinimumCarrier = Carrier.Read(entries),
                MaximumWind = Wind.Read(entries),
                MinimumWind = LeastWind.Read(entries),
                RainFreeHours = RainFree.Read(entries),
                LowestAir = Lowest.Read(entries),
                HighestAir = Highest.Read(entries),
                HoseEndBarred = HoseEnd.Read(entries),
                RegistrationNumber = Registration.Read(entries),
                Reentry = Reentry.Read(entries),
            },
        };
    }

    private static QuantityField<VolumePerArea> LabelRate(string name, string label) => new(name, label, UnitChoices.LabelRate, Nothing, Most) { AboveLeast = true };
}
