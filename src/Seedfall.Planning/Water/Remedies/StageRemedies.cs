using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

/// <summary>Seeding in stages: which patches first, and whether there is time for the next before the window closes.</summary>
internal static class StageRemedies
{
    /// <summary>Days from one stage's seed-down to the next: the one before is up. Common practice, no source read.</summary>
    internal const int DaysBetween = 21;

    private const int MostStages = 4;

    internal static IEnumerable<RemedyCandidate> Of(WaterScene scene, SeasonTiming timing)
    {
        if (ByPatch(scene) is { Count: > 1 } stages)
        {
            var first = FirstDay(scene, stages, timing);
            yield return new RemedyCandidate(
                FormattableString.Invariant($"stages-{stages.Count}"), Sentence(first, stages, timing), () => 0.0, () => TimeLeft(first, scene, stages, timing))
            {
                Enough = "The water of every stage is then enough.",
            };
        }
        else
        {
            foreach (var parts in ByPosition(scene))
            {
                yield return RemedyCandidate.Of(
                    FormattableString.Invariant($"stages-{parts}"),
                    FormattableString.Invariant($"Seed in {parts} stages, the next when the one before is up, about three weeks apart and only while the window holds."),
                    scene with { Stages = parts },
                    _ => Part(parts, scene));
            }
        }
    }

    /// <summary>
    /// Patches in stages, barest first: a patch joins a stage where the water still is enough, with the patches of earlier stages watered as
    /// seedlings beside it. Null where some patch fits no stage.
    /// </summary>
    private static List<List<PatchBed>>? ByPatch(WaterScene scene)
    {
        var left = scene.Ground.Beds.OrderBy(bed => bed.Ground.TurfShare).ThenByDescending(bed => bed.AreaM2).ToList();
        var (stages, up) = (new List<List<PatchBed>>(), new List<PatchBed>());
        while (left.Count > 0)
        {
            var stage = new List<PatchBed>();
            foreach (var bed in left.ToArray())
            {
                if (WaterTrial.Of(Staged(scene, [.. stage, bed], up), ProofDetail.Existence).Holds)
                {
                    stage.Add(bed);
                    left.Remove(bed);
                }
            }

            if (stage.Count == 0 || stages.Count == MostStages)
            {
                return null;
            }

            stages.Add(stage);
            up.AddRange(stage);
        }

        return stages;
    }

    /// <summary>The lawn with some patches sown now and some already up, whose seedlings' daily water is divided over the same rounds.</summary>
    private static WaterScene Staged(WaterScene scene, IReadOnlyList<PatchBed> sown, IReadOnlyList<PatchBed> up)
    {
        var seedlings = scene.Needs.First(need => need.Phase.Id == "seedlings");
        HashSet<string> all = [.. sown.Concat(up).Select(bed => bed.PatchId)], now = [.. sown.Select(bed => bed.PatchId)];
        PhaseNeed Of(PhaseNeed need) => need with
        {
            Patches =
            [
                .. need.Patches.Where(p => all.Contains(p.PatchId)).Select(p => need.Phase.Id != "seedbed" || now.Contains(p.PatchId)
                    ? p
                    : p with { DepthMm = seedlings.Patches.First(s => s.PatchId == p.PatchId).DepthMm * seedlings.RoundsPerDay / need.RoundsPerDay }),
            ],
        };
        return scene with
        {
            Sets = [.. scene.Sets.Where(set => set.PatchIds.Any(all.Contains))],
            Ground = scene.Ground with { Beds = [.. scene.Ground.Beds.Where(bed => all.Contains(bed.PatchId))] },
            Needs = [.. scene.Needs.Select(Of)],
        };
    }

    /// <summary>Where no patch by itself can be kept wet, parts of each: the fewest that mend it, up to four; the most possible where none does.</summary>
    private static IEnumerable<int> ByPosition(WaterScene scene)
    {
        var parts = Math.Min(MostStages, scene.Sets.Sum(set => set.Positions));
        for (var stages = 2; stages <= parts; stages++)
        {
            if (stages == parts || WaterFitting.Fit(scene with { Stages = stages }).Where(fit => fit.Need.Binding).All(fit => fit.ShortMinutes <= 0.0))
            {
                return [stages];
            }
        }

        return [];
    }

    /// <summary>
    /// The plan's day; or an earlier one still inside the window, where the last stage would otherwise fall after its end and the water of
    /// every stage is enough then too.
    /// </summary>
    private static DateOnly FirstDay(WaterScene scene, List<List<PatchBed>> stages, SeasonTiming timing)
    {
        var planned = scene.Ground.Phases.First(p => p.Phase.Id == "seedbed").Phase.From;
        if (timing.Window is not { } window || scene.Ground.Later is not { } on)
        {
            return planned;
        }

        var earlier = window.Closes.AddDays(-DaysBetween * (stages.Count - 1));
        return planned <= earlier || earlier < window.Opens || !Holds(scene.On(on(earlier)), stages) ? planned : earlier;
    }

    private static bool Holds(WaterScene scene, List<List<PatchBed>> stages)
    {
        var up = new List<PatchBed>();
        foreach (var stage in stages)
        {
            if (!WaterTrial.Of(Staged(scene, stage, up), ProofDetail.Existence).Holds)
            {
                return false;
            }

            up.AddRange(stage);
        }

        return true;
    }

    private static string Sentence(DateOnly first, List<List<PatchBed>> stages, SeasonTiming timing)
    {
        var parts = stages.Select((stage, k) => FormattableString.Invariant($"{string.Join(" and ", stage.Select(bed => bed.Name))} {(k == 0 ? "first, about" : "about")} {first.AddDays(k * DaysBetween):yyyy-MM-dd}"));
        var last = first.AddDays((stages.Count - 1) * DaysBetween);
        var time = timing.Window is not { } window ? "Whether the last stage still has time is not known: there is no window."
            : last == window.Closes ? FormattableString.Invariant($"The last stage falls on the day the window closes, {window.Closes:yyyy-MM-dd}.")
            : last < window.Closes ? FormattableString.Invariant($"The last stage still falls {window.Closes.DayNumber - last.DayNumber} days before the window closes on {window.Closes:yyyy-MM-dd}.")
            : FormattableString.Invariant($"The last stage would fall {last.DayNumber - window.Closes.DayNumber} days after the window closes on {window.Closes:yyyy-MM-dd}: leave it for the next season.");
        return $"Seed in {stages.Count} stages: {string.Join("; then ", parts)}. {time}";
    }

    private static Figure TimeLeft(DateOnly first, WaterScene scene, List<List<PatchBed>> stages, SeasonTiming timing)
    {
        var last = first.AddDays((stages.Count - 1) * DaysBetween);
        return timing.Window is { } window
            ? new Figure(FormattableString.Invariant($"water.remedy.stages-{stages.Count}.days"), "Days left in the window at the last stage's seed-down", QuantityKind.Number, window.Closes.DayNumber - last.DayNumber, new Working(
                "window's end less seed-down of the first stage less 21 days for each stage after it",
                [new("n", "stages", stages.Count, ""), new("b", "days between stages", DaysBetween, "d")],
                "this plan's window; three weeks between stages common practice, no source read",
                Sureness.CommonPractice,
                "Below nothing where the window closes first."))
            : Ground(stages.Count, stages[0].Sum(bed => bed.AreaM2), scene);
    }

    private static Figure Part(int stages, WaterScene scene) => Ground(stages, scene.Sets.Sum(set => set.AreaM2) / stages, scene);

    private static Figure Ground(int stages, double areaM2, WaterScene scene) => new(FormattableString.Invariant($"water.remedy.stages-{stages}.area"), "Ground seeded first", QuantityKind.Area, areaM2, new Working(
        "A of the first stage",
        [new("A", "ground to be watered", new Area(scene.Sets.Sum(set => set.AreaM2)).SquareFeet, "sq ft"), new("n", "stages", stages, "")],
        "arithmetic",
        Sureness.Computed));
}
