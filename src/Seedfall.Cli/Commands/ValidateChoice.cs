using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation.Choice;
using Seedfall.Exchange.Catalog;
using Seedfall.Planning.Timing;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall validate choice DIR</c>: Seedfall's seed-down day beside other rules, over past seasons left out in turn.</summary>
internal static class ValidateChoice
{
    internal static Command Make(Streams streams)
    {
        var (folder, json) = (new Argument<DirectoryInfo>("DIR") { Description = "A folder per station of daily weather files, with or without stations.csv." }, CommandTree.Json());
        var choice = new Command("choice", "Stands from Seedfall's date, from soil at 70 degF, from the calendar and in hindsight, by simulation.") { folder, json };
        choice.SetAction(parsed => CommandTree.Guard(streams, () =>
        {
            var stations = ValidateCommand.Stations(parsed.GetValue(folder)!, streams);
            var reports = ChoiceValidation.Score(stations, ChoiceScenes.All(Trade.Tables), ChoiceScenes.UsualDay, SoilHeatConstants.Shipped);
            Print(reports, parsed.GetValue(json), streams.Results);
            return Task.FromResult(ExitCode.Done);
        }).Result);
        return choice;
    }

    private static void Print(IReadOnlyList<ChoiceReport> reports, bool json, TextWriter output)
    {
        if (json)
        {
            output.WriteLine(JsonSerializer.Serialize(reports, ValidateCommand.Json));
            return;
        }

        foreach (var report in reports)
        {
            output.WriteLine($"{report.Scene}: {report.Text}");
            output.WriteLine($"{"station",-28}{"seasons",8}  {"rule",-10}{"stands",8}{"regret",8}{"plants",8}{"lead",8}");
            foreach (var score in report.Pooled is { } pooled ? report.Stations.Append(pooled) : report.Stations)
            {
                foreach (var (rule, r) in score.Rules)
                {
                    output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{score.Station,-28}{score.Seasons,8}  {rule,-10}{r.Success,8:P0}{r.Regret,8:P0}{r.PlantsOfHindsight,8:P0}{r.Lead,8:P0}"));
                }

                foreach (var note in score.Notes)
                {
                    output.WriteLine($"{score.Station}: {note}");
                }
            }
        }
    }
}
