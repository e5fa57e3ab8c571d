using System.CommandLine;
using Seedfall.Cli.Output;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Paper;
using Seedfall.Planning.Plan;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall plan LAWN.json --weather PATH... --season YEAR --out DIR</c>: the whole plan as files.</summary>
internal static class PlanCommand
{
    internal static Command Make(Streams streams, TimeProvider clock)
    {
        var lawn = new Argument<FileInfo>("LAWN.json") { Description = "The lawn file." };
        var weather = new Option<string[]>("--weather") { Description = "Weather files or folders of one station.", Required = true, AllowMultipleArgumentsPerToken = true };
        var season = new Option<int>("--season") { Description = "Year of the autumn to plan.", Required = true };
        var output = new Option<string>("--out") { Description = "Folder to write to; made where it is not there.", Required = true };
        var seedDown = new Option<DateOnly?>("--seed-down") { Description = "Seed-down day to plan for, YYYY-MM-DD; Seedfall chooses where it is not given." };
        var today = new Option<DateOnly?>("--today") { Description = "The day the plan is looked at, YYYY-MM-DD: weather up to it counts, the next action follows it." };
        var log = new Option<FileInfo?>("--log") { Description = "Field log of the lawn: readings, first green, cover seen." };
        var forecast = new Option<string[]>("--forecast") { Description = "Weather files that hold the days after --today.", AllowMultipleArgumentsPerToken = true };
        var rounds = new Option<int?>("--rounds") { Description = "Rounds a day on the seedbed, 0 to 4, instead of as many as soil and air ask for." };
        var paper = new Option<PaperSize>("--paper") { Description = "Sheet size of HTML and PDF: letter or a4." };
        var noPdf = new Option<bool>("--no-pdf") { Description = "Leave out the PDFs." };
        var (json, options) = (CommandTree.Json(), new WeatherOptions());
        var command = new Command("plan", "Make the recovery plan of one lawn in one season.") { lawn, weather, season, output, seedDown, today, log, forecast, rounds, paper, noPdf, json };
        options.AddTo(command);
        command.SetAction((parsed, cancellation) => CommandTree.Guard(streams, async () =>
        {
            var ready = Task.WhenAll(Task.Run(() => Trade.Tables, cancellation), PaperHtml.WarmUp());
            var asked = new PlanRequest(
                InputFile.Lawn(parsed.GetValue(lawn)!),
                new Choices { Season = parsed.GetValue(season), SeedDown = parsed.GetValue(seedDown), Today = parsed.GetValue(today), SeedbedRounds = parsed.GetValue(rounds) },
                parsed.GetValue(paper),
                parsed.GetValue(output)!);
            await using var printing = Printing.Start(wanted: !parsed.GetValue(noPdf));
            var history = InputFile.Weather(parsed.GetValue(weather)!, options.Of(parsed, asked.Lawn.Place), streams, cancellation).History!;
            SeasonDoor.Require(asked.Choices, history);
            if (parsed.GetValue(forecast) is { Length: > 0 } ahead)
            {
                var from = asked.Choices.Today ?? throw new CommandException(ExitCode.BadInput, "--forecast: expected --today beside it, the last day that has come");
                history = history.WithForecast(InputFile.Weather(ahead, options.Of(parsed, asked.Lawn.Place), streams, cancellation).History!, from);
            }

            var written = parsed.GetValue(log) is { } file ? InputFile.Log(file, asked.Lawn) : null;
            var plan = RecoveryPlanner.Plan(asked.Lawn, asked.Choices, history, Trade.Tables, written);
            await ready;
            var files = await PlanFiles.Write(plan, asked, printing, clock.GetUtcNow(), streams, cancellation);
            PlanSummary.Print(plan, files, parsed.GetValue(json), streams);
            return plan.Walls.Count > 0 ? ExitCode.Walled : ExitCode.Done;
        }));
        return command;
    }
}
