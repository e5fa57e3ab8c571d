using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

/// <summary>What would make the water enough: each remedy is the same lawn, proved again with one thing changed.</summary>
internal static class Remedies
{
    internal const int Shown = 5;

    /// <summary>The best remedies, those that mend it whole first and easier before harder.</summary>
    internal static IReadOnlyList<Remedy> For(WaterScene scene, WaterTrial trial, TriedPhase worst, SeasonTiming timing)
    {
        var missing = trial.MissingRounds;
        return
        [
            .. Candidates(scene, worst, timing)
                .Select((candidate, ease) => (Candidate: candidate, Ease: ease, Left: candidate.MissingRounds()))
                .Where(t => t.Left < missing - 1e-9)
                .OrderBy(t => t.Left)
                .ThenBy(t => t.Ease)
                .Take(Shown)
                .Select(t => Shape(t.Candidate, t.Left, missing)),
        ];
    }

    private static IEnumerable<RemedyCandidate> Candidates(WaterScene scene, TriedPhase worst, SeasonTiming timing) =>
    [
        .. HoursRemedies.Of(scene, worst),
        .. GroundRemedies.Of(scene, worst, timing),
        .. KitRemedies.Of(scene, worst),
        .. StageRemedies.Of(scene, timing),
    ];

    private static Remedy Shape(RemedyCandidate candidate, double left, double missing)
    {
        var rest = left <= 0.0
            ? candidate.Enough
            : string.Create(CultureInfo.InvariantCulture, $"By itself it still leaves {Math.Ceiling(left):0} of {Math.Ceiling(missing):0} missing rounds.");
        return new Remedy($"water.remedy.{candidate.Id}", $"{candidate.Sentence} {rest}", candidate.Effect?.Invoke() ?? Left(candidate.Id, left, missing));
    }

    private static Figure Left(string id, double left, double missing) => new(
        $"water.remedy.{id}.left", "Rounds a week still missing", QuantityKind.Number, left, new Working(
            "the water proof made again with this one change, missing rounds summed over the phases",
            [new("before", "rounds a week missing without it", missing, "")],
            "this plan's water proof",
            Sureness.Computed));
}

/// <summary>Something that could be changed.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Sentence">What to do.</param>
/// <param name="MissingRounds">Rounds a week the proof with it leaves missing.</param>
/// <param name="Effect">The number it yields; null for the rounds it leaves.</param>
internal sealed record RemedyCandidate(string Id, string Sentence, Func<double> MissingRounds, Func<Figure>? Effect)
{
    /// <summary>What is said where nothing is missing with it.</summary>
    internal string Enough { get; init; } = "With that alone the water is enough.";

    /// <summary>A remedy that is one changed scene.</summary>
    internal static RemedyCandidate Of(string id, string sentence, WaterScene changed, Func<WaterScene, Figure>? effect = null) =>
        new(id, sentence, () => WaterTrial.Of(changed, ProofDetail.Existence).MissingRounds, effect is null ? null : () => effect(changed));

    /// <summary>The phase of another scene that stands where the worst one did, as first fitted.</summary>
    internal static PhaseFit Same(WaterScene scene, TriedPhase worst) => WaterFitting.Fit(scene).First(fit => fit.Need.Phase.Id == worst.Fit.Need.Phase.Id);

    /// <summary>Minutes one round then takes, set after set.</summary>
    internal static Figure RoundLength(string id, string how, WaterScene scene, TriedPhase worst) => new(
        $"water.remedy.{id}.round", "Minutes one round then takes, set after set", QuantityKind.Minutes, Same(scene, worst).RoundMinutes, new Working(
            how, [new("before", "minutes for one round now", worst.Fit.RoundMinutes, "min")], "this plan's water proof", Sureness.Computed));
}
