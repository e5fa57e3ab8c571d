using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>One feeding as figures.</summary>
internal static class FeedingFigures
{
    internal static Feeding Of(FeedStep step, double nitrogenPoundsPerM, Area area)
    {
        var nitrogen = MassPerArea.FromPoundsPerThousandSquareFeet(nitrogenPoundsPerM);
        var rate = FertilizerGrade.ProductFor(nitrogen, step.Product.Nitrogen);
        return new Feeding(
            step.Id,
            step.Product.Name,
            step.DaysAfter,
            Rate(step, nitrogenPoundsPerM, rate),
            Nitrogen(step, nitrogen),
            Nutrient(step, "p", "phosphate (P2O5)", rate, step.Product.Phosphate),
            Nutrient(step, "k", "potash (K2O)", rate, step.Product.Potash),
            Product(step, rate, area),
            step.Why)
        {
            Date = step.Date,
        };
    }

    internal static Figure Season(IReadOnlyList<Feeding> feedings) => Worked.Computed(
        "feed.season.n", "nitrogen this season", QuantityKind.MassPerArea, feedings.Sum(f => f.NitrogenRate.Value), "sum over the feedings", null,
        [.. feedings.Select(f => new WorkingInput(f.Id, f.ProductName, new MassPerArea(f.NitrogenRate.Value).PoundsPerThousandSquareFeet, "lb N per 1,000 sq ft"))]);

    private static Figure Rate(FeedStep step, double nitrogenPoundsPerM, MassPerArea rate) => Worked.Sourced(
        $"feed.{step.Id}.rate", $"{step.Title}: product rate", QuantityKind.MassPerArea, rate.KilogramsPerSquareMeter,
        "rate = N / grade", "UMass Extension, Rotary Spreader Calibration", Sureness.Published, "Half each way at right angles.",
        new WorkingInput("N", "nitrogen wanted", nitrogenPoundsPerM, "lb per 1,000 sq ft"),
        new WorkingInput("grade", "nitrogen in the product", step.Product.Nitrogen.Value, ""));

    private static Figure Nitrogen(FeedStep step, MassPerArea nitrogen) => new(
        $"feed.{step.Id}.n", $"{step.Title}: nitrogen", QuantityKind.MassPerArea, nitrogen.KilogramsPerSquareMeter,
        step.AskedPoundsPerM is null
            ? new Working("N = usual rate, lowered where a rule or the grass asks", [new("N0", "usual rate", step.WantedPoundsPerM, "lb per 1,000 sq ft"), new("f", "slow-release share", step.SlowShare, "")], step.WhySource, Sureness.CommonPractice)
            : new Working("N = entered rate x grade", [new("grade", "nitrogen in the product", step.Product.Nitrogen.Value, ""), new("f", "slow-release share", step.SlowShare, "")], "entered", Sureness.Measured));

    private static Figure Nutrient(FeedStep step, string id, string name, MassPerArea rate, Fraction share) => Worked.Computed(
        $"feed.{step.Id}.{id}", $"{step.Title}: {name}", QuantityKind.MassPerArea, FertilizerGrade.NutrientIn(rate, share).KilogramsPerSquareMeter, "nutrient = rate x grade", null,
        new WorkingInput("rate", "product rate", rate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"), new WorkingInput("grade", name + " in the product", share.Value, ""));

    private static Figure Product(FeedStep step, MassPerArea rate, Area area) => Worked.Computed(
        $"feed.{step.Id}.product", $"{step.Title}: product in all", QuantityKind.Mass, rate.KilogramsPerSquareMeter * area.SquareMeters, "product = rate A", null,
        new WorkingInput("rate", "product rate", rate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"), new WorkingInput("A", "lawn area", area.ThousandSquareFeet, "1,000 sq ft"));
}
