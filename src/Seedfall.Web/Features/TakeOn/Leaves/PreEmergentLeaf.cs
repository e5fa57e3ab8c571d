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
    private static readonly TextField Active = new("active", "Active ingredient") { Hint = "The chemical’s name, not the brand. Blank means none is planned." };
    private static readonly ChoiceField<FormulationClass> Formulation = new("formulation", "Formulation", Answers.Formulations);
    private static readonly EitherField<double, Fraction, ProductStrength> Strength = ProductFields.Strength("strength", "Active ingredient in the product") with { Hint = "A liquid in lb per gallon or g per liter, a dry product in percent by weight." };
    private static readonly EitherField<VolumePerArea, MassPerArea, ProductRate> Rate = ProductFields.Rate("rate", "Rate to apply") with { Hint = "Fluid ounces for a liquid. A powder or granule is weighed: choose a dry oz, lb, g or kg." };
    private static readonly EitherField<VolumePerArea, MassPerArea, ProductRate> MaxRate = ProductFields.Rate("maxrate", "Label’s highest rate for one application");
    private static readonly EitherField<VolumePerArea, MassPerArea, ProductRate> MaxYear = ProductFields.Rate("maxyear", "Label’s highest amount in one year");
    private static readonly EitherField<VolumePerArea, MassPerArea, ProductRate> Applied = ProductFields.Rate("applied", "Already applied this year", zero: true);
    private static readonly TicksField<GrassSpecies> Safe = new("safe", "Grasses the label names as safe at seeding", Answers.Grasses);
    private static readonly TicksField<GrassSpecies> Barred = new("barred", "Grasses the label bars", Answers.Grasses);
    private static readonly NumberField Interval = new("interval", "Wait after it before seeding", 0.0, 730.0, "days") { Whole = true, Hint = "0 where the label allows it at seeding." };
    private static readonly NumberField Repeat = new("repeat", "Repeat, after emergence", 0.0, 365.0, "days") { Whole = true, Hint = "Blank means no repeat is planned." };
    private static readonly NumberField Mowings = new("mowings", "Mowings of the new grass before it goes on seedlings", 0.0, 10.0, "mowings") { Whole = true, Hint = "As the label counts; 0 where it asks for none. Blank: the two that most labels ask for are assumed." };
    private static readonly QuantityField<VolumePerArea> Carrier = new("mincarrier", "Label’s least carrier", UnitChoices.Carrier, VolumePerArea.Zero, VolumePerArea.FromLitersPerHectare(20_000.0)) { AboveLeast = true };
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
        new("The label’s walls", [MaxRate, MaxYear, Applied, Interval, Repeat, Mowings, Carrier, HoseEnd]),
        new("The label’s weather", [Wind, LeastWind, RainFree, Lowest, Highest]) { Hint = "The spray window holds every hour to it. What is left blank is assumed, and said to be." },
        new("Grasses", [Safe, Barred]),
        new("For the record", [Strength, Registration, Reentry]) { Folded = true },
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) => lawn.PreEmergent is { } label
        ? [$"{label.ActiveIngredient}, {ProductFields.Show(label.Rate, system)}"]
        : [];

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        var label = lawn.PreEmergent;
        Active.Fill(entries, label?.ActiveIngredient);
        Formulation.Fill(entries, label?.Formulation);
        var weighed = label?.Rate.Measure == ProductMeasure.Weight;
        Strength.Fill(entries, label?.Strength, weighed);
        Rate.Fill(entries, label?.Rate);
        MaxRate.Fill(entries, label?.MaximumRate, weighed);
        MaxYear.Fill(entries, label?.MaximumPerYear, weighed);
        Applied.Fill(entries, label?.AppliedThisYear, weighed);
        Safe.Fill(entries, label?.LabeledAtSeeding ?? []);
        Barred.Fill(entries, label?.Barred ?? []);
        Interval.Fill(entries, label?.SeedingIntervalDays);
        Repeat.Fill(entries, label?.RepeatAfterEmergenceDays);
        Mowings.Fill(entries, label?.MowingsBeforeSeedlings);
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

        var rate = (Rate with { Required = true }).Read(entries);
        var (strength, most, year, applied) = (Strength.Read(entries), MaxRate.Read(entries), MaxYear.Read(entries), Applied.Read(entries));
        if (rate is { Measure: var measure })
        {
            OneMeasure(entries, measure, strength, [(MaxRate, most), (MaxYear, year), (Applied, applied)]);
        }

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
                Strength = strength,
                Rate = rate ?? VolumePerArea.Zero,
                MaximumRate = most,
                MaximumPerYear = year,
                AppliedThisYear = applied,
                LabeledAtSeeding = safe,
                Barred = barred,
                SeedingIntervalDays = Interval.ReadWhole(entries),
                RepeatAfterEmergenceDays = Repeat.ReadWhole(entries),
                MowingsBeforeSeedlings = Mowings.ReadWhole(entries),
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

    /// <summary>All of one label is by volume or all of it by weight: what contradicts the rate is named beside its field.</summary>
    private static void OneMeasure(Entries entries, ProductMeasure measure, ProductStrength? strength, IReadOnlyList<(Field Field, ProductRate? Rate)> others)
    {
        var dry = measure == ProductMeasure.Weight;
        foreach (var (field, rate) in others)
        {
            if (rate is { IsNothing: false } given && given.Measure != measure)
            {
                entries.Wrong(field.Name, $"{field.Label}: a {(dry ? "weight" : "volume")} is needed, as the rate to apply is.");
            }
        }

        if (strength is { } s && s.Measure != measure)
        {
            entries.Wrong(Strength.Name, $"{Strength.Label}: {(dry ? "percent by weight is" : "lb per gal or g per L is")} needed, as the rate to apply is a {(dry ? "weight" : "volume")}.");
        }
    }
}
