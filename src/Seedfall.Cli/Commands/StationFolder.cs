using System.Globalization;
using Seedfall.Cli.Output;
using Seedfall.Engine.Weather;
using Seedfall.Weather;

namespace Seedfall.Cli.Commands;

/// <summary>Measuring stations: a folder each. Elevations come from <c>stations.csv</c> beside them; 200 m where there is none.</summary>
internal static class StationFolder
{
    private const double UsualElevationM = 200.0;

    internal static IReadOnlyList<WeatherHistory> Read(DirectoryInfo folder, Streams streams, CancellationToken cancellation)
    {
        if (!folder.Exists)
        {
            throw new CommandException(ExitCode.Unreachable, $"{folder}: there is no such folder");
        }

        var elevations = Elevations(Path.Combine(folder.FullName, "stations.csv"));
        var stations = new List<WeatherHistory>();
        foreach (var station in folder.GetDirectories().OrderBy(d => d.Name, StringComparer.Ordinal))
        {
            var result = InputFile.Weather([station.FullName], WeatherReadOptions.Default, streams, cancellation);
            var position = result.Report!.Position ?? throw new CommandException(ExitCode.BadInput, $"{station.Name}: expected files that say where the station stands, found none");
            stations.Add(result.History! with
            {
                StationName = station.Name,
                Station = new Place(position.LatitudeDeg, position.LongitudeDeg, position.ElevationM ?? elevations.GetValueOrDefault(station.Name, UsualElevationM)),
            });
        }

        return stations.Count > 0 ? stations : throw new CommandException(ExitCode.BadInput, $"{folder}: expected a folder for each station, found none");
    }

    /// <summary>Elevation by station from a table with the columns name and elevation_m or the sixth column; quotes may hold commas after it.</summary>
    private static Dictionary<string, double> Elevations(string file)
    {
        var elevations = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var cells in File.Exists(file) ? File.ReadLines(file).Skip(1).Select(line => line.Split(',')) : [])
        {
            if (cells.Length > 5 && double.TryParse(cells[5], NumberStyles.Float, CultureInfo.InvariantCulture, out var elevationM))
            {
                elevations[cells[0]] = elevationM;
            }
        }

        return elevations;
    }
}
