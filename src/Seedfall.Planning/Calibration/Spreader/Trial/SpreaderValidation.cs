using Seedfall.Engine.Numerics;

namespace Seedfall.Planning.Calibration.Spreader.Trial;

/// <summary>One way on one family of made-up spreaders.</summary>
/// <param name="Landed">Share with the rate over both halves within 10 % of the target on all of the ground; a refusal did not land.</param>
/// <param name="Within5">The same within 5 %.</param>
/// <param name="MeanOff">Mean of |rate / target - 1| on the worst part of the ground, refusals left out.</param>
/// <param name="Over">Share more than 10 % over.</param>
/// <param name="Passes">Mean times the ground was walked.</param>
/// <param name="Refused">Share in which it was said that no opening does it.</param>
public sealed record SpreaderScore(string Scene, string Family, OpeningWay Way, int Spreaders, double Landed, double Within5, double MeanOff, double Over, double Passes, double Refused);

/// <summary>Half, correct, half on made-up spreaders, beside correcting in proportion and beside somebody who knows the curve.</summary>
public static class SpreaderValidation
{
    private const double Close = 0.10;
    private const double Closer = 0.05;

    /// <summary>The scenes, in the order they are scored.</summary>
    public static IReadOnlyDictionary<string, string> Scenes { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["blind"] = "never used before; the first half in as many goes as it needs",
        ["blind-one-go"] = "never used before; the first half in one go whatever it puts on",
        ["known"] = "one earlier job with another material, on another day",
    };

    /// <summary>Every scene, family and way, and all families together. The same seed gives the same numbers.</summary>
    /// <param name="spreaders">Spreaders of each family, at least 1.</param>
    /// <param name="seed">Decides them and their noise.</param>
    public static IReadOnlyList<SpreaderScore> Score(int spreaders, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spreaders);
        List<SpreaderScore> scores = [];
        foreach (var scene in Scenes.Keys)
        {
            foreach (var way in Enum.GetValues<OpeningWay>())
            {
                var families = Enum.GetValues<FlowFamily>().Select(f => (Family: f, Outcomes: Outcomes(scene, f, way, spreaders, seed))).ToList();
                scores.AddRange(families.Select(f => Of(scene, f.Family.ToString(), way, f.Outcomes)));
                scores.Add(Of(scene, "all", way, [.. families.SelectMany(f => f.Outcomes)]));
            }
        }

        return scores;
    }

    private static List<TrialOutcome> Outcomes(string scene, FlowFamily family, OpeningWay way, int spreaders, ulong seed)
    {
        var chance = new SplitMix64(seed + 1000UL * (ulong)family);
        List<TrialOutcome> outcomes = [];
        for (var k = 0; k < spreaders; k++)
        {
            var draw = TrialDraw.Of(family, chance);
            IReadOnlyList<SpreaderEntry> earlier = [];
            if (scene == "known")
            {
                var before = new SpreaderTrial(draw, [], SpreadMaterial.Granules, draw.Shift, draw.Seed + 1UL);
                before.Run(OpeningWay.Fit, oneGo: false);
                earlier = before.Entries;
            }

            outcomes.Add(new SpreaderTrial(draw, earlier, SpreadMaterial.CoarseSeed, 0.0, draw.Seed).Run(way, scene == "blind-one-go"));
        }

        return outcomes;
    }

    private static SpreaderScore Of(string scene, string family, OpeningWay way, List<TrialOutcome> outcomes)
    {
        var spread = outcomes.Where(o => !o.Refused).ToList();
        return new(
            scene,
            family,
            way,
            outcomes.Count,
            Share(outcomes, o => !o.Refused && Math.Abs(o.Worst) <= Close),
            Share(outcomes, o => !o.Refused && Math.Abs(o.Worst) <= Closer),
            spread.Count > 0 ? spread.Average(o => Math.Abs(o.Worst)) : 0.0,
            Share(outcomes, o => o.Worst > Close),
            outcomes.Average(o => (double)o.Passes),
            Share(outcomes, o => o.Refused));
    }

    private static double Share(List<TrialOutcome> outcomes, Func<TrialOutcome, bool> test) => outcomes.Count(test) / (double)outcomes.Count;
}
