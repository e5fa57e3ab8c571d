using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;
using Seedfall.Weather;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall validate soil DIR</c>: the shipped soil temperature model against measuring stations, nothing refitted.</summary>
internal static class ValidateCommand
{
    internal static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    internal static Command Make(Streams streams)
    {
        var (folder, json) = (new Argument<DirectoryInfo>("DIR") { Description = "A folder per station of daily01 files, with or without stations.csv." }, CommandTree.Json());
        var soil = new Command("soil", "Soil temperature at 5 cm, August to November, against measured stations.") { folder, json };
        soil.SetAction(parsed => CommandTree.Guard(streams, () =>
        {
            var report = SoilValidation.Score(Stations(parsed.GetValue(folder)!, streams), SoilHeatConstants.Shipped);
            Print(report, parsed.GetValue(json), streams.Results);
            return Task.FromResult(ExitCode.Done);
        }).Result);
        return new Command("validate", "Hold the models against measured data.") { soil, ValidateChoice.Make(streams), ValidateWater.Make(streams), ValidateSpreader.Make(streams) };
    }

    /// <summary>Every station that can be read; one that cannot is named and left out.</summary>
    internal static IReadOnlyList<WeatherHistory> Stations(DirectoryInfo folder, Streams streams)
    {
        if (!folder.Exists)
        {
            throw new CommandException(ExitCode.Unreachable, $"{folder}: there is no such folder");
        }

        var readings = StationFolders.Read(folder.FullName);
        foreach (var problem in readings.SelectMany(r => r.Problems))
        {
            streams.Remarks.WriteLine($"seedfall: left out: {problem}");
        }

        var stations = readings.Select(r => r.History).OfType<WeatherHistory>().ToList();
        return stations.Count > 0 ? stations : throw new CommandException(ExitCode.BadInput, $"{folder}: expected a folder for each station, found none that can be read");
    }

    private static void Print(SoilScoreReport report, bool json, TextWriter output)
    {
        if (json)
        {
            output.WriteLine(JsonSerializer.Serialize(report, Json));
            return;
        }

        output.WriteLine(FormattableString.Invariant($"{"station",-28}{"method",-12}{"n",8}{"rmse",8}{"mae",8}{"bias",8}  degC"));
        foreach (var score in report.Stations.Append(report.Pooled))
        {
            foreach (var (method, e) in score.Methods)
            {
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{score.Station,-28}{method,-12}{e.N,8}{e.Rmse,8:F3}{e.Mae,8:F3}{e.Bias,8:F3}"));
            }

            foreach (var note in score.Notes)
            {
                output.WriteLine($"{score.Station}: {note}");
            }
        }
    }
}
