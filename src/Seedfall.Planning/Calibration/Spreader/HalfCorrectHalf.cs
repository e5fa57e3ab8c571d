using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>
/// Half, correct, half: the first half starts low, is weighed, and corrects the opening for the rest. The first half may take more than
/// one go where the spreader is not known: what is missing can be added, what is too much cannot be taken back.
/// </summary>
public static class HalfCorrectHalf
{
    /// <summary>From this share of the target on, the first half counts as down.</summary>
    public const double HalfDown = 0.35;

    /// <summary>No run may have a greater chance than this of bringing the total over the target and its tolerance.</summary>
    public const double OverChance = 0.05;

    /// <summary>Lacking less than this share of the target is not worth another walk (UMass Extension, Rotary Spreader Calibration).</summary>
    public const double NotWorth = SpreaderOutput.Tolerance;

    /// <summary>The rest goes on in one run only where the chance of coming this close is at least so; else in two.</summary>
    public const double SureEnough = 0.9;

    private const int MostPasses = 6;

    /// <summary>The next step of a job.</summary>
    public static SpreadStep Next(KeptSpreader spreader, SpreadJob job) => Next(spreader, job, oneGo: false);

    /// <summary>The same, with the first half in one go whatever it put on where <paramref name="oneGo"/> is true.</summary>
    internal static SpreadStep Next(KeptSpreader spreader, SpreadJob job, bool oneGo)
    {
        ArgumentNullException.ThrowIfNull(spreader);
        ArgumentNullException.ThrowIfNull(job);
        if (!spreader.Known)
        {
            return StepWords.FirstGrains();
        }

        var progress = JobProgress.Of(spreader, job);
        if (progress.PassCovered > Area.Zero)
        {
            return Finish(spreader, job, progress);
        }

        var (targetKg, doneKg) = (job.Target.KilogramsPerSquareMeter, progress.Done.KilogramsPerSquareMeter);
        if (doneKg > targetKg * (1.0 + JobProgress.Close))
        {
            return StepWords.Over(spreader, job, progress);
        }

        if (doneKg >= targetKg * (1.0 - NotWorth))
        {
            return StepWords.Enough(spreader, job, progress);
        }

        var fit = FlowFit.Of(spreader, job.Ahead);
        var most = MassPerArea.FromKilogramsPerSquareMeter(targetKg * (1.0 + JobProgress.Close) - doneKg);
        var slack = job.Target * JobProgress.Close;
        var lacking = MassPerArea.FromKilogramsPerSquareMeter(targetKg - doneKg);
        if (doneKg < HalfDown * targetKg && !(oneGo && doneKg > 0.0))
        {
            // Ground left over after a part was closed has had no first half; it gets one now.
            var aim = MassPerArea.FromKilogramsPerSquareMeter(0.5 * targetKg - doneKg);
            var which = progress.Runs.Any(r => r.Used > Mass.Zero) ? SpreadPart.MoreOfFirstHalf : SpreadPart.FirstHalf;
            if (OpeningChoice.For(fit, spreader.Scale, aim, most, OverChance) is var half and not OpeningChoice.TooMuch)
            {
                return StepWords.Of(spreader, job, progress, which, aim, half);
            }
        }

        var whole = OpeningChoice.Closest(fit, spreader.Scale, lacking - slack, lacking + slack);
        if (lacking <= slack && whole is not OpeningChoice.Found { Flows: true })
        {
            return StepWords.Enough(spreader, job, progress);
        }

        var sure = (oneGo || progress.Passes >= MostPasses) && whole is OpeningChoice.Found ? 0.0 : SureEnough;
        return whole is OpeningChoice.Found found && found.Chance(lacking - slack, lacking + slack) >= sure
            || OpeningChoice.For(fit, spreader.Scale, lacking / 2.0, most, OverChance) is not OpeningChoice.Found part
            ? StepWords.Of(spreader, job, progress, SpreadPart.SecondHalf, lacking, whole)
            : StepWords.Of(spreader, job, progress, SpreadPart.PartOfSecondHalf, lacking / 2.0, part);
    }

    /// <summary>The pass gave out before the end: its rest gets what the rest of the ground got, at the same opening.</summary>
    private static SpreadStep Finish(KeptSpreader spreader, SpreadJob job, JobProgress progress)
    {
        var opening = progress.Runs[^1].Opening;
        return StepWords.Of(spreader, job, progress, SpreadPart.FinishPass, progress.PassRate, new OpeningChoice.Found(opening, FlowFit.Of(spreader, job.Ahead).At(opening)));
    }
}
