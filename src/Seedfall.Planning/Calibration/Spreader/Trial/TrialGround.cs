namespace Seedfall.Planning.Calibration.Spreader.Trial;

/// <summary>What truly lies on the ground of a trial, strip by strip in the order it is walked.</summary>
internal sealed class TrialGround
{
    private const int Strips = 400;
    private readonly double[] _kgM2 = new double[Strips];
    private int _start;
    private int _next;
    private double _walked;

    /// <summary>Times the whole ground was walked, begun ones counted.</summary>
    internal int Passes => (int)Math.Ceiling(_walked - 0.02);

    /// <summary>A run over the next share of the ground.</summary>
    internal void Take(double share, double rateKgM2)
    {
        var end = Math.Min(Strips, _next + (int)Math.Round(share * Strips));
        for (; _next < end; _next++)
        {
            _kgM2[_next] += rateKgM2;
        }

        _walked += share;
    }

    /// <summary>After a run: a pass that is done begins again at the first open strip, closed ones are not walked again.</summary>
    internal void After(bool passDone, bool closed)
    {
        if (closed)
        {
            _start = _next;
        }

        if (passDone)
        {
            _next = _start;
        }
    }

    /// <summary>Rate over target less 1 on the strip that is farthest off.</summary>
    internal double Worst(double targetKgM2) => _kgM2.Select(r => r / targetKgM2 - 1.0).MaxBy(Math.Abs);
}
