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

    /// <summary>Coldest and hottest air, degC, and driest and dampest, percent, Stull's formula was made for.</summary>
    public const double ColdestC = -20.0;

    public const double HottestC = 50.0;

    public const double DriestPct = 5.0;

    public const double DampestPct = 99.0;

    /// <summary>The formula's coefficients in the order they stand in it, so that another machine can work it out alike.</summary>
    public static IReadOnlyList<double> Coefficients { get; } = [0.151977, 8.313659, 1.676331, 0.00391838, 1.5, 0.023101, 4.686035];

    /// <summary>
    /// Wet-bulb temperature at sea-level pressure, Stull 2011 (coefficients common practice, no source read); made for 5 to 99 %
    /// humidity and -20 to 50 degC, and throws outside.
    /// </summary>
    public static Temperature WetBulb(Temperature air, Fraction humidity)
    {
        var (t, rh) = (air.Celsius, humidity.Percent);
        if (t is < ColdestC or > HottestC)
        {
            throw new ArgumentOutOfRangeException(nameof(air), air, "-20 to 50 degC are needed");
        }

        if (rh is < DriestPct or > DampestPct)
        {
            throw new ArgumentOutOfRangeException(nameof(humidity), humidity, "5 to 99 % are needed");
        }

        var c = Coefficients;
        return Temperature.FromCelsius(
            (t * Math.Atan(c[0] * Math.Sqrt(rh + c[1])))
            + Math.Atan(t + rh)
            - Math.Atan(rh - c[2])
            + (c[3] * Math.Pow(rh, c[4]) * Math.Atan(c[5] * rh))
            - c[6]);
    }

    /// <summary>Air less wet bulb, a difference in degC.</summary>
    public static double DifferenceC(Temperature air, Fraction humidity) => air.Celsius - WetBulb(air, humidity).Celsius;
}
