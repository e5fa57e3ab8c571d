using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>What the feedings of a season are ruled by.</summary>
/// <param name="Steps">The feedings as wanted.</param>
/// <param name="Fed">What the field log holds of them.</param>
/// <param name="GrassMostPoundsPerM">Most nitrogen the seeded grasses want in a year, lb per 1,000 sq ft.</param>
internal sealed record FeedScene(Lawn Lawn, RulePack Pack, SeedingWork Work, IReadOnlyList<FeedStep> Steps, FedRecord Fed, double GrassMostPoundsPerM);

/// <summary>The feedings of a season held to the rules, without and with what the field log holds of them.</summary>
internal static class FeedRuling
{
    /// <summary>Id of what was on the ground before the season's feedings.</summary>
    internal const string BeforeId = "before";

    /// <summary>Id of what went on beside the season's feedings.</summary>
    internal const string BesidesId = "besides";

    /// <summary>The feedings as if none of them were recorded yet.</summary>
    internal static IReadOnlyList<RuledStep> Planned(FeedScene scene) => All(scene, Before(scene), null);

    /// <summary>
    /// The feedings after what is recorded: one that is done stays as it was planned and no rule is put to it again; one done in part
    /// is ruled for the rest of the ground; those to come are held to what all of the record leaves of the year.
    /// </summary>
    /// <param name="scene">What rules them.</param>
    /// <param name="planned">As <see cref="Planned"/> gave them.</param>
    /// <returns>The feedings, and the year's nitrogen, recorded and still planned.</returns>
    internal static (IReadOnlyList<RuledStep> Ruled, NitrogenLedger Year) Followed(FeedScene scene, IReadOnlyList<RuledStep> planned)
    {
        var year = Before(scene);
        foreach (var line in planned.SelectMany(step => Recorded(scene.Fed, step)).Concat(scene.Fed.Besides.Select(entry => Line(BesidesId, "beside the feedings planned", entry))))
        {
            year.Add(line);
        }

        return (All(scene, year, planned), year);
    }

    /// <summary>What is recorded in place of a feeding; where no analysis is written, what was planned.</summary>
    internal static IEnumerable<NitrogenLine> Recorded(FedRecord fed, RuledStep planned)
    {
        var (step, entries) = (planned.Step, fed.For(planned.Step.Id)?.Entries ?? []);
        foreach (var entry in entries.Where(e => FedRecord.PoundsPerM(e) is not null))
        {
            yield return Line(step.Id, $"{step.Title}, recorded", entry);
        }

        var unread = entries.Where(e => FedRecord.PoundsPerM(e) is null).Select(e => e.PatchId).Distinct().ToList();
        if (unread.Count > 0 && planned.NitrogenPoundsPerM is { } pounds)
        {
            yield return new(step.Id, $"{step.Title}, recorded without analysis: as planned", unread.Contains(null) ? null : [.. unread.OfType<string>()], pounds);
        }
    }

    private static NitrogenLine Line(string id, string name, LogEntry.Applied entry) =>
        new(id, name, entry.PatchId is { } patch ? [patch] : null, FedRecord.PoundsPerM(entry) ?? 0.0) { IsRecorded = true };

    /// <param name="planned">The feedings without the record, where it is followed; null where it is not.</param>
    private static List<RuledStep> All(FeedScene scene, NitrogenLedger spent, IReadOnlyList<RuledStep>? planned)
    {
        var rules = new FeedRules(scene.Pack, scene.Work, scene.Lawn.Soil, spent, scene.GrassMostPoundsPerM, planned is not null);
        var ruled = new List<RuledStep>();
        foreach (var step in scene.Steps)
        {
            var fed = planned is null ? null : scene.Fed.For(step.Id);
            ruled.Add(fed is { IsDone: true }
                ? planned![ruled.Count] with { Walls = [], Advice = [] }
                : rules.Rule(step, ruled.Count > 0 ? ruled[^1].Step.Date : null, fed?.OpenPatches));
        }

        return ruled;
    }

    /// <summary>Nitrogen of the year before the season's feedings: what was typed, or what the record adds up to where that is more.</summary>
    private static NitrogenLedger Before(FeedScene scene)
    {
        var year = new NitrogenLedger(scene.Fed.Grounds);
        var recorded = new NitrogenLedger(scene.Fed.Grounds);
        foreach (var entry in scene.Fed.Before)
        {
            recorded.Add(Line(BeforeId, "", entry));
        }

        var typed = scene.Lawn.NitrogenThisYear?.PoundsPerThousandSquareFeet ?? 0.0;
        foreach (var ground in scene.Fed.Grounds)
        {
            year.Add(new(BeforeId, "this year before seed-down", [ground], Math.Max(typed, recorded.On(ground))) { IsRecorded = true });
        }

        return year;
    }
}
