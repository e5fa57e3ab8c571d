namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>
/// Gravity drainage of one layer in closed form. With K = Ks x^(2B+3), x = theta/theta_s, and unit gradient,
/// theta_s dz dx/dt = -Ks x^(2B+3) has the solution below: positive and exact for any step (two half steps are one whole step).
/// </summary>
public static class UnitGradientDrainage
{
    /// <summary>Relative saturation after the step.</summary>
    /// <param name="x">Relative saturation before, 0 to 1.</param>
    /// <param name="b">Retention exponent B of Saxton and Rawls 2006.</param>
    /// <param name="saturatedConductivityMmH">Saturated conductivity, mm/h.</param>
    /// <param name="hours">Length of the step, h.</param>
    /// <param name="saturation">Volumetric water at saturation, m3/m3.</param>
    /// <param name="thicknessMm">Thickness of the layer, mm.</param>
    public static double Remaining(double x, double b, double saturatedConductivityMmH, double hours, double saturation, double thicknessMm)
    {
        if (x <= 0.0)
        {
            return 0.0;
        }

        var power = (2.0 * b) + 2.0;
        return x * Math.Pow(1.0 + (power * saturatedConductivityMmH * hours * Math.Pow(x, power) / (saturation * thicknessMm)), -1.0 / power);
    }
}
