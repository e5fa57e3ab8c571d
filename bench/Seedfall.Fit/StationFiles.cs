using System.Globalization;
using System.IO.Compression;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>The stations under a folder of daily01 files.</summary>
internal static class StationFiles
{
    internal static IReadOnlyList<WeatherHistory> Read(string folder) =>
        [.. Directory.GetDirectories(folder).Order(StringComparer.Ordinal).Select(ReadStation)];

    private static WeatherHistory ReadStation(string folder)
    {
        var days = new SortedDictionary<DateOnly, WeatherDay>();
        double lat = 0, lon = 0;
        foreach (var file in Directory.GetFiles(folder, "*.gz").Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(new GZipStream(File.OpenRead(file), CompressionMode.Decompress));
            while (reader.ReadLine() is { } line)
            {
                var f = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                double? V(int i, double missing = -9000) => double.Parse(f[i], CultureInfo.InvariantCulture) is var v && v > missing ? v : null;
                (lon, lat) = (V(3)!.Value, V(4)!.Value);
                if (V(5) is { } tx && V(6) is { } tn)
                {
                    var date = DateOnly.ParseExact(f[1], "yyyyMMdd", CultureInfo.InvariantCulture);
                    days[date] = new WeatherDay(date, Math.Max(tx, tn), Math.Min(tx, tn), V(9) ?? 0)
                    {
                        MeanC = V(8),
                        SolarMJ = V(10),
                        HumidityMaxPct = V(15),
                        HumidityMinPct = V(16),
                        HumidityMeanPct = V(17),
                        Soil5CmC = V(23),
                        SoilMoisture5Cm = V(18, -90),
                    };
                }
            }
        }

        var elevation = File.ReadLines(Path.Combine(folder, "..", "stations.csv")).Where(l => l.StartsWith(Path.GetFileName(folder) + ",", StringComparison.Ordinal)).Select(l => double.Parse(l.Split(',')[5], CultureInfo.InvariantCulture)).FirstOrDefault(200.0);
        return new WeatherHistory(new Place(lat, lon, elevation), Path.GetFileName(folder), Fill([.. days.Values]), [], []);
    }

    private static WeatherDay[] Fill(WeatherDay[] days)
    {
        var filled = new List<WeatherDay>();
        foreach (var day in days)
        {
            if (filled.Count > 0 && day.Date.DayNumber - filled[^1].Date.DayNumber is > 1 and <= 4)
            {
                var a = filled[^1];
                var n = day.Date.DayNumber - a.Date.DayNumber;
                for (var k = 1; k < n; k++)
                {
                    var w = (double)k / n;
                    filled.Add(new WeatherDay(a.Date.AddDays(k), a.TmaxC + (w * (day.TmaxC - a.TmaxC)), a.TminC + (w * (day.TminC - a.TminC)), 0) { MeanC = a.AverageC + (w * (day.AverageC - a.AverageC)), SolarMJ = a.SolarMJ + (w * (day.SolarMJ - a.SolarMJ)), Quality = DayQuality.Interpolated });
                }
            }

            filled.Add(day);
        }

        return [.. filled];
    }
}
