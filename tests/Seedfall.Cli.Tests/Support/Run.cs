using Seedfall.Cli.Commands;
using Seedfall.Cli.Output;

namespace Seedfall.Cli.Tests.Support;

/// <summary>What a command printed and how it ended.</summary>
internal sealed record Run(int ExitCode, string Results, string Remarks)
{
    internal static async Task<Run> Of(params string[] args)
    {
        var (results, remarks) = (new StringWriter(), new StringWriter());
        var code = await CommandTree.Run(args, new Streams(results, remarks, interactive: false), new FixedClock());
        return new Run(code, results.ToString(), remarks.ToString());
    }

    private sealed class FixedClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 8, 25, 12, 0, 0, TimeSpan.Zero);
    }
}
