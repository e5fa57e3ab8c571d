using System.Globalization;
using Seedfall.Engine.Weather;

namespace Seedfall.Weather;

/// <summary>One station's folder: its history, or why it could not be read.</summary>
/// <param name="Name">Name of the folder.</param>
/// <param name="History">The days; null where they were refused.</param>
/// <param name="Problems">Why; empty where they were read.</param>
public sealed record StationReading(string Name, WeatherHistory? History, IReadOnlyList<FileProblem> Problems);

/// <summary>A folder of measuring stations, one folder each, as validations read them.</summary>
public static class StationFolders
{
    /// <summary>Elevation taken where no <c>stations.csv</c> gives one, m.</summary>
    public const double UnknownElevationM = 200.0;

    private const string TableName = "stations.csv";

    /// <summary>
    /// Reads every folder inside <paramref name="folder"/> that holds files, in order of name. Elevations come from
    /// <c>stations.csv</c> (columns <c>station</c> and <c>elevation_m</c>) where it is there.
    /// Throws <see cref="DirectoryNotFoundException"/> where the folder is not there.
    /// </summary>
    public static IReadOnlyList<StationReading> Read(string folder)
    {
        var elevations = Elevations(Path.Combine(folder, TableName));
        return [.. Directory.GetDirectories(folder).Order(StringComparer.Ordinal)
            .Where(d => Directory.EnumerateFiles(d).Any())
            .Select(d => ReadStation(d, elevations))];
    }

    private static StationReading ReadStation(string folder, Dictionary<string, double> elevations)
    {
        var name = Path.GetFileName(folder);
        var result = WeatherFiles.Read([folder]);
        if (!result.IsRead)
        {
            return new StationReading(name, null, result.Problems);
        }

        var elevation = elevations.TryGetValue(name, out var known) ? known : result.Report.Position?.ElevationM ?? UnknownElevationM;
        var place = result.Report.Position is { } p ? new Place(p.LatitudeDeg, p.LongitudeDeg, elevation) : result.History.Station;
        return new StationReading(name, result.History with { StationName = name, Station = place }, []);
    }

    private static Dictionary<string, double> Elevations(string file)
    {
        var elevations = new Dictionary<string, double>(StringComparer.Ordinal);
        if (!File.Exists(file))
        {
            return elevations;
        }

        var lines = File.ReadAllLines(file);
        var header = lines.Length > 0 ? lines[0].Split(',') : [];
        var (station, elevation) = (Array.IndexOf(header, "station"), Array.IndexOf(header, "elevation_m"));
        foreach (var fields in lines.Skip(1).Select(l => l.Split(',')))
        {
            if (station >= 0 && elevation >= 0 && fields.Length > Math.Max(station, elevation)
                && double.TryParse(fields[elevation], NumberStyles.Float, CultureInfo.InvariantCulture, out var meters))
            {
                elevations[fields[station]] = meters;
            }
        }

        return elevations;
    }
}
