namespace Seedfall.Exchange.Ground;

/// <summary>Why a file of outlines was refused, and where.</summary>
/// <param name="File">Name of the file as given.</param>
/// <param name="Line">Line, from 1; 0 where the format has none.</param>
/// <param name="Column">Place in the line, from 1; 0 where the format has none.</param>
/// <param name="Expected">What would have been right.</param>
/// <param name="Found">What stood there.</param>
public sealed record OutlineProblem(string File, int Line, int Column, string Expected, string Found)
{
    /// <summary>One line: <c>file:line:column: expected ..., found ...</c>.</summary>
    public override string ToString() => Line > 0
        ? FormattableString.Invariant($"{File}:{Line}:{Column}: expected {Expected}, found {Found}")
        : $"{File}: expected {Expected}, found {Found}";
}
