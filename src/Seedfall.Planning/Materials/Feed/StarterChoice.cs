using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>Which generic fertilizer is taken where none was entered.</summary>
internal static class StarterChoice
{
    /// <summary>Slow-release share taken for a generic product, so that the strictest rule known still allows it.</summary>
    private const double SlowShare = 0.25;

    private const double BalancedPhosphate = 0.12;

    internal static FertilizerProduct Balanced { get; } = Generic("balanced 12-12-12 starter", 0.12, BalancedPhosphate, 0.12);

    internal static FertilizerProduct ZeroPhosphate { get; } = Generic("zero-phosphate 20-0-10 starter", 0.20, 0.0, 0.10);

    internal static FertilizerProduct Late { get; } = Generic("zero-phosphate 30-0-10 fall feed", 0.30, 0.0, 0.10);

    /// <summary>Balanced where phosphorus helps and may go on; zero-phosphate otherwise, and by default when overseeding.</summary>
    internal static (FertilizerProduct Product, string Why) For(PhosphorusRule rule, SeedingWork work, SoilFacts? soil, DateOnly date)
    {
        if (soil?.PhosphorusPpm >= PhosphorusLimit.EnoughFor(soil?.Extract ?? default))
        {
            return (ZeroPhosphate, "the soil test shows enough phosphorus");
        }

        var judged = PhosphorusLimit.Judge(rule, BalancedPhosphate, work, soil, date);
        if (!judged.Allowed)
        {
            return (ZeroPhosphate, judged.Reason);
        }

        var ruleNamesOverseeding = rule is { RestrictedAbovePhosphate: not null, ExemptOverseed: true };
        var testShowsNeed = soil?.PhosphorusPpm < PhosphorusLimit.EnoughFor(soil?.Extract ?? default);
        return work == SeedingWork.Overseed && !ruleNamesOverseeding && !testShowsNeed
            ? (ZeroPhosphate, "overseeding takes none unless a soil test shows need")
            : (Balanced, judged.Reason);
    }

    internal static Assumption Assumed(string id, string what, FertilizerProduct product, string? why) => new(
        $"assumed.feed.{id}",
        FormattableString.Invariant($"{what}: a generic {product.Name} is taken, {SlowShare * 100.0:0} % of its nitrogen slow-release{(why is null ? "" : $"; {why}")}."),
        "Product weight, phosphorus and potash follow from the grade.",
        "Enter the grade and the slow-release share from the bag in hand.");

    private static FertilizerProduct Generic(string name, double n, double p, double k) => new()
    {
        Name = name,
        Nitrogen = Fraction.Of(n),
        Phosphate = Fraction.Of(p),
        Potash = Fraction.Of(k),
        SlowNitrogen = Fraction.Of(SlowShare),
    };
}
