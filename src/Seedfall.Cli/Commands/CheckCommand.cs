using System.CommandLine;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Lawns;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall check LAWN.json</c>: every problem of a lawn file, or none.</summary>
internal static class CheckCommand
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    internal static Command Make(Streams streams)
    {
        var (lawn, json) = (new Argument<FileInfo>("LAWN.json") { Description = "The lawn file." }, CommandTree.Json());
        var command = new Command("check", "Check a lawn file and name every problem in it.") { lawn, json };
        command.SetAction(parsed => CommandTree.Guard(streams, () => Task.FromResult(Check(parsed.GetValue(lawn)!, parsed.GetValue(json), streams))).Result);
        return command;
    }

    private static int Check(FileInfo file, bool json, Streams streams)
    {
        var result = LawnFile.Read(InputFile.Bytes(file), file.Name, Trade.Tables);
        if (json)
        {
            streams.Results.WriteLine(JsonSerializer.Serialize(new { file = file.Name, sound = result.IsRead, problems = result.Problems }, Json));
        }
        else if (result.IsRead)
        {
            streams.Results.WriteLine($"{file.Name}: sound; {result.Lawn.Patches.Count} patch(es)");
        }

        foreach (var problem in json ? [] : result.Problems)
        {
            streams.Remarks.WriteLine($"seedfall: {problem}");
        }

        return result.IsRead ? ExitCode.Done : ExitCode.BadInput;
    }
}
