using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>What a spreader will put on at one opening: a mixture of normal curves of ln(rate), and a chance that nothing falls.</summary>
public sealed class FlowForecast
{
    private const int Halvings = 60;
    private readonly IReadOnlyList<(double Weight, double Mean, double Sd)> _parts;
    private readonly double _nothing;

    internal FlowForecast(IReadOnlyList<(double Weight, double Mean, double Sd)> parts, double nothing) => (_parts, _nothing) = (parts, nothing);

    /// <summary>As likely more as less.</summary>
    public MassPerArea Median => Quantile(0.5);

    /// <summary>Lower end of the range it lies in nine times of ten.</summary>
    public MassPerArea Low => Quantile(0.05);

    /// <summary>Upper end of the same range.</summary>
    public MassPerArea High => Quantile(0.95);

    /// <summary>True where the range spans more than a factor of ten: then no one figure stands for it.</summary>
    public bool Vague => High > Low * 10.0;

    /// <summary>Chance that the rate is at or below a rate [0 to 1].</summary>
    public double ChanceUpTo(MassPerArea rate)
    {
        if (rate <= MassPerArea.Zero)
        {
            return rate < MassPerArea.Zero ? 0.0 : _nothing;
        }

        var log = Math.Log(rate.KilogramsPerSquareMeter);
        return _nothing + _parts.Sum(p => p.Weight * NormalDistribution.Cumulative((log - p.Mean) / p.Sd));
    }

    /// <summary>The rate with this chance (above 0, below 1) of being at or below it.</summary>
    public MassPerArea Quantile(double chance)
    {
        if (!(chance > 0.0 && chance < 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(chance), chance, "a chance above 0 and below 1 is needed");
        }

        if (chance <= _nothing || _parts.Count == 0)
        {
            return MassPerArea.Zero;
        }

        var (low, high) = (_parts.Min(p => p.Mean - 9.0 * p.Sd), _parts.Max(p => p.Mean + 9.0 * p.Sd));
        for (var k = 0; k < Halvings; k++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = ChanceUpTo(new(Math.Exp(middle))) < chance ? (middle, high) : (low, middle);
        }

        return MassPerArea.FromKilogramsPerSquareMeter(Math.Exp(0.5 * (low + high)));
    }
}
