namespace Seedfall.Weather.Input;

/// <summary>
/// Unwinds a file's parsing at the first thing it cannot go past. Never leaves this project: <c>FileParsing</c> turns it
/// into a <see cref="FileProblem"/>.
/// </summary>
internal sealed class RefusedException(int line, int column, string expected, string found) : Exception
{
    internal int Line { get; } = line;

    internal int Column { get; } = column;

    internal string Expected { get; } = expected;

    internal string Found { get; } = found;

    public override string Message => $"expected {Expected}, found {Found}";
}
