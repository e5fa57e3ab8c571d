using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>What a few readings are worth: error over the next 14 days with and without them.</summary>
public static class ReadingScore
{
    private const int AheadDays = 14;
    private static readonly int[] ReadingDaysBack = [8, 4, 0];

    /// <summary>
    /// Adds errors of the 14 days after every tenth day from 15 August to 17 October, without readings and with three, at 0, 4 and
    /// 8 days before. A "reading" is the station's daily mean, so a hand thermometer does somewhat worse.
    /// </summary>
    /// <param name="days">Ascending days.</param>
    /// <param name="predictedC">Daily means at 5 cm, one per day.</param>
    /// <param name="use">Which measured days are good.</param>
    /// <param name="latitudeDeg">Degrees north.</param>
    /// <param name="without">Receives the errors without readings.</param>
    /// <param name="with">Receives the errors with them.</param>
    public static void Add(IReadOnlyList<WeatherDay> days, ReadOnlySpan<double> predictedC, bool[] use, double latitudeDeg, ErrorTally without, ErrorTally with)
    {
        for (var d = ReadingDaysBack[0]; d + AheadDays < days.Count; d++)
        {
            var date = days[d].Date;
            var month = SeasonAngle.Month(date, latitudeDeg);
            var inWindow = (month == 8 && date.Day >= 15) || month == 9 || (month == 10 && date.Day <= 17);
            if (!inWindow || date.DayNumber % 10 != 0 || days[d + AheadDays].Date.DayNumber - days[d - ReadingDaysBack[0]].Date.DayNumber != AheadDays + ReadingDaysBack[0]
                || !ReadingDaysBack.All(back => use[d - back]))
            {
                continue;
            }

            var readings = new List<(DateOnly Date, double ReadC, double ModelC)>();
            foreach (var back in ReadingDaysBack)
            {
                readings.Add((days[d - back].Date, days[d - back].Soil5CmC!.Value, predictedC[d - back]));
            }

            var bias = SoilBias.From(readings);
            for (var k = d + 1; k <= d + AheadDays; k++)
            {
                if (use[k])
                {
                    without.Add(predictedC[k], days[k].Soil5CmC!.Value);
                    with.Add(predictedC[k] + bias.AtC(days[k].Date), days[k].Soil5CmC!.Value);
                }
            }
        }
    }
}
