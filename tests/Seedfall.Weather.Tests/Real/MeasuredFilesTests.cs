using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Tests.Real;

/// <summary>Agency files as published, from the folder named by SEEDFALL_DATA. Figures in comments were counted in the files.</summary>
public sealed class MeasuredFilesTests
{
    private static string Data(string path)
    {
        var root = Environment.GetEnvironmentVariable("SEEDFALL_DATA");
        Assert.SkipWhen(string.IsNullOrEmpty(root), "SEEDFALL_DATA is not set: measured weather files are not at hand");
        return Path.Combine(root!, path);
    }

    private static WeatherReadResult Read(string path) => Files.Good(WeatherFiles.Read([Data(path)]));

    [Fact]
    public void All_twenty_climate_reference_stations_read()
    {
        var stations = Directory.GetDirectories(Data("uscrn_daily"));
        Assert.Equal(20, stations.Length);
        foreach (var station in stations)
        {
            var result = Files.Good(WeatherFiles.Read([station]));
            Assert.InRange(result.History!.Days.Count, 5_500, 7_900);
            Assert.Equal(result.Report!.Files.Sum(f => f.Records), CountLines(station));
            Assert.All(result.History.Days, d => Assert.True(d.TminC <= d.TmaxC && d.RainMm >= 0));
            Assert.InRange(result.Report.FilledCount, 0, result.History.Days.Count / 20);
        }
    }

    [Fact]
    public void Station_positions_are_those_of_the_list()
    {
        foreach (var line in File.ReadLines(Data("uscrn_daily/stations.csv")).Skip(1))
        {
            var f = line.Split(',');
            var report = Read("uscrn_daily/" + f[0]).Report!;
            Assert.Equal(int.Parse(f[2]), int.Parse(report.StationName[6..]));
            Assert.Equal(double.Parse(f[3]), report.Position!.LatitudeDeg, 2);
            Assert.Equal(double.Parse(f[4]), report.Position.LongitudeDeg, 2);
        }
    }

    [Fact]
    public void A_folder_of_two_stations_is_refused()
    {
        var result = WeatherFiles.Read([Data("uscrn_daily/RI_Kingston_1_NW"), Data("uscrn_daily/RI_Kingston_1_W")]);
        Assert.False(result.IsRead);
        Assert.Contains(result.Problems, p => p.Expected.Contains("USCRN 54796", StringComparison.Ordinal) && p.Found == "USCRN 54797");
    }

    [Fact]
    public void Days_made_from_hours_agree_with_the_agencys_own_days()
    {
        var daily = Read("uscrn_daily/NY_Ithaca_13_E").History!;
        var hourly = Read("uscrn_hourly/NY_Ithaca_13_E_hourly.csv.gz").History!;
        Assert.Equal(0.0, Differences(daily, hourly, d => d.TmaxC).Max(), 9);
        Assert.Equal(0.0, Differences(daily, hourly, d => d.TminC).Max(), 9);
        Assert.InRange(Differences(daily, hourly, d => d.MeanC).Max(), 0, 0.07);
        Assert.InRange(Differences(daily, hourly, d => d.RainMm).Max(), 0, 0.21);

        // The agency sums only the hours there are; a missing hour at noon is filled here, so single days differ by some MJ.
        Assert.InRange(Differences(daily, hourly, d => d.SolarMJ).Average(), 0, 0.02);
        Assert.InRange(Differences(daily, hourly, d => d.HumidityMeanPct).Max(), 0, 0.3);
        Assert.InRange(Differences(daily, hourly, d => d.Soil5CmC).Average(), 0, 0.05);
    }

    [Fact]
    public void The_daily_and_the_hourly_file_read_together()
    {
        var both = Files.Good(WeatherFiles.Read([Data("uscrn_daily/NY_Ithaca_13_E"), Data("uscrn_hourly/NY_Ithaca_13_E_hourly.csv.gz")]));
        var daily = Read("uscrn_daily/NY_Ithaca_13_E").History!;
        Assert.InRange(both.History!.Days.Count, daily.Days.Count, daily.Days.Count + 40);
        Assert.Equal(daily.Day(new(2015, 7, 17)), both.History.Day(new(2015, 7, 17)));
    }

    [Fact]
    public void Milwaukee_reads_as_degrees_not_tenths()
    {
        var result = Read("ghcn_daily/USW00014839_Milwaukee_WI.csv.gz");
        Assert.Equal(new WeatherDay(new(1938, 4, 2), 0.6, -2.8, 0.0), result.History!.Days[0]);
        Assert.Equal(32_283, result.Report!.Files[0].Records);
        Assert.Equal("degC", result.Report.Columns[0].Unit);
        Assert.InRange(result.History.Days.Where(d => d.Date.Year is >= 1991 and <= 2020).Sum(d => d.RainMm) / 30, 700, 1000);
    }

    [Fact]
    public void Dubois_reads_and_lists_its_gaps()
    {
        var result = Read("ghcn_daily/USC00102707_Dubois_Exp_Stn_ID.csv.gz");
        Assert.Equal(new WeatherDay(new(1925, 1, 1), 0.0, -10.6, 2.5), result.History!.Days[0]);
        Assert.Contains(result.Report!.Gaps, g => !g.Filled);
        Assert.Equal(result.History.Days.Count, result.Report.Years.Sum(y => y.Days));
    }

    [Fact]
    public void What_is_read_is_written_and_read_back_the_same()
    {
        var history = Read("uscrn_daily/CO_Nunn_7_NNE").History!;
        using var writer = new StringWriter();
        WeatherCsv.Write(history, writer);
        Assert.Equal(history.Days, Files.Good(Files.Read(Files.Text(writer.ToString()))).History!.Days);
    }

    private static int CountLines(string folder) => Directory.GetFiles(folder).Sum(f =>
    {
        using var gzip = new System.IO.Compression.GZipStream(File.OpenRead(f), System.IO.Compression.CompressionMode.Decompress);
        using var text = new StreamReader(gzip);
        var count = 0;
        while (text.ReadLine() is not null)
        {
            count++;
        }

        return count;
    });

    private static IEnumerable<double> Differences(WeatherHistory a, WeatherHistory b, Func<WeatherDay, double?> value)
    {
        var all = a.Days.Where(d => d.Quality == DayQuality.Measured)
            .Select(d => (One: value(d), Two: b.Day(d.Date) is { Quality: DayQuality.Measured } other ? value(other) : null))
            .Where(p => p.One is not null && p.Two is not null)
            .Select(p => Math.Abs(p.One!.Value - p.Two!.Value)).ToList();
        Assert.True(all.Count > 4_500);
        return all;
    }
}
