namespace Seedfall.Cli.Output;

/// <summary>A command cannot go on; the lines say why.</summary>
internal sealed class CommandException(int exitCode, IReadOnlyList<string> lines) : Exception(lines.Count > 0 ? lines[0] : "")
{
    internal CommandException(int exitCode, string line)
        : this(exitCode, [line])
    {
    }

    internal int ExitCode => exitCode;

    internal IReadOnlyList<string> Lines => lines;
}
