using System.Globalization;
using System.IO.Compression;
using Seedfall.Checks.Published;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Checks.Measured;

/// <summary>
/// Hours made from a day's extremes, sun and rain against the measured hours of a U.S. Climate Reference Network station
/// (Ithaca, New York, hourly02, 2004 to 2024), August to November. The limits hold what was measured, so that a change that
/// loses accuracy is seen: temperature RMSE 2.29 degC, its daily mean 0.92, sun 56 W m-2.
/// </summary>
public sealed class DisaggregationChecks
{
    private static readonly Place Ithaca = new(42.44, -76.25, 374.3);

    private sealed record MeasuredDay(WeatherDay Day, double[] AirC, double[] SolarWm2);

    [Fact]
    public void HoursStayAsCloseToTheMeasuredOnesAsTheyWere()
    {
        var (airSquares, solarSquares, meanSquares, hours, days) = (0.0, 0.0, 0.0, 0, 0);
        foreach (var run in Runs(ReadDays(Data.Path("uscrn_hourly", "NY_Ithaca_13_E_hourly.csv.gz"))))
        {
            var hourly = Disaggregation.FromDaily([.. run.Select(d => d.Day)], Ithaca);
            for (var d = 1; d < run.Count - 1; d++)
            {
                var meanError = 0.0;
                for (var h = 0; h < 24; h++)
                {
                    var error = hourly.AirC[(d * 24) + h] - run[d].AirC[h];
                    meanError += error / 24.0;
                    airSquares += error * error;
                    solarSquares += Math.Pow(hourly.SolarWm2[(d * 24) + h] - run[d].SolarWm2[h], 2);
                    hours++;
                }

                meanSquares += meanError * meanError;
                days++;
            }
        }

        Assert.True(days > 1500, $"{days} whole days");
        Assert.InRange(Math.Sqrt(airSquares / hours), 1.0, 2.35);
        Assert.InRange(Math.Sqrt(meanSquares / days), 0.3, 0.95);
        Assert.InRange(Math.Sqrt(solarSquares / hours), 10.0, 58.0);
    }

    private static IEnumerable<List<MeasuredDay>> Runs(IEnumerable<MeasuredDay> days)
    {
        var run = new List<MeasuredDay>();
        foreach (var day in days.Where(d => d.Day.Date.Month is >= 8 and <= 11))
        {
            if (run.Count > 0 && run[^1].Day.Date.AddDays(1) != day.Day.Date)
            {
                yield return run;
                run = [];
            }

            run.Add(day);
        }

        yield return run;
    }

    /// <summary>Whole days only; a row describes the hour that ends at its local standard time.</summary>
    private static IEnumerable<MeasuredDay> ReadDays(string path)
    {
        using var reader = new StreamReader(new GZipStream(File.OpenRead(path), CompressionMode.Decompress));
        var header = reader.ReadLine()!.Split(',');
        int Column(string name) => Array.IndexOf(header, name);
        int[] columns = [Column("T_HR_AVG"), Column("T_MAX"), Column("T_MIN"), Column("SOLARAD"), Column("P_CALC")];
        var (date, time) = (Column("LST_DATE"), Column("LST_TIME"));
        var rows = new List<(DateOnly Day, double[] Values)>();
        while (reader.ReadLine() is { } line)
        {
            var cells = line.Split(',');
            var start = DateTime.ParseExact(cells[date] + "00", "yyyyMMddHH", CultureInfo.InvariantCulture)
                .AddHours((int.Parse(cells[time], CultureInfo.InvariantCulture) / 100) - 1);
            if (columns.All(c => cells[c].Length > 0))
            {
                rows.Add((DateOnly.FromDateTime(start), [.. columns.Select(c => double.Parse(cells[c], CultureInfo.InvariantCulture))]));
            }
        }

        return rows.GroupBy(r => r.Day).Where(g => g.Count() == 24).OrderBy(g => g.Key).Select(g => DayOf(g.Key, [.. g.Select(r => r.Values)])).ToArray();
    }

    private static MeasuredDay DayOf(DateOnly date, double[][] hours)
    {
        var solar = hours.Select(h => Math.Max(0.0, h[3])).ToArray();
        var day = new WeatherDay(date, hours.Max(h => h[1]), hours.Min(h => h[2]), hours.Sum(h => Math.Max(0.0, h[4]))) { SolarMJ = solar.Sum() * 0.0036 };
        return new MeasuredDay(day, [.. hours.Select(h => h[0])], solar);
    }
}
