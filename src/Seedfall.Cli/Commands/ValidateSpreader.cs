using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Planning.Calibration.Spreader.Trial;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall validate spreader</c>: half, correct, half on made-up spreaders, beside correcting in proportion.</summary>
internal static class ValidateSpreader
{
    /// <summary>Spreaders of each family in the tables of docs/validation.md.</summary>
    internal const int UsualCount = 600;

    /// <summary>What they are drawn from there: the first of three seeds named before they were run, with the method as it is.</summary>
    internal const ulong UsualSeed = 101;

    internal static Command Make(Streams streams)
    {
        var count = new Option<int>("--spreaders") { Description = "Made-up spreaders of each family.", DefaultValueFactory = _ => UsualCount };
        var seed = new Option<long>("--seed") { Description = "What they are drawn from; the same seed gives the same numbers.", DefaultValueFactory = _ => (long)UsualSeed };
        var json = CommandTree.Json();
        var spreader = new Command("spreader", "Half, correct, half from a blind start on made-up spreaders, beside correcting in proportion, by simulation.") { count, seed, json };
        spreader.SetAction(parsed => CommandTree.Guard(streams, () =>
        {
            var many = parsed.GetValue(count);
            if (many is < 1 or > 100_000)
            {
                throw new CommandException(ExitCode.BadInput, FormattableString.Invariant($"--spreaders: a whole number from 1 to 100,000 is needed, not {many}"));
            }

            Print(SpreaderValidation.Score(many, (ulong)parsed.GetValue(seed)), parsed.GetValue(json), streams.Results);
            return Task.FromResult(ExitCode.Done);
        }).Result);
        return spreader;
    }

    private static void Print(IReadOnlyList<SpreaderScore> scores, bool json, TextWriter output)
    {
        if (json)
        {
            output.WriteLine(JsonSerializer.Serialize(scores, ValidateCommand.Json));
            return;
        }

        output.WriteLine($"{"scene",-14}{"family",-14}{"way",-15}{"n",6}{"in 10 %",9}{"in 5 %",9}{"off",8}{"over",8}{"passes",8}{"refused",9}");
        foreach (var s in scores)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{s.Scene,-14}{s.Family,-14}{s.Way,-15}{s.Spreaders,6}{s.Landed,9:P1}{s.Within5,9:P1}{s.MeanOff,8:P1}{s.Over,8:P1}{s.Passes,8:0.00}{s.Refused,9:P1}"));
        }
    }
}
