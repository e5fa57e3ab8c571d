using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation.Watering;
using Seedfall.Exchange.Catalog;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall validate water DIR</c>: the daily watering plan beside fixed rounds and the least water there is.</summary>
internal static class ValidateWater
{
    internal static Command Make(Streams streams)
    {
        var (folder, json) = (new Argument<DirectoryInfo>("DIR") { Description = "A folder per station of daily weather files, with or without stations.csv." }, CommandTree.Json());
        var wanted = new Option<double>("--wanted-kpa") { Description = "Suction up to which the seed's layer counts as moist enough, kPa.", DefaultValueFactory = _ => -1000.0 * WateringScenes.UsualWantedMPa };
        var water = new Command("water", "Dry hours, water and emergence under the daily plan, fixed rounds and the least water there is, by simulation.") { folder, wanted, json };
        water.SetAction(parsed => CommandTree.Guard(streams, () =>
        {
            var stations = ValidateCommand.Stations(parsed.GetValue(folder)!, streams);
            Print(WateringValidation.Score(stations, WateringScenes.All(Trade.Tables, -0.001 * parsed.GetValue(wanted)), ChoiceScenes.UsualDay, SoilHeatConstants.Shipped), parsed.GetValue(json), streams.Results);
            return Task.FromResult(ExitCode.Done);
        }).Result);
        return water;
    }

    private static void Print(IReadOnlyList<WateringReport> reports, bool json, TextWriter output)
    {
        if (json)
        {
            output.WriteLine(JsonSerializer.Serialize(reports, ValidateCommand.Json));
            return;
        }

        output.WriteLine($"{"soil",-6}{"station",-26}{"seasons",8}  {"way",-16}{"dry h",8}{"worst",8}{"short",8}{"wet h",8}{"mm",8}{"runoff",8}{"drains",8}{"up",7}{"days",7}");
        foreach (var report in reports)
        {
            foreach (var score in report.Pooled is { } pooled ? report.Stations.Append(pooled) : report.Stations)
            {
                foreach (var (way, w) in score.Ways)
                {
                    output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{report.Soil,-6}{score.Station,-26}{score.Seasons,8}  {way,-16}{w.DryHours,8:0.0}{w.MostDryHours,8:0}{w.ShortHours,8:0.0}{w.TooWetHours,8:0.0}{w.WaterMm,8:0.0}{w.RunoffMm,8:0.0}{w.DrainageMm,8:0.0}{w.UpShare,7:P0}{w.EmergenceDays,7:0.0}"));
                }

                foreach (var note in score.Notes)
                {
                    output.WriteLine($"{score.Station}: {note}");
                }
            }
        }
    }
}
