namespace Seedfall.Engine.Simulation.Regression;

/// <summary>A fitted linear model in the units of its features.</summary>
/// <param name="Intercept">Value with every feature 0, degC.</param>
/// <param name="Coefficients">One per feature, degC per unit of the feature.</param>
public sealed record LinearModel(double Intercept, double[] Coefficients)
{
    /// <summary>Intercept + sum of coefficient times feature, degC; throws on another number of features.</summary>
    public double At(ReadOnlySpan<double> features)
    {
        if (features.Length != Coefficients.Length)
        {
            throw new ArgumentException($"{Coefficients.Length} features are needed, got {features.Length}", nameof(features));
        }

        var sum = Intercept;
        for (var i = 0; i < features.Length; i++)
        {
            sum += Coefficients[i] * features[i];
        }

        return sum;
    }
}
