using System.Diagnostics.CodeAnalysis;

namespace Seedfall.Photos.Reading;

/// <summary>A picture, or why it is refused.</summary>
public sealed record PhotoReadResult
{
    private PhotoReadResult(Photo? photo, PhotoProblem? problem) => (Photo, Problem) = (photo, problem);

    /// <summary>The picture, where it could be read.</summary>
    public Photo? Photo { get; }

    /// <summary>What is wrong with it, where it could not.</summary>
    public PhotoProblem? Problem { get; }

    /// <summary>True where there is a picture.</summary>
    [MemberNotNullWhen(true, nameof(Photo))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool IsRead => Photo is not null;

    internal static PhotoReadResult Read(Photo photo) => new(photo, null);

    internal static PhotoReadResult Refused(PhotoProblemKind kind, string sentence) => new(null, new PhotoProblem(kind, sentence));
}
