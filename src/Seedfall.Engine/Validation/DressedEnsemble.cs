using Seedfall.Engine.Numerics;

namespace Seedfall.Engine.Validation;

/// <summary>
/// A forecast made of equally likely members, each blurred by a normal error of the model: a mixture of normals. Lets a
/// handful of past seasons state honest chances between and beyond them.
/// </summary>
public sealed class DressedEnsemble
{
    private readonly double[] _members;
    private readonly double _deviation;

    /// <summary>At least one member; the deviation, in the members' unit, is above 0.</summary>
    public DressedEnsemble(IEnumerable<double> members, double deviation)
    {
        _members = [.. members.Order()];
        _deviation = deviation;
        if (_members.Length == 0)
        {
            throw new ArgumentException("at least one member is needed", nameof(members));
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviation);
    }

    /// <summary>Chance of a value at or below x.</summary>
    public double ChanceBelow(double x)
    {
        double sum = 0;
        foreach (var member in _members)
        {
            sum += NormalDistribution.Cumulative((x - member) / _deviation);
        }

        return sum / _members.Length;
    }

    /// <summary>The value with chance <paramref name="probability"/> (above 0, below 1) at or below it, to 0.001.</summary>
    public double Quantile(double probability)
    {
        if (!(probability is > 0.0 and < 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "a chance above 0 and below 1 is needed");
        }

        var reach = 10.0 * _deviation;
        var (low, high) = (_members[0] - reach, _members[^1] + reach);
        while (high - low > 1e-3)
        {
            var middle = 0.5 * (low + high);
            (low, high) = ChanceBelow(middle) < probability ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    /// <summary>True where a value lies in the central interval of a coverage 0 to 1.</summary>
    public bool Holds(double value, double coverage) =>
        value >= Quantile(0.5 * (1.0 - coverage)) && value <= Quantile(0.5 * (1.0 + coverage));
}
