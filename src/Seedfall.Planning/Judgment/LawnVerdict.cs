using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Judgment;

/// <summary>Judges a lawn: recover, start over, wait or cure first.</summary>
public static class LawnVerdict
{
    /// <summary>
    /// The verdict on every patch and on the lawn. A patch to be cured first, or water measured as too little, holds the whole lawn;
    /// then the calendar and the label; dormant turf and starting over decide where they are at least half the ground.
    /// </summary>
    /// <param name="lawn">The lawn as taken on.</param>
    /// <param name="choices">Season and chosen day.</param>
    /// <param name="patches">The patches as the plan sees them, one for each patch of the lawn.</param>
    /// <param name="timing">The season's timing.</param>
    /// <param name="water">The water proof; null where none could be made.</param>
    /// <param name="earliestSeeding">First day past sprays allow seeding; null where nothing stands in the way.</param>
    /// <param name="tables">The trade's tables.</param>
    public static Verdict Judge(
        Lawn lawn,
        Choices choices,
        IReadOnlyList<PatchSummary> patches,
        SeasonTiming timing,
        WaterProof? water,
        DateOnly? earliestSeeding,
        TradeTables tables)
    {
        lawn = SurveyedPatch.Of(lawn);
        PatchVerdict[] judged = [.. lawn.Patches.Select(patch => PatchJudging.Judge(patch, Summary(patches, patch), tables))];
        var dry = SeasonReasons.Water(water);
        var wait = SeasonReasons.Wait(choices, timing, earliestSeeding);
        IReadOnlyList<Reason> notes = [.. SeasonReasons.Notes(timing, water).Where(note => note.Figure?.Id != (wait?.Reason.Figure?.Id ?? ""))];
        if (dry is not null || judged.Any(p => p.Kind == VerdictKind.CureFirst))
        {
            return Cure(lawn, judged, dry, wait, notes);
        }

        if (wait is not null)
        {
            return new Verdict(VerdictKind.Wait, Waits(wait), [wait.Reason, .. Deciding(judged), .. notes], judged, wait.Until, wait.For);
        }

        if (Share(patches, judged, VerdictKind.Wait) >= 0.5)
        {
            return Dormant(choices, timing, judged, notes);
        }

        var over = Share(patches, judged, VerdictKind.StartOver) >= 0.5;
        return new Verdict(
            over ? VerdictKind.StartOver : VerdictKind.Recover,
            over ? "Start over: on most of this lawn too little lives to be worth saving." : "Recover: enough of this lawn lives to bring it back by feeding, watering and overseeding.",
            [.. Deciding(judged, over ? VerdictKind.StartOver : VerdictKind.Recover), .. notes],
            judged);
    }

    /// <summary>What the verdict had to assume about the lawn: thatch, grubs, weeds, cause not entered.</summary>
    public static IReadOnlyList<Assumption> Assumptions(Lawn lawn) => [.. SurveyedPatch.Of(lawn).Patches.Select(WalkOver.Missing).OfType<Assumption>()];

    private static Verdict Cure(Lawn lawn, PatchVerdict[] judged, Reason? dry, Waiting? wait, IReadOnlyList<Reason> notes)
    {
        var sick = lawn.Patches.Where(patch => judged.Any(p => p.PatchId == patch.Id && p.Kind == VerdictKind.CureFirst)).Select(patch => patch.Name).ToArray();
        var sentence = (sick.Length, dry) switch
        {
            (0, _) => "Cure first: the water cannot be put on, and seed without water is money lost.",
            (_, null) => $"Cure first: what thinned {Named(sick)} is still there.",
            _ => $"Cure first: what thinned {Named(sick)} is still there, and the water cannot be put on.",
        };
        IReadOnlyList<Reason> reasons =
        [
            .. Deciding(judged, VerdictKind.CureFirst).Where(r => judged.Any(p => p.Kind == VerdictKind.CureFirst && p.Reasons.Contains(r))),
            .. dry is null ? Array.Empty<Reason>() : [dry],
            .. wait is null ? Array.Empty<Reason>() : [wait.Reason],
            .. Deciding(judged).Where(r => !judged.Any(p => p.Kind == VerdictKind.CureFirst && p.Reasons.Contains(r))),
            .. notes,
        ];
        return new Verdict(VerdictKind.CureFirst, sentence, reasons, judged);
    }

    private static Verdict Dormant(Choices choices, SeasonTiming timing, PatchVerdict[] judged, IReadOnlyList<Reason> notes)
    {
        var from = choices.Today ?? timing.SeedDown?.AddDays(-Thresholds.DormantDays);
        return new Verdict(
            VerdictKind.Wait,
            "Wait: most of this lawn is dormant, not dead. Water it and count again.",
            [.. Deciding(judged, VerdictKind.Wait), .. notes],
            judged,
            from?.AddDays(Thresholds.DormantDays),
            "a second count of living cover after two weeks of water");
    }

    private static string Waits(Waiting wait) => wait.Until is { } until
        ? $"Wait until {FigureText.DateText(until)}: {wait.For}."
        : $"Wait: {wait.For}.";

    /// <summary>Reasons of all patches, those of the deciding kind first.</summary>
    private static IEnumerable<Reason> Deciding(IEnumerable<PatchVerdict> judged, VerdictKind? first = null) =>
        judged.OrderBy(p => p.Kind == first ? 0 : 1).SelectMany(p => p.Reasons);

    private static double Share(IReadOnlyList<PatchSummary> patches, IEnumerable<PatchVerdict> judged, VerdictKind kind)
    {
        var all = patches.Sum(p => p.Area.Value);
        var ids = judged.Where(p => p.Kind == kind).Select(p => p.PatchId).ToHashSet();
        return all > 0.0 ? patches.Where(p => ids.Contains(p.Id)).Sum(p => p.Area.Value) / all : 0.0;
    }

    private static PatchSummary Summary(IReadOnlyList<PatchSummary> patches, Patch patch) =>
        patches.FirstOrDefault(p => p.Id == patch.Id) ?? throw new ArgumentException($"no summary of patch {patch.Id}", nameof(patches));

    private static string Named(IReadOnlyList<string> names) => names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
}
