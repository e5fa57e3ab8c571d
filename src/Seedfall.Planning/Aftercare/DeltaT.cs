using Seedfall.Engine.Units;

namespace Seedfall.Planning.Aftercare;

/// <summary>How fast spray drops dry: air temperature less wet-bulb temperature.</summary>
public static class DeltaT
{
    /// <summary>Below this, drops live long and drift in still air.</summary>
    public const double LeastC = 2.0;

    /// <summary>Above this, take care; good spraying lies below.</summary>
    public const double CautionC = 8.0;

    /// <summary>Above this, do not spray. NDSU and the Australian Bureau of Meteorology; not standard practice in the United States: the label decides.</summary>
    public const double AvoidC = 10.0;

    /// <summary>
    /// Wet-bulb temperature at sea-level pressure, Stull 2011 (coefficients common practice, no source read); made for 5 to 99 %
    /// humidity and -20 to 50 degC, and throws outside.
    /// </summary>
    public static Temperature WetBulb(Temperature air, Fraction humidity)
    {
        var (t, rh) = (air.Celsius, humidity.Percent);
        if (t is < -20.0 or > 50.0)
        {
            throw new ArgumentOutOfRangeException(nameof(air), air, "-20 to 50 degC are needed");
        }

        if (rh is < 5.0 or > 99.0)
        {
            throw new ArgumentOutOfRangeException(nameof(humidity), humidity, "5 to 99 % are needed");
        }

        return Temperature.FromCelsius(
            (t * Math.Atan(0.151977 * Math.Sqrt(rh + 8.313659)))
            + Math.Atan(t + rh)
            - Math.Atan(rh - 1.676331)
            + (0.00391838 * Math.Pow(rh, 1.5) * Math.Atan(0.023101 * rh))
            - 4.686035);
    }

    /// <summary>Air less wet bulb, a difference in degC.</summary>
    public static double DifferenceC(Temperature air, Fraction humidity) => air.Celsius - WetBulb(air, humidity).Celsius;
}
