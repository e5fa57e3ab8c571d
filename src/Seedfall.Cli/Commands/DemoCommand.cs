using System.CommandLine;
using System.Text;
using Seedfall.Cli.Output;
using Seedfall.Exchange.Demo;
using Seedfall.Exchange.Lawns;
using Seedfall.Weather;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall demo DIR</c>: the invented town's lawns and their invented weather as files.</summary>
internal static class DemoCommand
{
    internal static Command Make(Streams streams)
    {
        var folder = new Argument<string>("DIR") { Description = "Folder to write to; made where it is not there." };
        var command = new Command("demo", "Write the invented demo lawns and their invented weather as files.") { folder };
        command.SetAction(parsed => CommandTree.Guard(streams, () => Task.FromResult(Write(parsed.GetValue(folder)!, streams))).Result);
        return command;
    }

    private static int Write(string folder, Streams streams)
    {
        using var output = new OutputFolder(folder);
        foreach (var lawn in DemoTown.Lawns)
        {
            output.Add($"{lawn.Id}.json", LawnFile.Write(lawn));
        }

        var weather = new StringWriter();
        WeatherCsv.Write(DemoTown.Weather, weather);
        output.Add(DemoTown.WeatherFileName, Encoding.UTF8.GetBytes(weather.ToString()));
        output.Publish();
        foreach (var name in output.Names)
        {
            streams.Results.WriteLine(Path.Combine(folder, name));
        }

        streams.Results.WriteLine(FormattableString.Invariant($"Town, lawns and weather are invented. Try: seedfall plan {Path.Combine(folder, output.Names[0])} --weather {Path.Combine(folder, DemoTown.WeatherFileName)} --season {DemoTown.Season} --out plan"));
        return ExitCode.Done;
    }
}
