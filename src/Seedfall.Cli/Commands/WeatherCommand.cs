using System.CommandLine;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Weather;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall weather PATH...</c>: what is in the files and what a plan will have to assume.</summary>
internal static class WeatherCommand
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    internal static Command Make(Streams streams)
    {
        var paths = new Argument<string[]>("PATH") { Description = "Weather files or folders of them.", Arity = ArgumentArity.OneOrMore };
        var (json, options) = (CommandTree.Json(), new WeatherOptions());
        var command = new Command("weather", "Tell what weather files hold: years, gaps, units, what will be assumed.") { paths, json };
        options.AddTo(command);
        command.SetAction((parsed, cancellation) => CommandTree.Guard(streams, () =>
        {
            var report = InputFile.Weather(parsed.GetValue(paths)!, options.Of(parsed, null), streams, cancellation).Report!;
            if (parsed.GetValue(json))
            {
                streams.Results.WriteLine(JsonSerializer.Serialize(report, Json));
            }
            else
            {
                foreach (var line in WeatherReportText.Lines(report))
                {
                    streams.Results.WriteLine(line);
                }
            }

            return Task.FromResult(ExitCode.Done);
        }));
        return command;
    }
}
