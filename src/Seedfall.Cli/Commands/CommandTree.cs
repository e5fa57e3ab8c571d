using System.CommandLine;
using Seedfall.Cli.Output;

namespace Seedfall.Cli.Commands;

/// <summary>All commands, and how they end.</summary>
internal static class CommandTree
{
    internal static async Task<int> Run(string[] args, Streams streams, TimeProvider clock)
    {
        var root = new RootCommand("Seedfall: recovery plans for cool-season lawns, from files.")
        {
            PlanCommand.Make(streams, clock),
            WeatherCommand.Make(streams),
            CheckCommand.Make(streams),
            SiteCommand.Make(streams, clock),
            DemoCommand.Make(streams),
            OutlineCommand.Make(streams),
            ValidateCommand.Make(streams),
            CoverCommand.Make(streams),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                streams.Remarks.WriteLine($"seedfall: {error.Message}");
            }

            streams.Remarks.WriteLine("seedfall: 'seedfall --help' lists commands and options");
            return ExitCode.BadInput;
        }

        return await parsed.InvokeAsync(new InvocationConfiguration { Output = streams.Results, Error = streams.Remarks, EnableDefaultExceptionHandler = false });
    }

    /// <summary>Runs one command; what stops it becomes lines and an exit code.</summary>
    internal static async Task<int> Guard(Streams streams, Func<Task<int>> work)
    {
        try
        {
            return await work();
        }
        catch (CommandException e)
        {
            foreach (var line in e.Lines)
            {
                streams.Remarks.WriteLine($"seedfall: {line}");
            }

            return e.ExitCode;
        }
        catch (OperationCanceledException)
        {
            streams.Remarks.WriteLine("seedfall: stopped; nothing was written");
            return ExitCode.Unreachable;
        }
    }

    internal static Option<bool> Json() => new("--json") { Description = "Print JSON for machines." };
}
