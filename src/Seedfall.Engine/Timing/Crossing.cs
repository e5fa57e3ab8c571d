using Seedfall.Engine.Units;

namespace Seedfall.Engine.Timing;

/// <summary>The day on which soil has cooled through a threshold and stays below it.</summary>
public static class Crossing
{
    /// <summary>Days in the trailing mean.</summary>
    public const int MeanDays = 5;

    /// <summary>Days in a row the trailing mean must stay below.</summary>
    public const int StayDays = 3;

    /// <summary>
    /// First day, not before a given one, whose trailing 5-day mean is below the threshold and stays below it on 3 days in
    /// a row (that day and the next two); null when none is found in the series.
    /// </summary>
    /// <param name="dailyC">Daily means, degC, one per calendar day.</param>
    /// <param name="firstDay">Day of the first entry.</param>
    /// <param name="notBefore">First day that may be reported.</param>
    /// <param name="notAfter">Last day that may be reported; the stay may reach past it.</param>
    /// <param name="threshold">Temperature to fall below.</param>
    public static DateOnly? FirstBelow(ReadOnlySpan<double> dailyC, DateOnly firstDay, DateOnly notBefore, DateOnly notAfter, Temperature threshold)
    {
        var below = 0;
        var start = Math.Max(MeanDays - 1, notBefore.DayNumber - firstDay.DayNumber);
        for (var i = start; i < dailyC.Length; i++)
        {
            below = TrailingMean(dailyC, i) < threshold.Celsius ? below + 1 : 0;
            if (below == StayDays)
            {
                var date = firstDay.AddDays(i - StayDays + 1);
                return date <= notAfter ? date : null;
            }
        }

        return null;
    }

    /// <summary>The crossing in one season of a soil temperature series; unknown where the series does not span the days needed.</summary>
    public static SeasonDate InSeason(SoilTemperatureSeries soil, AutumnSeason season, Temperature threshold)
    {
        if (soil.FirstDay.AddDays(MeanDays - 1) > season.StartsOn)
        {
            return SeasonDate.Unknown;
        }

        var date = FirstBelow(soil.MeanC, soil.FirstDay, season.StartsOn, season.EndsOn, threshold);
        return date is { } found ? SeasonDate.On(found) : soil.LastDay >= season.EndsOn ? SeasonDate.NotReached : SeasonDate.Unknown;
    }

    private static double TrailingMean(ReadOnlySpan<double> dailyC, int last)
    {
        var sum = 0.0;
        for (var i = last - MeanDays + 1; i <= last; i++)
        {
            sum += dailyC[i];
        }

        return sum / MeanDays;
    }
}
