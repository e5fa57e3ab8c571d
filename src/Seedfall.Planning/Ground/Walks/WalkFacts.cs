namespace Seedfall.Planning.Ground.Walks;

/// <summary>What is taken of phones and walkers. All common practice with no source read, except where one is named.</summary>
internal static class WalkFacts
{
    /// <summary>Fixes an outline needs at least.</summary>
    internal const int LeastFixes = 8;

    /// <summary>Fixes one walk may have at most.</summary>
    internal const int MostFixes = 50_000;

    /// <summary>A fix less accurate than this says too little, m.</summary>
    internal const double PoorM = 20.0;

    /// <summary>A fix this many times less accurate than the middle one is dropped.</summary>
    internal const double PoorTimes = 3.0;

    /// <summary>Nobody walks an edge faster, m/s.</summary>
    internal const double MostSpeed = 5.0;

    /// <summary>Accuracy taken where the track carries none, m.</summary>
    internal const double UsualAccuracyM = 5.0;

    /// <summary>Walking speed taken where the track carries no times, m/s.</summary>
    internal const double UsualSpeed = 1.2;

    /// <summary>
    /// Standard deviation in each direction per meter of stated accuracy, the accuracy read as the radius that holds 68 % of
    /// fixes: <c>1 / sqrt(-2 ln 0.32)</c>. Some phones mean 95 %; reading it as 68 % makes the range wider, never narrower.
    /// </summary>
    internal const double DeviationPerAccuracy = 0.6624;

    /// <summary>
    /// Share of the error's variance that wanders slowly; the rest jumps from fix to fix. That positions err with strong
    /// correlation in time, well described by an Ornstein-Uhlenbeck (first-order autoregressive) process, is published
    /// (Soundy and others 2020, Sensors 20(21), 6050; Ranacher and others 2016, Int. J. Geogr. Inf. Sci. 30, 316); the
    /// split and the time below are not.
    /// </summary>
    internal const double WanderShare = 0.98;

    /// <summary>Time over which the wander forgets, s.</summary>
    internal const double WanderSeconds = 60.0;

    /// <summary>Standard deviation of how far beside the edge the phone is carried all the way round, m.</summary>
    internal const double BesideEdgeM = 0.09;

    /// <summary>The largest gap between end and start, and the longest stretch cut at them, as a share of the way walked.</summary>
    internal const double MostGapShare = 0.15;

    /// <summary>The largest loop that is cut out where the path crosses itself, as a share of the whole area.</summary>
    internal const double MostLoopShare = 0.03;

    /// <summary>A range wider than this says nothing, half width as a share.</summary>
    internal const double MostBand = 0.40;

    /// <summary>Width of the 90 % range in standard deviations.</summary>
    internal const double Deviations90 = 1.6448536269514722;

    /// <summary>The smallest and largest area taken, m2.</summary>
    internal const double LeastAreaM2 = 2.0;

    /// <inheritdoc cref="LeastAreaM2"/>
    internal const double MostAreaM2 = 1.0e6;
}
