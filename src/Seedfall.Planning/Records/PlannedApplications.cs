using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Records;

/// <summary>Records as the plan would have them written, to be put right by what was really done.</summary>
public static class PlannedApplications
{
    /// <summary>One record for each product of a task of the plan; empty where the task puts nothing on.</summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="taskId">Id of the task, for example <c>feed.starter-1</c> or <c>spray.pre-emergent</c>.</param>
    public static IReadOnlyList<Application> For(Lawn lawn, RecoveryPlan plan, string taskId)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(taskId);
        var area = new Area(plan.TotalArea.Value);
        return taskId switch
        {
            "seed.down" when plan.Seed is { } seed => [Seed(lawn, seed, area)],
            _ when plan.Feed?.Feedings.FirstOrDefault(f => taskId == $"feed.{f.Id}") is { } feeding => [Fed(lawn, feeding, plan.Feed.Recorded?.Steps.FirstOrDefault(s => s.Id == feeding.Id) is { EntryIds.Count: > 0, Left: not null } ? new Area(feeding.Product.Value / feeding.ProductRate.Value) : area)],
            _ when plan.Spray?.Trips.FirstOrDefault(t => taskId == $"spray.{t.Id}") is { } trip => [.. trip.Products.Select(product => Sprayed(lawn, trip, product, area))],
            _ => [],
        };
    }

    private static Application Seed(Lawn lawn, SeedPlan seed, Area area) => new()
    {
        Kind = ApplicationKind.Seed,
        Product = string.Join(", ", seed.Mix.Select(part => part.Name)),
        Amount = new(Mass.FromKilograms(seed.TotalBulk.Value), null),
        Area = area,
        Target = "seeding into the standing lawn",
        Method = Spreader(lawn),
    };

    private static Application Fed(Lawn lawn, Feeding feeding, Area area) => new()
    {
        Kind = ApplicationKind.Fertilizer,
        Product = feeding.ProductName,
        Amount = new(Mass.FromKilograms(feeding.Product.Value), null),
        Area = area,
        Actives =
        [
            .. new[] { (Nutrients.Nitrogen, feeding.NitrogenRate), (Nutrients.Phosphate, feeding.PhosphateRate), (Nutrients.Potash, feeding.PotashRate) }
                .Where(nutrient => nutrient.Item2.Value > 0.0)
                .Select(nutrient => new AppliedActive(nutrient.Item1, Mass.FromKilograms(nutrient.Item2.Value * area.SquareMeters))),
        ],
        Method = Spreader(lawn),
    };

    private static Application Sprayed(Lawn lawn, SprayTrip trip, SprayProduct product, Area area)
    {
        var label = lawn.PreEmergent is { } known && product.Name == known.ActiveIngredient && trip.Id == "pre-emergent" ? known : null;
        var amount = product.Total.Kind == QuantityKind.DryDose ? new ProductAmount(new Mass(product.Total.Value), null) : new ProductAmount(null, new Volume(product.Total.Value));
        return new()
        {
            Kind = label is null ? ApplicationKind.Other : ApplicationKind.Pesticide,
            Product = label is { Strength: { } strength } ? $"{product.Name} {Words(label.Formulation, strength)}" : product.Name,
            Amount = amount,
            Area = area,
            RegistrationNumber = label?.RegistrationNumber,
            Actives = label is { Strength: { } share } ? [new AppliedActive(label.ActiveIngredient, Mass.FromKilograms(share.Active * product.Total.Value))] : [],
            Carrier = Volume.FromLiters(trip.CarrierTotal.Value),
            Target = label is null ? null : "annual grasses, before they come up",
            Method = Sprayer(lawn),
            Reentry = label?.Reentry,
        };
    }

    private static string Words(FormulationClass formulation, ProductStrength strength) => strength.ByWeight is { } share
        ? FormattableString.Invariant($"{share.Percent:0.##} % {MixingOrder.Words(formulation)}")
        : FormattableString.Invariant($"{strength.KilogramsPerLiter!.Value * Volume.FromGallons(1.0).Liters / Mass.FromPounds(1.0).Kilograms:0.##} lb/gal");

    private static string? Spreader(Lawn lawn) => lawn.Spreader is { } spreader ? $"{Word(spreader.Kind.ToString())} spreader, two half-rate passes at right angles" : null;

    private static string? Sprayer(Lawn lawn) => lawn.Sprayer is { } sprayer ? $"{Word(sprayer.Kind.ToString())} sprayer" : null;

    /// <summary>A name of the code as words: <c>HoseEnd</c> reads <c>hose end</c>.</summary>
    private static string Word(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));
}
