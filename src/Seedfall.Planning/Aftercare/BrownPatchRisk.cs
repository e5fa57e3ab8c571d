using Seedfall.Engine.Units;

namespace Seedfall.Planning.Aftercare;

/// <summary>Warning of brown patch on a day.</summary>
public static class BrownPatchRisk
{
    /// <summary>Index from which a day is warned of; right on 85 % of days over three years on ryegrass.</summary>
    public const double Warning = 6.0;

    /// <summary>Index a Kentucky extension pathologist found to serve better.</summary>
    public const double EarlierWarning = 5.0;

    /// <summary>
    /// E = -21.5 + 0.15 RH + 1.4 T - 0.033 T^2, RH the day's mean humidity in percent, T its lowest temperature in degC. Fidanza,
    /// Dernoeden and Grybauskas 1996, Phytopathology 86:385-390.
    /// </summary>
    public static double Index(Fraction meanHumidity, Temperature lowest)
    {
        var t = lowest.Celsius;
        return -21.5 + (0.15 * meanHumidity.Percent) + (1.4 * t) - (0.033 * t * t);
    }
}
