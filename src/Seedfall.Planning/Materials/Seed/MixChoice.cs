using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>Why a grass is in a mix; said only where that grass is really sown.</summary>
internal sealed record MixReason(GrassSpecies About, Advice Advice);

/// <summary>The wanted mix before any lot is looked at.</summary>
/// <param name="Weights">Share of each kind by weight of pure live seed; sums to 1, in the order of the enum.</param>
/// <param name="Reasons">Why, one sentence each.</param>
internal sealed record MixChoice(IReadOnlyList<(GrassSpecies Species, double Weight)> Weights, IReadOnlyList<MixReason> Reasons)
{
    private const string Purdue = "Purdue University Turf: less than 10 % ryegrass by weight in bluegrass";
    private const string Cornell = "Cornell University, Safe Sports Fields: at least 85 to 90 % tall fescue when mixed with bluegrass";

    private const double SmallPart = 0.10;
    private const double FineInSun = 0.30;
    private const double FineInShade = 0.50;

    /// <summary>The mix entered, or one chosen for a patch from what grows there, its sun and the lawn's use.</summary>
    /// <exception cref="ArgumentException">A mix was entered whose shares are not all finite, none negative, one above 0.</exception>
    internal static MixChoice For(Lawn lawn, Patch patch, Choices choices, TradeTables tables)
    {
        if (choices.MixByWeight is { Count: > 0 } entered)
        {
            return Entered(entered);
        }

        var grown = patch.Grasses.Distinct().Order().ToList();
        var reasons = new List<MixReason>();
        AddForWear(lawn, patch, grown, reasons);
        var shaded = Shaded(patch, grown, tables);
        AddForShade(shaded, patch, grown, reasons);
        return new(Weigh(grown, shaded, reasons), reasons);
    }

    private static MixChoice Entered(IReadOnlyDictionary<GrassSpecies, double> entered)
    {
        var total = entered.Values.Sum();
        if (!double.IsFinite(total) || total <= 0.0 || entered.Values.Any(v => v < 0.0))
        {
            throw new ArgumentException($"weight shares must not be negative and must come to more than 0, found {total}", nameof(entered));
        }

        return new([.. entered.Where(e => e.Value > 0.0).OrderBy(e => e.Key).Select(e => (e.Key, e.Value / total))], []);
    }

    private static void AddForWear(Lawn lawn, Patch patch, List<GrassSpecies> grown, List<MixReason> reasons)
    {
        if (lawn.Use != LawnUse.HardWear)
        {
            return;
        }

        if (grown.Contains(GrassSpecies.TallFescue) && !grown.Contains(GrassSpecies.KentuckyBluegrass))
        {
            grown.Add(GrassSpecies.KentuckyBluegrass);
            reasons.Add(new(GrassSpecies.KentuckyBluegrass, new("seed.mix.wear", "Hard wear: a tenth of Kentucky bluegrass is added, whose rhizomes knit worn places that tall fescue cannot.", Cornell, Sureness.Published)));
        }
        else if (grown.Contains(GrassSpecies.KentuckyBluegrass) && !grown.Contains(GrassSpecies.PerennialRyegrass) && !grown.Contains(GrassSpecies.TallFescue) && patch.Cause != DamageCause.Drought)
        {
            grown.Add(GrassSpecies.PerennialRyegrass);
            reasons.Add(new(GrassSpecies.PerennialRyegrass, new("seed.mix.wear", "Hard wear: a tenth of perennial ryegrass is added for cover in two weeks; no more, or it crowds the bluegrass seedlings.", Purdue, Sureness.Published)));
        }

        grown.Sort();
    }

    /// <summary>True where there is too little sun for every grass but the fine fescues.</summary>
    private static bool Shaded(Patch patch, List<GrassSpecies> grown, TradeTables tables)
    {
        var needs = grown.Where(g => !IsFine(g)).Select(g => tables.For(g).LeastSunHours.Value).ToList();
        return needs.Count > 0 && (patch.SunHours ?? GroundDefaults.SunHours) < needs.Min();
    }

    private static void AddForShade(bool shaded, Patch patch, List<GrassSpecies> grown, List<MixReason> reasons)
    {
        if (shaded && !grown.Any(IsFine))
        {
            grown.Add(GrassSpecies.CreepingRedFescue);
            grown.Sort();
            reasons.Add(new(GrassSpecies.CreepingRedFescue, new($"seed.{patch.Id}.fescue", $"{patch.Name}: creeping red fescue is added, for the sun there is too little for the grasses that grow here.", "Penn State Extension: fine fescues need at least 3 hours of direct sun", Sureness.Published)));
        }
    }

    private static List<(GrassSpecies, double)> Weigh(List<GrassSpecies> grown, bool shaded, List<MixReason> reasons)
    {
        var fine = grown.Where(IsFine).ToList();
        var rye = grown.Contains(GrassSpecies.PerennialRyegrass);
        var blue = grown.Contains(GrassSpecies.KentuckyBluegrass);
        var fineShare = fine.Count == 0 ? 0.0 : shaded ? FineInShade : FineInSun;
        var weights = new Dictionary<GrassSpecies, double>();
        if (grown.Contains(GrassSpecies.TallFescue))
        {
            var others = shaded && fine.Count > 0 ? fineShare : grown.Count > 1 ? SmallPart : 0.0;
            weights[GrassSpecies.TallFescue] = 1.0 - others;
            Share(weights, shaded && fine.Count > 0 ? fine : [.. grown.Where(g => g != GrassSpecies.TallFescue)], others);
            if (blue)
            {
                reasons.Add(new(GrassSpecies.KentuckyBluegrass, new("seed.mix.fescue", "Tall fescue stays at nine tenths by weight: with more bluegrass the fescue stands in clumps.", Cornell, Sureness.Published)));
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
