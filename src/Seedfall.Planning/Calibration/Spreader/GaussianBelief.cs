using Seedfall.Engine.Numerics;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>
/// A normal belief about a few numbers, changed by one weighed reading of a sum of them at a time. The exact posterior of a linear
/// model with normal noise, in any order of the readings.
/// </summary>
internal sealed class GaussianBelief
{
    private readonly double[] _mean;
    private readonly double[,] _covariance;

    /// <summary>Independent numbers to begin with.</summary>
    internal GaussianBelief(IReadOnlyList<(double Mean, double Sd)> prior)
    {
        _mean = [.. prior.Select(p => p.Mean)];
        _covariance = new double[prior.Count, prior.Count];
        for (var i = 0; i < prior.Count; i++)
        {
            _covariance[i, i] = prior[i].Sd * prior[i].Sd;
        }
    }

    /// <summary>Mean and variance of a weighted sum, its own noise not counted.</summary>
    internal (double Mean, double Variance) Of(IReadOnlyList<(int Index, double Weight)> sum)
    {
        var (mean, variance) = (0.0, 0.0);
        foreach (var (i, a) in sum)
        {
            mean += a * _mean[i];
            foreach (var (j, b) in sum)
            {
                variance += a * b * _covariance[i, j];
            }
        }

        return (mean, variance);
    }

    /// <summary>Takes in a reading; gives the natural log of how likely it was before.</summary>
    internal double Take(IReadOnlyList<(int Index, double Weight)> sum, double reading, double noiseVariance)
    {
        var (mean, variance) = Of(sum);
        var (whole, off) = (variance + noiseVariance, reading - mean);
        Move(sum, off / whole, 1.0 / whole);
        return -0.5 * (Math.Log(2.0 * Math.PI * whole) + off * off / whole);
    }

    /// <summary>
    /// Takes in that the sum read below a limit: the belief becomes the normal one with the mean and variance of the cut-off one.
    /// Gives the natural log of how likely it was before.
    /// </summary>
    internal double TakeBelow(IReadOnlyList<(int Index, double Weight)> sum, double limit, double noiseVariance)
    {
        var (mean, variance) = Of(sum);
        var sd = Math.Sqrt(variance + noiseVariance);
        var place = (limit - mean) / sd;
        var below = Math.Max(NormalDistribution.Cumulative(place), double.Epsilon);
        var ratio = place < -30.0 ? -place : NormalDistribution.Density(place) / below;
        Move(sum, -ratio / sd, Math.Max(0.0, ratio * (ratio + place)) / (sd * sd));
        return Math.Log(below);
    }

    /// <summary>Moves mean and covariance along the sum's own direction: <c>m += P h s</c>, <c>P -= P h (P h)' c</c>.</summary>
    private void Move(IReadOnlyList<(int Index, double Weight)> sum, double slope, double curve)
    {
        var gain = new double[_mean.Length];
        for (var i = 0; i < gain.Length; i++)
        {
            foreach (var (j, weight) in sum)
            {
                gain[i] += weight * _covariance[i, j];
            }
        }

        for (var i = 0; i < gain.Length; i++)
        {
            _mean[i] += gain[i] * slope;
            for (var j = 0; j < gain.Length; j++)
            {
                _covariance[i, j] -= gain[i] * gain[j] * curve;
            }
        }
    }
}
