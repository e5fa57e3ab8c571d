using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Materials;

/// <summary>What the record makes of the feedings, as figures and sentences.</summary>
internal static class RecordedFigures
{
    private const string PerM = "lb N per 1,000 sq ft";

    private const string Source = "record of applications: what is neither struck nor corrected by a later record";

    /// <param name="scene">What the feedings were ruled by.</param>
    /// <param name="planned">The feedings as if none were recorded.</param>
    /// <param name="feedings">The feedings as they stand.</param>
    /// <param name="year">The year's nitrogen.</param>
    internal static RecordedFeeding Of(FeedScene scene, IReadOnlyList<RuledStep> planned, IReadOnlyList<Feeding> feedings, NitrogenLedger year) => new(
        [.. planned.Select(step => Step(scene, step, feedings)), .. scene.Fed.Besides.Count == 0 ? [] : new[] { Besides(scene, year) }],
        Worked.Computed(
            "feed.season.n.planned", "nitrogen this season, as planned without the record", QuantityKind.MassPerArea,
            Canonical(planned.Sum(step => step.NitrogenPoundsPerM ?? 0.0)), "sum over the feedings", null,
            [.. planned.Where(step => step.NitrogenPoundsPerM is not null).Select(step => new WorkingInput(step.Step.Id, step.Step.Title, step.NitrogenPoundsPerM!.Value, PerM))]),
        Summed("feed.year.n", "nitrogen this year", scene.Lawn, year));

    /// <summary>Nitrogen of the season as it really stands: recorded, and still planned.</summary>
    internal static Figure Season(Lawn lawn, NitrogenLedger year) => Summed("feed.season.n", "nitrogen this season", lawn, year.Only(line => line.Id != FeedRuling.BeforeId));

    private static RecordedStep Step(FeedScene scene, RuledStep planned, IReadOnlyList<Feeding> feedings)
    {
        var (step, fed) = (planned.Step, scene.Fed.For(planned.Step.Id));
        var was = planned.NitrogenPoundsPerM is { } pounds ? FeedingFigures.Nitrogen(planned, $"feed.{step.Id}.n.planned", $"{step.Title}: nitrogen, as planned", MassPerArea.FromPoundsPerThousandSquareFeet(pounds)) : null;
        var applied = fed is null ? null : Applied(step.Id, step.Title, scene, fed.Entries);
        var left = fed is { IsDone: true } ? null : feedings.FirstOrDefault(f => f.Id == step.Id)?.NitrogenRate;
        return new(step.Id, step.Title, [.. fed?.Entries.Select(e => e.Id) ?? []], was, applied, left, RecordedWords.Of(scene.Lawn, fed, was, applied, left));
    }

    private static RecordedStep Besides(FeedScene scene, NitrogenLedger year)
    {
        const string Title = "Beside the feedings planned";
        var entries = scene.Fed.Besides;
        var applied = Applied(FeedRuling.BesidesId, Title, scene, entries);
        return new(FeedRuling.BesidesId, Title, [.. entries.Select(e => e.Id)], null, applied, null, RecordedWords.Besides(entries, applied));
    }

    /// <summary>What came together on the ground that got most of some records; null where none has an analysis.</summary>
    private static Figure? Applied(string id, string title, FeedScene scene, IReadOnlyList<LogEntry.Applied> entries)
    {
        var read = entries.Where(e => FedRecord.PoundsPerM(e) is not null).ToList();
        if (read.Count == 0)
        {
            return null;
        }

        var (rate, patch) = YearTotals.Heaviest(read.Select(e => (e.PatchId, FedRecord.PoundsPerM(e)!.Value)));
        return Worked.Sourced(
            $"feed.{id}.n.recorded", $"{title}: nitrogen, as recorded", QuantityKind.MassPerArea, Canonical(rate), "sum of N / A over the records that came together on one piece of ground", Source, Sureness.Measured,
            Where(scene.Lawn, patch),
            [.. read.Where(e => e.PatchId is null || e.PatchId == patch).SelectMany((e, i) => new WorkingInput[]
            {
                new(FormattableString.Invariant($"N{i + 1}"), $"nitrogen in {e.What.Product}, {FigureText.DateText(e.Day)}", Nutrients.NitrogenOf(e.What).Pounds, "lb"),
                new(FormattableString.Invariant($"A{i + 1}"), "ground it went on", YearTotals.Ground(e).ThousandSquareFeet, "1,000 sq ft"),
            })]);
    }

    private static Figure Summed(string id, string label, Lawn lawn, NitrogenLedger ledger)
    {
        var ground = ledger.Heaviest;
        return new(id, label, QuantityKind.MassPerArea, Canonical(ledger.On(ground)), new Working(
            "sum on the ground that gets most: what is recorded in the place of what was planned, and what is still planned",
            [.. ledger.Lines.Where(line => line.IsOn(ground) && line.PoundsPerM > 0.0).GroupBy(line => (line.Id, line.Name)).Select(g => new WorkingInput(g.Key.Id, g.Key.Name, g.Sum(line => line.PoundsPerM), PerM))],
            $"{Source}; and the feedings planned",
            Sureness.Computed,
            lawn.Patches.Count == 1 ? null : Where(lawn, ground)));
    }

    private static string Where(Lawn lawn, string? patch) => patch is null ? "On the whole lawn." : $"On {lawn.Patches.FirstOrDefault(p => p.Id == patch)?.Name ?? patch}, with what the whole lawn got.";

    private static double Canonical(double poundsPerM) => MassPerArea.FromPoundsPerThousandSquareFeet(poundsPerM).KilogramsPerSquareMeter;
}
