namespace Seedfall.Photos.Reading;

/// <summary>Why a picture is refused.</summary>
public enum PhotoProblemKind
{
    /// <summary>No bytes at all.</summary>
    Empty,

    /// <summary>None of the formats that are read.</summary>
    UnknownFormat,

    /// <summary>More bytes than allowed.</summary>
    TooManyBytes,

    /// <summary>The header declares more pixels, or a longer side, than allowed.</summary>
    TooManyPixels,

    /// <summary>More frames than allowed.</summary>
    TooManyFrames,

    /// <summary>The file ends before the picture does.</summary>
    Truncated,

    /// <summary>The bytes do not make a picture.</summary>
    Damaged,
}

/// <summary>A refused picture, in one sentence for the person who chose it.</summary>
/// <param name="Kind">For the program.</param>
/// <param name="Sentence">For the reader: what was expected and what was found.</param>
public sealed record PhotoProblem(PhotoProblemKind Kind, string Sentence)
{
    public override string ToString() => Sentence;
}
