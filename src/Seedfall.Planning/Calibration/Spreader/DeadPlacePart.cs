namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>One guess at where the gate begins to flow: what the runs say if it is true, and how likely they make it.</summary>
internal sealed class DeadPlacePart(double dead, IReadOnlyList<(double, double)> prior)
{
    /// <summary>Ln of the chance of a run that this guess says cannot be: a slip of the pen, not impossible.</summary>
    private const double HardlyEver = -20.0;

    internal double Dead { get; } = dead;

    internal GaussianBelief Belief { get; } = new(prior);

    /// <summary>Ln of prior times likelihood, up to a constant.</summary>
    internal double Log { get; private set; } = -0.5 * Math.Pow((dead - FlowPriors.DeadPlace) / FlowPriors.DeadPlaceSd, 2.0);

    /// <summary>Takes in the place at which the first grains fell.</summary>
    /// <param name="firstFall">Place on the scale, 0 to 1.</param>
    /// <param name="step">The scale's smallest step, as a share of it.</param>
    internal void Take(double firstFall, double step)
    {
        var off = firstFall - FlowPriors.FirstFallLate - Dead;
        Log -= 0.5 * off * off / (FlowPriors.FirstFallSd * FlowPriors.FirstFallSd + step * step / 12.0);
    }

    /// <summary>Takes in a run; one in which nothing fell says that the gate is shut there, or nearly.</summary>
    internal void Take(KeptSpreader spreader, SpreaderEntry.Run run, (int, double)[]? sum)
    {
        var usedKg = run.Used.Kilograms;
        if (sum is null)
        {
            Log += usedKg > 0.0 ? HardlyEver : 0.0;
            return;
        }

        var width = spreader.SwathM(run.Swath) * spreader.WalkMs(run.Walk);
        if (usedKg > 0.0)
        {
            var weighing = (run.WeighedTo ?? FlowPriors.UsualWeighing).Kilograms / usedKg;
            Log += Belief.Take(sum, Math.Log(run.Rate.KilogramsPerSquareMeter * width), FlowPriors.RunSd * FlowPriors.RunSd + weighing * weighing);
            return;
        }

        Log += Math.Max(HardlyEver, Belief.TakeBelow(sum, Math.Log(FlowPriors.Trace * FlowPriors.FullRate.KilogramsPerSquareMeter * width), FlowPriors.RunSd * FlowPriors.RunSd));
    }
}
