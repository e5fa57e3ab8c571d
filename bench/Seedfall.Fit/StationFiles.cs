using System.Globalization;
using Seedfall.Engine.Weather;
using Seedfall.Weather;

namespace Seedfall.Fit;

/// <summary>The stations under a folder of daily01 files, one folder per station, elevations from <c>stations.csv</c>.</summary>
internal static class StationFiles
{
    internal static IReadOnlyList<WeatherHistory> Read(string folder)
    {
        var elevations = Elevations(Path.Combine(folder, "stations.csv"));
        return [.. Directory.GetDirectories(folder).Order(StringComparer.Ordinal).Select(d => ReadStation(d, elevations))];
    }

    private static WeatherHistory ReadStation(string folder, Dictionary<string, double> elevations)
    {
        var name = Path.GetFileName(folder);
        var result = WeatherFiles.Read([folder]);
        if (!result.IsRead || result.Report.Position is not { } position)
        {
            throw new InvalidDataException($"{name}: {string.Join("; ", result.Problems)}");
        }

        return result.History with
        {
            StationName = name,
            Station = new Place(position.LatitudeDeg, position.LongitudeDeg, elevations.GetValueOrDefault(name)),
        };
    }

    private static Dictionary<string, double> Elevations(string file) => File.ReadLines(file)
        .Skip(1)
        .Select(line => line.Split(','))
        .ToDictionary(f => f[0], f => double.Parse(f[5], CultureInfo.InvariantCulture));
}
