namespace Seedfall.Cli.Output;

/// <summary>How a command ended; documented in docs/using/command-line.md.</summary>
internal static class ExitCode
{
    internal const int Done = 0;

    /// <summary>A fault of the program.</summary>
    internal const int Fault = 1;

    /// <summary>The command line or an input file is bad; nothing was written.</summary>
    internal const int BadInput = 2;

    /// <summary>The plan was made, but a rule of the label or the law refused part of it.</summary>
    internal const int Walled = 3;

    /// <summary>A file or folder cannot be read or written.</summary>
    internal const int Unreachable = 4;
}
