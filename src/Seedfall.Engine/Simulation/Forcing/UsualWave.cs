using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>Annual wave of air temperature from monthly means, leaning on latitude and elevation where months are missing.</summary>
internal static class UsualWave
{
    private const double WarmestDay = 201.0;
    private const double MeanVarianceC2 = 9.0;
    private const double AmplitudeVarianceC2 = 9.0;
    private const double PhaseVarianceC2 = 0.5;
    private const double MonthVarianceC2 = 0.25;
    private const double OneYearsMonthVarianceC2 = 2.0;
    private const double DaysPerMonth = 30.0;

    /// <summary>One month's mean of season-angle cosine and sine and of air temperature, over the days it was seen.</summary>
    internal readonly record struct Month(double Cosine, double Sine, double AirC, int Days);

    /// <summary>
    /// Mean, cosine and sine, degC: least squares on the months, each as sure as the years seen, with a normal expectation
    /// from latitude: the mean loosely, the amplitude less so, the day of the peak firmly.
    /// </summary>
    internal static double[] Fit(IEnumerable<Month> months, Place place)
    {
        var (meanC, amplitudeC) = Expected(place);
        var peak = 2.0 * Math.PI / SeasonAngle.DaysPerYear * WarmestDay;
        var normal = new double[3, 3];
        var right = new double[3];
        Add(normal, right, [1.0, 0.0, 0.0], meanC, MeanVarianceC2);
        Add(normal, right, [0.0, Math.Cos(peak), Math.Sin(peak)], amplitudeC, AmplitudeVarianceC2);
        Add(normal, right, [0.0, -Math.Sin(peak), Math.Cos(peak)], 0.0, PhaseVarianceC2);
        foreach (var month in months)
        {
            var years = month.Days / DaysPerMonth;
            Add(normal, right, [1.0, month.Cosine, month.Sine], month.AirC, MonthVarianceC2 + (OneYearsMonthVarianceC2 / years));
        }

        return LinearSystem.SolvePositive(normal, right);
    }

    /// <summary>
    /// Common practice, no source read: near 40 degrees the annual mean falls 0.85 degC per degree of latitude and 4.5 degC per
    /// km, and the amplitude grows 0.6 degC per degree. A starting point only.
    /// </summary>
    private static (double MeanC, double AmplitudeC) Expected(Place place)
    {
        var north = Math.Abs(place.LatitudeDeg) - 40.0;
        return (10.5 - (0.85 * north) - (4.5e-3 * Math.Max(0.0, place.ElevationM - 200.0)), Math.Max(2.0, 12.0 + (0.6 * north)));
    }

    private static void Add(double[,] normal, double[] right, ReadOnlySpan<double> row, double value, double variance)
    {
        for (var i = 0; i < 3; i++)
        {
            right[i] += row[i] * value / variance;
            for (var j = 0; j < 3; j++)
            {
                normal[i, j] += row[i] * row[j] / variance;
            }
        }
    }
}
