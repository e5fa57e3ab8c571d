using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>The step as it is said, with its figures.</summary>
internal static class StepWords
{
    private const double FasterMost = 1.35;
    private const double SlowerLeast = 0.7;

    internal static SpreadStep Of(KeptSpreader spreader, SpreadJob job, JobProgress progress, SpreadPart part, MassPerArea aim, OpeningChoice choice) => choice switch
    {
        OpeningChoice.Found found => Spread(spreader, job, progress, part, aim, found),
        OpeningChoice.TooLittle little => TooLittle(spreader, job, progress, (part, aim), little),
        OpeningChoice.TooMuch much => TooMuch(spreader, job, progress, (part, aim), much),
        OpeningChoice.Between between => Between(spreader, job, progress, (part, aim), between),
        _ => throw new InvalidOperationException("the choice is not a known one"),
    };

    internal static SpreadStep FirstGrains() => new SpreadStep.FirstGrains
    {
        Sentence = "Nothing is known of this spreader yet, so no opening can be told. Look first where its first grains fall.",
        Figures = [],
    };

    internal static SpreadStep Over(KeptSpreader spreader, SpreadJob job, JobProgress progress) => new SpreadStep.Over
    {
        Sentence = $"Stop. {Text(StepFigures.Total(job, progress))} is down, {StepFigures.Percent(progress.Done / job.Target - 1.0)} more than wanted: spread nothing more here."
            + (job.Reserve > Mass.Zero ? $" Leave the {Text(job.Reserve)} for thin spots in the bag where it is thick enough." : ""),
        Figures = StepFigures.SoFar(spreader, job, progress),
    };

    internal static SpreadStep Enough(KeptSpreader spreader, SpreadJob job, JobProgress progress) => new SpreadStep.Enough
    {
        Sentence = $"Done. {Text(StepFigures.Total(job, progress))} is down, within {StepFigures.Percent(JobProgress.Close)} of what was wanted."
            + (job.Reserve > Mass.Zero ? $" Now the {Text(job.Reserve)} kept apart go on the thin spots, by hand." : ""),
        Figures = StepFigures.SoFar(spreader, job, progress),
    };

    private static SpreadStep.Spread Spread(KeptSpreader spreader, SpreadJob job, JobProgress progress, SpreadPart part, MassPerArea aim, OpeningChoice.Found found)
    {
        var ground = Area.FromSquareMeters(progress.Open.SquareMeters - progress.PassCovered.SquareMeters);
        var putIn = Mass.FromKilograms(aim.KilogramsPerSquareMeter * ground.SquareMeters);
        var opening = spreader.Scale.Show(found.Opening);
        var how = part switch
        {
            SpreadPart.FirstHalf => $"Set it to {opening}. Put in {Text(putIn)}, half of it all, and walk the whole ground once. Then weigh what is left, or mark where it gave out.",
            SpreadPart.MoreOfFirstHalf => $"Set it to {opening}. Go over the ground once more, at right angles, with what is left of the first half, {Text(putIn)}; weigh again after.",
            SpreadPart.FinishPass => $"Leave it at {opening}. Put in {Text(putIn)} and finish the {Text(ground)} it did not reach." + MoreWords(StepFigures.More(job, progress, putIn), job),
            SpreadPart.PartOfSecondHalf => $"Set it to {opening}. Put in {Text(putIn)}, half of what is lacking, and walk at right angles to the last pass; weigh again after. One run for all of it could miss by more than {StepFigures.Percent(JobProgress.Close)}.",
            _ => $"Set it to {opening}. Put in the rest, {Text(putIn)}, and walk at right angles to the first half.",
        };
        return new(part, found.Opening, ground, aim, found.Forecast)
        {
            Sentence = how + ClosedWords(progress) + (job.Reserve > Mass.Zero ? $" The {Text(job.Reserve)} for thin spots stay in the bag." : ""),
            Figures =
            [
                .. StepFigures.Ahead(spreader, job, aim, putIn, found, progress),
                .. part == SpreadPart.FinishPass && StepFigures.More(job, progress, putIn) is { } more ? [more] : (Figure[])[],
                .. StepFigures.SoFar(spreader, job, progress),
            ],
        };
    }

    private static SpreadStep.NoOpening TooLittle(KeptSpreader spreader, SpreadJob job, JobProgress progress, (SpreadPart Part, MassPerArea Aim) run, OpeningChoice.TooLittle little)
    {
        var aim = run.Aim;
        var median = little.Forecast.Median;
        var passes = median > MassPerArea.Zero ? (int)Math.Ceiling(aim / median) : 0;
        var slower = median / aim;
        List<string> instead = [];
        if (passes is > 1 and <= 6)
        {
            instead.Add($"Leave it wide open, at {spreader.Scale.Show(little.Opening)}, and go over the ground {passes} times, each time at another angle.");
        }

        if (slower >= SlowerLeast)
        {
            instead.Add($"Walk {StepFigures.Percent(1.0 - slower)} slower, if that pace can be held.");
        }

        instead.Add("Look whether the gate opens as it should and the agitator turns; damp seed bridges over the holes.");
        return new(run.Part, aim, instead)
        {
            Sentence = $"No opening on this scale puts on {Rate(aim)}: wide open it gives about {Rate(median)}.",
            Figures = StepFigures.SoFar(spreader, job, progress),
        };
    }

    private static SpreadStep.NoOpening TooMuch(KeptSpreader spreader, SpreadJob job, JobProgress progress, (SpreadPart Part, MassPerArea Aim) run, OpeningChoice.TooMuch much)
    {
        var aim = run.Aim;
        var faster = much.Forecast.Median / aim;
        var rest = aim / job.Target;
        List<string> instead = [];
        if (faster <= FasterMost)
        {
            instead.Add($"Walk {StepFigures.Percent(faster - 1.0)} faster at {spreader.Scale.Show(much.Opening)}, if that pace can be held.");
        }

        if (rest < 0.15)
        {
            instead.Add($"Leave it: the ground lacks only {StepFigures.Percent(rest)}. Scatter the rest by hand where it looks thin.");
        }

        instead.Add("Stretch it with the same weight of dry sand or screened compost, well mixed, and enter the mixture as what is put in. Common practice, no source read.");
        instead.Add("Scatter this part by hand, half in each direction.");
        return new(run.Part, aim, instead)
        {
            Sentence = $"No opening on this scale puts on as little as {Rate(aim)}: {spreader.Scale.Show(much.Opening)}, about the least that flows, gives about {Rate(much.Forecast.Median)}.",
            Figures = StepFigures.SoFar(spreader, job, progress),
        };
    }

    private static SpreadStep.NoOpening Between(KeptSpreader spreader, SpreadJob job, JobProgress progress, (SpreadPart Part, MassPerArea Aim) run, OpeningChoice.Between between) =>
        new(run.Part, run.Aim,
        [
            $"Set it to {spreader.Scale.Show(between.Opening)}, put in only {Text(Mass.FromKilograms(run.Aim.KilogramsPerSquareMeter * progress.Open.SquareMeters))}, and stop where it gives out.",
            "Scatter this part by hand, half in each direction.",
        ])
        {
            Sentence = $"The scale is too coarse for {Rate(run.Aim)}: one step gives too little, the next too much. {spreader.Scale.Show(between.Opening)} comes nearest, with about {Rate(between.Forecast.Median)}.",
            Figures = StepFigures.SoFar(spreader, job, progress),
        };

    private static string MoreWords(Figure? more, SpreadJob job) => more is null
        ? ""
        : $" With it {Text(more)} more goes on than the {Text(job.Whole)} planned, {StepFigures.Percent(more.Value / job.Whole.Kilograms)}: have it ready before you go on.";

    private static string ClosedWords(JobProgress progress) => progress.Closed.Count == 0
        ? ""
        : $" Keep off the {Text(Area.FromSquareMeters(progress.Closed.Sum(c => c.Ground.SquareMeters)))} that already has more than wanted.";

    private static string Text(Figure figure) => FigureText.Both(figure);

    private static string Text(Mass mass) => FigureText.Both(Worked.Computed("", "", QuantityKind.Mass, mass.Kilograms, ""));

    private static string Text(Area area) => FigureText.Both(Worked.Computed("", "", QuantityKind.Area, area.SquareMeters, ""));

    private static string Rate(MassPerArea rate) => FigureText.Both(Worked.Computed("", "", QuantityKind.MassPerArea, rate.KilogramsPerSquareMeter, ""));
}
