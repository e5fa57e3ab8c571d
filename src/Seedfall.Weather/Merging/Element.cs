namespace Seedfall.Weather.Merging;

/// <summary>A quantity a row can hold, in the unit its name ends in once the row is converted.</summary>
internal enum Element
{
    TmaxC,
    TminC,
    MeanC,
    RainMm,
    SolarMJ,
    HumidityMaxPct,
    HumidityMinPct,
    HumidityMeanPct,
    WindMs,
    Soil5CmC,
    SoilMoisture5Cm,
}

/// <summary>Names and plausible ranges of the quantities.</summary>
internal static class Elements
{
    internal const int Count = 11;

    private static readonly string[] Names =
    [
        "highest temperature", "lowest temperature", "mean temperature", "rain", "sun", "highest humidity",
        "lowest humidity", "mean humidity", "wind", "soil temperature at 5 cm", "soil moisture at 5 cm",
    ];

    /// <summary>
    /// Lowest and highest value taken as real. Air: the extremes on record are -89.2 and 56.7 degC (World Meteorological
    /// Organization), lawns end well above the lower. Sun: no place gets more than about 45 MJ m-2 in a day, outside the
    /// atmosphere included. Rain: 1,000 mm is above every day on record where lawns are grown.
    /// </summary>
    private static readonly (double Low, double High)[] Ranges =
    [
        (-70, 57), (-75, 50), (-72, 52), (0, 1000), (-0.5, 45), (0, 105), (0, 105), (0, 105), (0, 60), (-45, 65), (0, 1),
    ];

    internal static string Name(Element e) => Names[(int)e];

    internal static bool IsPlausible(Element e, double value) => value >= Ranges[(int)e].Low && value <= Ranges[(int)e].High;

    internal static string Range(Element e) => FormattableString.Invariant($"{Ranges[(int)e].Low} to {Ranges[(int)e].High} {Unit(e)}");

    internal static string Unit(Element e) => e switch
    {
        Element.RainMm => "mm",
        Element.SolarMJ => "MJ/m2",
        Element.HumidityMaxPct or Element.HumidityMinPct or Element.HumidityMeanPct => "%",
        Element.WindMs => "m/s",
        Element.SoilMoisture5Cm => "m3/m3",
        _ => "degC",
    };

    /// <summary>Brings sensor noise at the edge of a range onto the edge: sun below 0, humidity above 100.</summary>
    internal static double Tidy(Element e, double value) => e switch
    {
        Element.SolarMJ => Math.Max(0, value),
        Element.HumidityMaxPct or Element.HumidityMinPct or Element.HumidityMeanPct => Math.Min(100, value),
        _ => value,
    };
}
