namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>Exponential mean of a daily series: each day closes 1 - exp(-1/tau) of the distance to that day's value.</summary>
internal struct ExponentialMean(double timeConstantDays, double start)
{
    /// <summary>The mean so far.</summary>
    internal double Value { get; private set; } = start;

    /// <summary>The mean after a value that stands for <paramref name="days"/> days (1, or more where days are missing before it).</summary>
    internal double Next(double value, int days)
    {
        Value += (value - Value) * (1.0 - Math.Exp(-days / timeConstantDays));
        return Value;
    }
}
