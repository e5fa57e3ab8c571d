using Seedfall.Engine.Units;

namespace Seedfall.Planning.Aftercare;

/// <summary>Warning of Pythium blight after a day from noon to noon.</summary>
public static class PythiumRisk
{
    /// <summary>
    /// True when the highest temperature passed 30 degC, at least 14 hours of humidity above 90 % followed, and the lowest stayed above
    /// 20 degC. Nutter, Cole and Schein 1983, Plant Disease 67:1126.
    /// </summary>
    /// <param name="highest">Highest air temperature, noon to noon.</param>
    /// <param name="lowest">Lowest air temperature.</param>
    /// <param name="humidHours">Hours with humidity above 90 %, 0 to 24.</param>
    public static bool Warns(Temperature highest, Temperature lowest, double humidHours) =>
        highest.Celsius > 30.0 && lowest.Celsius > 20.0 && InDay(humidHours) >= 14.0;

    /// <summary>
    /// The earlier warning used in Kentucky: above 28 degC, above 20 degC and at least 9 humid hours. Hall 1984; the humidity limit of
    /// 90 % is common practice.
    /// </summary>
    public static bool WarnsEarlier(Temperature highest, Temperature lowest, double humidHours) =>
        highest.Celsius > 28.0 && lowest.Celsius > 20.0 && InDay(humidHours) >= 9.0;

    private static double InDay(double humidHours) => humidHours is >= 0.0 and <= 24.0
        ? humidHours
        : throw new ArgumentOutOfRangeException(nameof(humidHours), humidHours, "0 to 24 hours are needed");
}
