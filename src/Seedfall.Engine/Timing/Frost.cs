using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Timing;

/// <summary>First freezing night after midsummer.</summary>
public static class Frost
{
    /// <summary>Light frost: 32 degF in the shelter.</summary>
    public static Temperature Light { get; } = Temperature.FromFahrenheit(32.0);

    /// <summary>Hard frost: 28 degF in the shelter.</summary>
    public static Temperature Hard { get; } = Temperature.FromFahrenheit(28.0);

    /// <summary>
    /// First day after midsummer and by the season's end with a lowest temperature at or below the threshold. Unknown when a
    /// day before it, or before the season's end where there is none, is missing.
    /// </summary>
    public static SeasonDate FirstOfSeason(WeatherHistory history, AutumnSeason season, Temperature threshold)
    {
        for (var date = season.AfterMidsummer; date <= season.EndsOn; date = date.AddDays(1))
        {
            if (history.Day(date) is not { } day)
            {
                return SeasonDate.Unknown;
            }

            if (day.TminC <= threshold.Celsius + RoundingC)
            {
                return SeasonDate.On(date);
            }
        }

        return SeasonDate.NotReached;
    }

    // 28 degF is -2.2222 degC, and files carry tenths of a degree: what prints as -2.2 is at the threshold.
    private const double RoundingC = 0.05;
}
