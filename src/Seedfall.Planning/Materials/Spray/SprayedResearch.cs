using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What a trial found about seeding after a herbicide.</summary>
/// <param name="Active">Active ingredient.</param>
/// <param name="Species">Grass it was found on; null for any.</param>
/// <param name="Method">Seeding method it was found with; null for either.</param>
/// <param name="WaitDays">Days after which seeding lost no cover.</param>
/// <param name="At">Rate of the trial, in words.</param>
public sealed record ResearchedWait(string Active, GrassSpecies? Species, SeedingMethod? Method, int WaitDays, string At, string Source, Sureness Sureness);

/// <summary>Research on seeding after herbicides: advice beside the label, never instead of it.</summary>
public static class SprayedResearch
{
    private const string Weed = "Weed Technology 19(1), 2005, WT-03-199R";
    private const string Johnson = "Johnson & Bundschuh 1993";
    private const string Delaware = "Delaware Cooperative Extension 2008";
    private const string Kansas = "Kansas Agricultural Experiment Station Research Reports 7(4):6";

    /// <summary>All figures known.</summary>
    public static IReadOnlyList<ResearchedWait> All { get; } =
    [
        Blue(Actives.Dithiopyr, SeedingMethod.Broadcast, 6, "0.56 kg/ha"),
        Blue(Actives.Dithiopyr, SeedingMethod.SlitSeed, 11, "0.56 kg/ha"),
        Blue(Actives.Pendimethalin, SeedingMethod.Broadcast, 8, "3.36 kg/ha"),
        Blue(Actives.Pendimethalin, SeedingMethod.SlitSeed, 10, "3.36 kg/ha"),
        Blue(Actives.Prodiamine, SeedingMethod.Broadcast, 14, "0.84 kg/ha"),
        Blue(Actives.Prodiamine, SeedingMethod.SlitSeed, 16, "0.84 kg/ha"),
        new(Actives.Dithiopyr, GrassSpecies.PerennialRyegrass, null, 7 * 8, "0.84 kg/ha; granules 8 to 12 weeks, 0.56 kg/ha less", Johnson, Sureness.Published),
        new(Actives.Dithiopyr, GrassSpecies.TallFescue, null, 7 * 2, "emulsifiable concentrate; a later greenhouse trial saw no emergence in treated soil", Johnson, Sureness.Published),
        new(Actives.Quinclorac, GrassSpecies.KentuckyBluegrass, null, 7, "usual rate", Delaware, Sureness.Published),
        new(Actives.Quinclorac, GrassSpecies.TallFescue, null, 7, "usual rate; roots were smaller when seeded sooner", "K-State, McFadden 2021", Sureness.Published),
        new(Actives.Quinclorac, GrassSpecies.PerennialRyegrass, null, 0, "usual rate", Delaware, Sureness.Published),
        new(Actives.Halosulfuron, null, null, 15, "seedlings were held back when seeded within 14 days", Kansas, Sureness.Published),
        new("2,4-D", null, null, 3, "three-way broadleaf mixture in a greenhouse; labels usually ask 3 to 4 weeks", Kansas, Sureness.Published),
        new(Actives.Glyphosate, null, null, 10, "10 to 14 days to see what died", "University of Nebraska-Lincoln Extension", Sureness.Published),
    ];

    /// <summary>The wait found for an active ingredient, grass and method; null where no figure is known.</summary>
    public static ResearchedWait? For(string active, GrassSpecies species, SeedingMethod method) =>
        All.FirstOrDefault(r => Matches(active, r.Active) && (r.Species ?? species) == species && (r.Method ?? method) == method);

    private static bool Matches(string entered, string active) => Actives.Is(entered, active) || (active == "2,4-D" && Actives.IsBroadleafMixture(entered));

    private static ResearchedWait Blue(string active, SeedingMethod method, int weeks, string at) =>
        new(active, GrassSpecies.KentuckyBluegrass, method, 7 * weeks, at, Weed, Sureness.Published);
}
