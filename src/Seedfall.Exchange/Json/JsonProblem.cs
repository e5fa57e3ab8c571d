namespace Seedfall.Exchange.Json;

/// <summary>Why a JSON file was refused, and where.</summary>
/// <param name="File">Name of the file as given.</param>
/// <param name="Path">Place in the document, for example <c>patches[0].shape.rectangle.long</c>; empty for the whole.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Byte position in the line, from 1.</param>
/// <param name="Expected">What would have been right.</param>
/// <param name="Found">What stood there.</param>
public sealed record JsonProblem(string File, string Path, int Line, int Column, string Expected, string Found)
{
    /// <summary>One line: <c>file:line:column: path: expected ..., found ...</c>.</summary>
    public override string ToString()
    {
        var place = Path.Length == 0 ? "" : $"{Path}: ";
        return FormattableString.Invariant($"{File}:{Line}:{Column}: {place}expected {Expected}, found {Found}");
    }
}
