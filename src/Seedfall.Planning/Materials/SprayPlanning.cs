using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The spray part of the plan.</summary>
public static class SprayPlanning
{
    /// <summary>Id of the trip the pre-emergent is in.</summary>
    internal const string PreEmergentTrip = "pre-emergent";

    private const double AssumedCarrierGallonsPerM = 1.0;
    private const double AssumedTankGallons = 4.0;

    /// <summary>
    /// Pre-emergent and partners under the entered label: amounts, tanks, mixing order. Null where nothing is sprayed, or where
    /// the label stops the pre-emergent and nothing else was to go on. A repeat the year has no room for is a wall of its own.
    /// </summary>
    /// <param name="lawn">The lawn; must have passed <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">Decide which grasses are seeded.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="patches">Summaries of all the lawn's patches, in its order; all are sprayed.</param>
    /// <param name="seedDown">Seed-down day.</param>
    /// <param name="log">The record of applications; those before seed-down count against the year. Null means nothing is recorded.</param>
    public static Section<SprayPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, DateOnly seedDown, FieldLog? log = null)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(patches);
        var use = lawn.PreEmergent is { } planned ? YearUse.Of(lawn, planned, log ?? FieldLog.Empty, seedDown.Year, seedDown) : null;
        return Plan(lawn, choices, tables, patches, use, []);
    }

    /// <summary>The same from the year's use already summed, with walls found elsewhere that stop the pre-emergent too.</summary>
    internal static Section<SprayPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, YearUse? use, IReadOnlyList<Wall> more)
    {
        if (use is null && lawn.TankPartners.Count == 0)
        {
            return new(null, [], []);
        }

        var seeded = SeedPlanning.Seeded(lawn, choices, tables, patches);
        IReadOnlyList<Wall> walls = use is null ? [] : [.. SprayLabelWalls.For(lawn, use.Label, seeded, tables, use), .. more];
        var label = walls.Count == 0 ? lawn.PreEmergent : null;
        var (first, second) = Tanks(lawn, label);
        if (first.Count + second.Count == 0)
        {
            return new(null, walls, []);
        }

        var (carrier, tank, assumed) = Equipment(lawn, label);
        var trips = new List<SprayTrip>();
        if (label is not null)
        {
            trips.Add(SprayTrips.Of(PreEmergentTrip, $"Spray the pre-emergent: {label.ActiveIngredient}", first, carrier, tank, patches));
        }

        if (second.Count > 0)
        {
            trips.Add(SprayTrips.Of("conditioner", $"Spray {string.Join(" and ", second.Select(i => i.Name))}", second, carrier, tank, patches));
        }

        var repeat = label is null ? null : SprayLabelWalls.Repeat(label, use!);
        return new(
            new SprayPlan(trips, label is null ? [] : YearFigures.Of(label, use!, repeat is null), [.. SprayAdvice.For(lawn, label is null ? second : first, seeded)]),
            repeat is null ? walls : [.. walls, repeat],
            [.. assumed, .. LabelAssumed(label)]);
    }

    /// <summary>What shares the pre-emergent's tank and what goes on by itself. Without a pre-emergent everything goes by itself.</summary>
    private static (IReadOnlyList<TankItem> First, IReadOnlyList<TankItem> Second) Tanks(Lawn lawn, HerbicideLabel? label)
    {
        var partners = lawn.TankPartners.Select((p, i) => (p.WithPreEmergent, Item: new TankItem($"partner-{i + 1}", p.Name, p.Formulation, p.Rate, "label, as entered", Sureness.Measured))).ToList();
        if (label is null)
        {
            return ([], [.. partners.Select(p => p.Item)]);
        }

        var herbicide = new TankItem("herbicide", label.ActiveIngredient, label.Formulation, label.Rate, "label, as entered", Sureness.Measured);
        return ([herbicide, .. partners.Where(p => p.WithPreEmergent).Select(p => p.Item)], [.. partners.Where(p => !p.WithPreEmergent).Select(p => p.Item)]);
    }

    internal static (VolumePerArea Carrier, Volume? Tank, IReadOnlyList<Assumption> Assumed) Equipment(Lawn lawn, HerbicideLabel? label)
    {
        var assumed = new List<Assumption>();
        var usual = VolumePerArea.FromGallonsPerThousandSquareFeet(AssumedCarrierGallonsPerM);
        var least = label?.MinimumCarrier ?? usual;
        var carrier = lawn.Sprayer?.Carrier ?? (least > usual ? least : usual);
        if (lawn.Sprayer?.Carrier is null)
        {
            assumed.Add(new("assumed.sprayer.carrier", FormattableString.Invariant($"The sprayer is taken to put out {carrier.GallonsPerThousandSquareFeet:0.##} gal per 1,000 sq ft."), "Number of tanks and the product in each.", "Calibrate: spray a measured square, time it, catch that long in a bucket."));
        }

        if (lawn.Sprayer?.Kind == SprayerKind.HoseEnd)
        {
            return (carrier, null, assumed);
        }

        if (lawn.Sprayer?.Tank is null)
        {
            assumed.Add(new("assumed.sprayer.tank", FormattableString.Invariant($"The tank is taken to hold {AssumedTankGallons:0} gal."), "Number of tanks and the product in each.", "Enter what the sprayer's tank holds."));
        }

        return (carrier, lawn.Sprayer?.Tank ?? Volume.FromGallons(AssumedTankGallons), assumed);
    }

    private static IEnumerable<Assumption> LabelAssumed(HerbicideLabel? label)
    {
        if (label is null)
        {
            yield break;
        }

        if (label.MaximumPerYear is null)
        {
            yield return YearlyUse.Maximum(label) is null
                ? new("assumed.label.year", $"No yearly maximum was entered for {label.ActiveIngredient}.", "The year's use is not checked.", "Enter the yearly maximum from the label in hand: it binds.")
                : new("assumed.label.year", $"No yearly maximum was entered for {label.ActiveIngredient}: the published 560 g of active ingredient per hectare is held to.", "Repeats and rates above it are refused.", "Enter the yearly maximum from the label in hand: it binds.");
        }

        if (label.SeedingIntervalDays is null)
        {
            yield return new("assumed.label.interval", $"{label.ActiveIngredient} is taken as allowed on seed-down day, since the label is entered as naming the grasses at seeding.", "It goes on the same day as the seed.", "Enter the label's interval before seeding, 0 where it allows seeding at once.");
        }

        if (label.MaximumRate is null)
        {
            yield return new("assumed.label.rate", $"No highest rate was entered for {label.ActiveIngredient}.", "The entered rate is not checked against it.", "Enter the highest single rate from the label in hand.");
        }
    }
}
