using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>Remedies bought: better sprinklers, none moved, a timer, a second tap.</summary>
internal static class KitRemedies
{
    /// <summary>Low-quarter uniformity of a good sprinkler well set: multi-stream rotors and well spaced heads reach it.</summary>
    private static readonly Fraction Good = SprinklerDefaults.For(SprinklerKind.MultiStreamRotor).LowQuarter;

    internal static IEnumerable<RemedyCandidate> Of(WaterScene scene, TriedPhase worst)
    {
        var multiplier = WaterUniformity.RunTimeMultiplier(Good);
        if (scene.Sets.Any(set => !set.Hand && set.RunTimeMultiplier > multiplier + 1e-9))
        {
            yield return RemedyCandidate.Of(
                "better-sprinkler",
                FormattableString.Invariant($"Use sprinklers that water more evenly, or set them so: a low-quarter uniformity of {Good.Percent:0} % needs shorter runs for the same driest place."),
                scene with { Sets = [.. scene.Sets.Select(set => set.Hand || set.RunTimeMultiplier <= multiplier ? set : set with { RunTimeMultiplier = multiplier })] },
                changed => RemedyCandidate.RoundLength("better-sprinkler", "run-time multiplier of the better uniformity in place of today's", changed, worst));
        }

        if (SetTimers.AnyByHand(scene) && scene.Sets.Any(set => !set.Hand))
        {
            yield return RemedyCandidate.Of("timer", "Put a timer on the tap, with enough starts: rounds then run while nobody is there.", scene with { Lines = scene.Lines.WithTimers() });
        }

        if (scene.Sets.Any(set => set.Positions > 1) && scene.MinutesPerMove > 0)
        {
            var extra = scene.Sets.Sum(set => set.Positions - 1);
            yield return RemedyCandidate.Of(
                "no-moves",
                $"Set {extra} more sprinkler{(extra == 1 ? "" : "s")} so that none is moved, on a manifold with a timer.",
                scene with { MinutesPerMove = 0, Sets = [.. scene.Sets.SelectMany(Standing)], Lines = scene.Lines.WithTimers() },
                changed => RemedyCandidate.RoundLength("no-moves", "no minutes for moving", changed, worst));
        }

        if (scene.Sets.Count > 1 || scene.Sets.Any(set => set.Positions > 1))
        {
            var halved = scene.WithTap() with { Sets = [.. scene.Sets.SelectMany(Split)] };
            yield return RemedyCandidate.Of(
                "second-tap",
                "Run a second tap of the same strength beside the first, two sprinklers at once; measure both open together before relying on it.",
                halved,
                changed => RemedyCandidate.RoundLength("second-tap", "sets divided between the taps", changed, worst));
        }
    }

    /// <summary>One sprinkler in every position.</summary>
    private static IEnumerable<SetFacts> Standing(SetFacts set) => set.Positions == 1
        ? [set]
        : Enumerable.Range(1, set.Positions).Select(p => set with { Positions = 1, AreaM2 = set.AreaM2 / set.Positions, Key = FormattableString.Invariant($"{set.Key}.{p}") });

    /// <summary>Moved sprinklers divide their positions between the taps; without that one moved set could not run on two.</summary>
    private static IEnumerable<SetFacts> Split(SetFacts set)
    {
        if (set.Positions < 2)
        {
            return [set with { Tap = null }];
        }

        var first = set.Positions / 2;
        return
        [
            set with { Tap = null, Positions = first, AreaM2 = set.AreaM2 * first / set.Positions },
            set with { Tap = null, Positions = set.Positions - first, AreaM2 = set.AreaM2 * (set.Positions - first) / set.Positions, Key = set.Key + "b" },
        ];
    }
}
