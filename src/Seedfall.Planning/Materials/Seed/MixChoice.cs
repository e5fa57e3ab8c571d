using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The wanted mix before any lot is looked at.</summary>
/// <param name="Weights">Share of each kind by weight of pure live seed; sums to 1, in the order of the enum.</param>
/// <param name="Reasons">Why, one sentence each.</param>
internal sealed record MixChoice(IReadOnlyList<(GrassSpecies Species, double Weight)> Weights, IReadOnlyList<Advice> Reasons)
{
    private const string Purdue = "Purdue University Turf: less than 10 % ryegrass by weight in bluegrass";
    private const string Cornell = "Cornell University, Safe Sports Fields: at least 85 to 90 % tall fescue when mixed with bluegrass";

    private const double SmallPart = 0.10;
    private const double FineInSun = 0.30;
    private const double FineInShade = 0.50;
    private const double EnoughShade = 0.25;
    private const double MuchShade = 0.50;

    /// <summary>The mix entered, or one chosen from what grows there, sun and use.</summary>
    internal static MixChoice For(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches)
    {
        if (choices.MixByWeight is { Count: > 0 } entered)
        {
            var total = entered.Values.Sum();
            return new([.. entered.Where(e => e.Value > 0.0).OrderBy(e => e.Key).Select(e => (e.Key, e.Value / total))], []);
        }

        var grown = lawn.Patches.SelectMany(p => p.Grasses).Distinct().Order().ToList();
        var reasons = new List<Advice>();
        AddForWear(lawn, grown, reasons);
        var shade = ShadeShare(lawn, tables, patches, grown);
        AddForShade(shade, grown, reasons);
        return new(Weigh(grown, shade, reasons), reasons);
    }

    private static void AddForWear(Lawn lawn, List<GrassSpecies> grown, List<Advice> reasons)
    {
        if (lawn.Use != LawnUse.HardWear)
        {
            return;
        }

        if (grown.Contains(GrassSpecies.TallFescue) && !grown.Contains(GrassSpecies.KentuckyBluegrass))
        {
            grown.Add(GrassSpecies.KentuckyBluegrass);
            reasons.Add(new("seed.mix.wear", "Hard wear: a tenth of Kentucky bluegrass is added, whose rhizomes knit worn places that tall fescue cannot.", Cornell, Engine.Workings.Sureness.Published));
        }
        else if (grown.Contains(GrassSpecies.KentuckyBluegrass) && !grown.Contains(GrassSpecies.PerennialRyegrass) && !grown.Contains(GrassSpecies.TallFescue) && lawn.Patches.All(p => p.Cause != DamageCause.Drought))
        {
            grown.Add(GrassSpecies.PerennialRyegrass);
            reasons.Add(new("seed.mix.wear", "Hard wear: a tenth of perennial ryegrass is added for cover in two weeks; no more, or it crowds the bluegrass seedlings.", Purdue, Engine.Workings.Sureness.Published));
        }

        grown.Sort();
    }

    /// <summary>Share of the lawn's ground too shady for every grass listed.</summary>
    private static double ShadeShare(Lawn lawn, TradeTables tables, IReadOnlyList<PatchSummary> patches, List<GrassSpecies> grown)
    {
        var leastHours = grown.Min(g => tables.For(g).LeastSunHours.Value);
        var total = patches.Sum(p => p.Area.Value);
        var shaded = lawn.Patches.Zip(patches).Where(z => (z.First.SunHours ?? GroundDefaults.SunHours) < leastHours).Sum(z => z.Second.Area.Value);
        return total > 0.0 ? shaded / total : 0.0;
    }

    private static void AddForShade(double shade, List<GrassSpecies> grown, List<Advice> reasons)
    {
        if (shade >= EnoughShade && !grown.Any(IsFine))
        {
            grown.Add(GrassSpecies.CreepingRedFescue);
            grown.Sort();
            reasons.Add(new("seed.mix.shade", "Creeping red fescue is added: a good part of this lawn has too little sun for the grasses that grow here.", "Penn State Extension: fine fescues need at least 3 hours of direct sun", Engine.Workings.Sureness.Published));
        }
    }

    private static List<(GrassSpecies, double)> Weigh(List<GrassSpecies> grown, double shade, List<Advice> reasons)
    {
        var fine = grown.Where(IsFine).ToList();
        var rye = grown.Contains(GrassSpecies.PerennialRyegrass);
        var blue = grown.Contains(GrassSpecies.KentuckyBluegrass);
        var fineShare = fine.Count == 0 ? 0.0 : shade >= MuchShade ? FineInShade : FineInSun;
        var weights = new Dictionary<GrassSpecies, double>();
        if (grown.Contains(GrassSpecies.TallFescue))
        {
            var others = shade >= EnoughShade && fine.Count > 0 ? fineShare : grown.Count > 1 ? SmallPart : 0.0;
            weights[GrassSpecies.TallFescue] = 1.0 - others;
            Share(weights, shade >= EnoughShade && fine.Count > 0 ? fine : [.. grown.Where(g => g != GrassSpecies.TallFescue)], others);
            if (blue)
            {
                reasons.Add(new("seed.mix.fescue", "Tall fescue stays at nine tenths by weight: with more bluegrass the fescue stands in clumps.", Cornell, Engine.Workings.Sureness.Published));
            }
        }
        else if (blue)
        {
            weights[GrassSpecies.KentuckyBluegrass] = 1.0 - fineShare - (rye ? SmallPart : 0.0);
            Share(weights, fine, fineShare);
            Share(weights, rye ? [GrassSpecies.PerennialRyegrass] : [], SmallPart);
        }
        else
        {
            Share(weights, fine, rye ? 1.0 - SmallPart : 1.0);
            Share(weights, rye ? [GrassSpecies.PerennialRyegrass] : [], fine.Count > 0 ? SmallPart : 1.0);
        }

        return [.. weights.Where(w => w.Value > 0.0).OrderBy(w => w.Key).Select(w => (w.Key, w.Value))];
    }

    private static void Share(Dictionary<GrassSpecies, double> weights, IReadOnlyList<GrassSpecies> kinds, double total)
    {
        foreach (var kind in kinds)
        {
            weights[kind] = total / kinds.Count;
        }
    }

    internal static bool IsFine(GrassSpecies species) =>
        species is GrassSpecies.CreepingRedFescue or GrassSpecies.ChewingsFescue or GrassSpecies.HardFescue or GrassSpecies.SheepFescue;
}
