using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>One feeding as figures.</summary>
internal static class FeedingFigures
{
    /// <param name="ruled">A feeding that goes on.</param>
    /// <param name="area">Ground it goes on.</param>
    internal static Feeding Of(RuledStep ruled, Area area)
    {
        var (step, nitrogenPoundsPerM) = (ruled.Step, ruled.NitrogenPoundsPerM!.Value);
        var nitrogen = MassPerArea.FromPoundsPerThousandSquareFeet(nitrogenPoundsPerM);
        var rate = FertilizerGrade.ProductFor(nitrogen, step.Product.Nitrogen);
        return new Feeding(
            step.Id,
            step.Product.Name,
            step.DaysAfter,
            Rate(step, nitrogenPoundsPerM, rate),
            Nitrogen(ruled, $"feed.{step.Id}.n", $"{step.Title}: nitrogen", nitrogen),
            Nutrient(step, "p", "phosphate (P2O5)", rate, step.Product.Phosphate),
            Nutrient(step, "k", "potash (K2O)", rate, step.Product.Potash),
            Product(ruled, rate, area),
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

    internal static Figure Nitrogen(RuledStep ruled, string id, string label, MassPerArea nitrogen) =>
        new(id, label, QuantityKind.MassPerArea, nitrogen.KilogramsPerSquareMeter, NitrogenWorking(ruled));

    private static Working NitrogenWorking(RuledStep ruled)
    {
        var step = ruled.Step;
        return (step.AskedPoundsPerM, ruled.Bounds.Count) switch
        {
            ({ } asked, > 0) => new("N = entered rate x grade, lowered to what the record leaves of the year: N <= Y - R", [new("N0", "as entered", asked, "lb per 1,000 sq ft"), new("f", "slow-release share", step.SlowShare, ""), .. ruled.Bounds], "entered, and the record of applications", Sureness.Measured),
            ({ }, _) => new("N = entered rate x grade", [new("grade", "nitrogen in the product", step.Product.Nitrogen.Value, ""), new("f", "slow-release share", step.SlowShare, "")], "entered", Sureness.Measured),
            (null, > 0) => new("N = usual rate, lowered to what a rule, the grass and the record leave: N <= A, N <= Y - R, N <= G - R", [new("N0", "usual rate", step.WantedPoundsPerM, "lb per 1,000 sq ft"), new("f", "slow-release share", step.SlowShare, ""), .. ruled.Bounds], step.WhySource, Sureness.CommonPractice),
            _ => new("N = usual rate, lowered where a rule or the grass asks", [new("N0", "usual rate", step.WantedPoundsPerM, "lb per 1,000 sq ft"), new("f", "slow-release share", step.SlowShare, "")], step.WhySource, Sureness.CommonPractice),
        };
    }

    private static Figure Nutrient(FeedStep step, string id, string name, MassPerArea rate, Fraction share) => Worked.Computed(
        $"feed.{step.Id}.{id}", $"{step.Title}: {name}", QuantityKind.MassPerArea, FertilizerGrade.NutrientIn(rate, share).KilogramsPerSquareMeter, "nutrient = rate x grade", null,
        new WorkingInput("rate", "product rate", rate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"), new WorkingInput("grade", name + " in the product", share.Value, ""));

    private static Figure Product(RuledStep ruled, MassPerArea rate, Area area) => Worked.Computed(
        $"feed.{ruled.Step.Id}.product", $"{ruled.Step.Title}: product {(ruled.Grounds is null ? "in all" : "for the ground still to feed")}", QuantityKind.Mass, rate.KilogramsPerSquareMeter * area.SquareMeters, "product = rate A", null,
        new WorkingInput("rate", "product rate", rate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"), new WorkingInput("A", ruled.Grounds is null ? "lawn area" : "ground still to feed", area.ThousandSquareFeet, "1,000 sq ft"));
}
