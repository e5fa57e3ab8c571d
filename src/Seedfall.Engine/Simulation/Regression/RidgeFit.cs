namespace Seedfall.Engine.Simulation.Regression;

/// <summary>
/// Sums for a ridge regression. Sums of several stations can be added and one taken away again, which makes
/// leave-one-station-out as cheap as one fit. Source: Hoerl and Kennard 1970 (Technometrics 12:55), normal equations.
/// </summary>
public sealed class RidgeFit
{
    private readonly int _features;
    private readonly double[,] _products;
    private readonly double[] _right;

    /// <summary>Empty sums for a number of features.</summary>
    public RidgeFit(int features)
    {
        _features = features;
        _products = new double[features + 1, features + 1];
        _right = new double[features + 1];
    }

    /// <summary>Sum of the weights of the rows added.</summary>
    public double Weight => _products[_features, _features];

    /// <summary>Adds one row of features and its target.</summary>
    public void Add(ReadOnlySpan<double> features, double target, double weight = 1.0)
    {
        for (var i = 0; i <= _features; i++)
        {
            var xi = weight * (i == _features ? 1.0 : features[i]);
            _right[i] += xi * target;
            for (var j = 0; j <= _features; j++)
            {
                _products[i, j] += xi * (j == _features ? 1.0 : features[j]);
            }
        }
    }

    /// <summary>Adds (sign 1) or takes away (sign -1) the sums of another set of rows.</summary>
    public void Add(RidgeFit other, double sign = 1.0)
    {
        for (var i = 0; i <= _features; i++)
        {
            _right[i] += sign * other._right[i];
            for (var j = 0; j <= _features; j++)
            {
                _products[i, j] += sign * other._products[i, j];
            }
        }
    }

    /// <summary>
    /// The model that minimizes squared error plus <paramref name="ridge"/> times the squared coefficients on
    /// standardized features (intercept free).
    /// </summary>
    public LinearModel Solve(double ridge)
    {
        var matrix = new double[_features, _features];
        var right = new double[_features];
        var scale = new double[_features];
        var targetMean = _right[_features] / Weight;
        for (var i = 0; i < _features; i++)
        {
            scale[i] = Math.Sqrt(Math.Max(Covariance(i, i) / Weight, 1e-12));
        }

        for (var i = 0; i < _features; i++)
        {
            right[i] = (_right[i] - (Mean(i) * _right[_features])) / scale[i];
            for (var j = 0; j < _features; j++)
            {
                matrix[i, j] = Covariance(i, j) / (scale[i] * scale[j]);
            }

            matrix[i, i] += ridge;
        }

        var coefficients = LinearSystem.SolvePositive(matrix, right);
        var intercept = targetMean;
        for (var i = 0; i < _features; i++)
        {
            coefficients[i] /= scale[i];
            intercept -= coefficients[i] * Mean(i);
        }

        return new LinearModel(intercept, coefficients);
    }

    private double Mean(int i) => _products[i, _features] / Weight;

    private double Covariance(int i, int j) => _products[i, j] - (Mean(i) * Mean(j) * Weight);
}
