using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>Bags of one size to buy.</summary>
public sealed record BagCount(double BagKilograms, int Count, decimal? PriceEach);

/// <summary>The cheapest set of bags that covers a need.</summary>
/// <param name="Bags">Counts by size.</param>
/// <param name="Bought">Mass bought.</param>
/// <param name="LeftOver">Mass left over.</param>
/// <param name="Cost">Null where any price is missing.</param>
public sealed record Purchase(IReadOnlyList<BagCount> Bags, Figure Bought, Figure LeftOver, Figure? Cost);

/// <summary>One species in the mix.</summary>
public sealed record MixPart(GrassSpecies Species, string Name, Figure ShareByWeight, Figure ShareByCount, Figure PureLiveSeed);

/// <summary>Seed for one patch.</summary>
/// <param name="TargetRate">Pure live seed rate aimed at.</param>
/// <param name="ExtensionRate">The extension rate for this mix, for comparison.</param>
/// <param name="Bulk">Bulk seed to weigh out, thin-spot extra included.</param>
/// <param name="ThinExtra">The part of it kept apart for thin spots.</param>
/// <param name="LivePerArea">Live seeds per area reached.</param>
public sealed record PatchSeed(string PatchId, Figure TargetRate, Figure ExtensionRate, Figure Bulk, Figure ThinExtra, Figure LivePerArea);

/// <summary>Seed to weigh out of one lot, or of one kind where no lot was entered.</summary>
/// <param name="Id">Stable id: the lot number or the species in kebab-case.</param>
/// <param name="Name">Lot number and kinds as the trade writes them.</param>
/// <param name="Bulk">Bulk seed of this lot for the whole lawn.</param>
/// <param name="Purchase">Null where no bag sizes are known.</param>
public sealed record LotNeed(string Id, string Name, Figure Bulk, Purchase? Purchase);

/// <summary>One mix and the patches it is sown on.</summary>
/// <param name="Id">Stable id: <c>mix</c> where there is one, <c>mix-1</c> and so on where there are several.</param>
/// <param name="Sentence">The mix by weight and by count.</param>
/// <param name="Parts">Its kinds.</param>
/// <param name="HalfPass">Seed of this mix for one of the two half-rate passes.</param>
public sealed record PatchMix(string Id, string Sentence, IReadOnlyList<string> PatchIds, IReadOnlyList<MixPart> Parts, Figure HalfPass);

/// <summary>Seed for the lawn.</summary>
/// <param name="MixSentence">The mix, or each mix with the patches it is for.</param>
/// <param name="Mix">The kinds over the whole lawn.</param>
/// <param name="TotalBulk">All seed, thin-spot extra included.</param>
/// <param name="HalfPass">Seed for one of the two half-rate passes; the thin-spot extra is kept apart.</param>
/// <param name="Purchase">Bags over all lots; null where no bag sizes are known.</param>
/// <param name="Lots">The same seed lot by lot; never empty.</param>
public sealed record SeedPlan(
    string MixSentence,
    IReadOnlyList<MixPart> Mix,
    IReadOnlyList<PatchSeed> Patches,
    Figure TotalBulk,
    Figure HalfPass,
    Purchase? Purchase,
    IReadOnlyList<LotNeed> Lots,
    IReadOnlyList<Advice> Advice)
{
    /// <summary>The mixes, the one on most ground first; more than one where patches differ in their grasses or their shade.</summary>
    public required IReadOnlyList<PatchMix> Mixes { get; init; }
}

/// <summary>One feeding.</summary>
/// <param name="Id">Stable id: <c>starter-1</c>, <c>starter-2</c>, <c>late-fall</c>.</param>
/// <param name="DaysAfterSeedDown">Null where the date comes from the season instead.</param>
public sealed record Feeding(
    string Id,
    string ProductName,
    int? DaysAfterSeedDown,
    Figure ProductRate,
    Figure NitrogenRate,
    Figure PhosphateRate,
    Figure PotashRate,
    Figure Product,
    string Reason)
{
    /// <summary>The day it is planned for: a late feeding is moved ahead of a blackout.</summary>
    public required DateOnly Date { get; init; }
}

/// <summary>The feedings of the season.</summary>
/// <param name="Feedings">One that is done stays as it was planned; one still to come is what the record leaves of it. Empty only after recorded ones.</param>
/// <param name="NitrogenThisSeason">What is recorded in the place of what was planned, and what is still planned.</param>
public sealed record FeedPlan(
    IReadOnlyList<Feeding> Feedings,
    Figure NitrogenThisSeason,
    Purchase? StarterPurchase,
    Purchase? LatePurchase,
    IReadOnlyList<Advice> Advice)
{
    /// <summary>What the record makes of the feedings; null where none of this season is recorded.</summary>
    public RecordedFeeding? Recorded { get; init; }
}

/// <summary>One tank as it is mixed: full or part.</summary>
public sealed record TankLoad(int Number, Figure Carrier, IReadOnlyList<Figure> Products);

/// <summary>One product of the spray and what it comes to.</summary>
public sealed record SprayProduct(string Name, FormulationClass Formulation, Figure Rate, Figure Total, IReadOnlyList<Figure> PerPatch);

/// <summary>A trip with the sprayer over the lawn.</summary>
/// <param name="Id">Stable id: <c>pre-emergent</c>, <c>conditioner</c>.</param>
public sealed record SprayTrip(
    string Id,
    string Title,
    IReadOnlyList<SprayProduct> Products,
    Figure CarrierTotal,
    IReadOnlyList<TankLoad> Tanks,
    IReadOnlyList<string> MixingOrder,
    IReadOnlyList<string> JarTest)
{
    /// <summary>True where something in it is weighed out.</summary>
    public bool IsWeighed => Products.Any(p => p.Total.Kind == QuantityKind.DryDose);
}

public sealed record SprayPlan(IReadOnlyList<SprayTrip> Trips, IReadOnlyList<Figure> YearlyTotals, IReadOnlyList<Advice> Advice);

/// <summary>Covering for one patch.</summary>
public sealed record PatchCover(string PatchId, Figure Area, Figure Amount);

public sealed record CoverPlan(CoverKind Kind, string Sentence, IReadOnlyList<PatchCover> Patches, Figure Total, Purchase? Purchase);

/// <summary>One line of the shopping list.</summary>
/// <param name="Id">Stable id, for example <c>seed</c>.</param>
/// <param name="Buy">What to ask for, for example <c>2 bags of 50 lb</c>; empty where no bag sizes are known.</param>
public sealed record MaterialLine(string Id, string Name, string Purpose, Figure Need, string Buy, Figure? Cost);
