namespace Seedfall.Weather;

/// <summary>Why a weather file was refused, and where.</summary>
/// <param name="File">Name of the file as given.</param>
/// <param name="Line">Line, from 1; 0 where the whole file is meant.</param>
/// <param name="Column">
/// From 1: the field's number in files with separated columns, the character's position in fixed-width text and JSON;
/// 0 where the whole line is meant.
/// </param>
/// <param name="Expected">What would have been right.</param>
/// <param name="Found">What stood there.</param>
public sealed record FileProblem(string File, int Line, int Column, string Expected, string Found)
{
    /// <summary>One line: <c>file:line:column: expected ..., found ...</c>.</summary>
    public override string ToString() => (Line, Column) switch
    {
        (0, _) => FormattableString.Invariant($"{File}: expected {Expected}, found {Found}"),
        (_, 0) => FormattableString.Invariant($"{File}:{Line}: expected {Expected}, found {Found}"),
        _ => FormattableString.Invariant($"{File}:{Line}:{Column}: expected {Expected}, found {Found}"),
    };
}
