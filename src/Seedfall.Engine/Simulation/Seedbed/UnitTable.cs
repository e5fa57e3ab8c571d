namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>A smooth function on [0, 1] tabulated for the hour loop; linear between 512 points.</summary>
internal sealed class UnitTable
{
    private const int Intervals = 511;

    private readonly double[] _values = new double[Intervals + 2];

    internal UnitTable(Func<double, double> function)
    {
        for (var i = 0; i <= Intervals; i++)
        {
            _values[i] = function((double)i / Intervals);
        }

        _values[Intervals + 1] = _values[Intervals];
    }

    /// <summary>The value at x, held within [0, 1].</summary>
    internal double At(double x)
    {
        var position = Math.Clamp(x, 0.0, 1.0) * Intervals;
        var i = (int)position;
        return _values[i] + ((position - i) * (_values[i + 1] - _values[i]));
    }
}
