namespace Seedfall.Photos.Cover;

/// <summary>Green cover of one straight-down picture.</summary>
/// <param name="Cover">Share of the ground under living green, 0 to 1.</param>
/// <param name="Low">The true share is below this in one picture of twenty.</param>
/// <param name="High">The true share is above this in one picture of twenty.</param>
/// <param name="Flags">What makes it doubtful, each once.</param>
/// <param name="Mask">Which pixels were counted, to be checked by eye.</param>
/// <param name="WorthTapping">Points whose tapping would tell most, best first; their answer is not known.</param>
public sealed record CoverMeasure(
    double Cover, double Low, double High, IReadOnlyList<CoverFlag> Flags, CoverMask Mask, IReadOnlyList<PicturePoint> WorthTapping)
{
    /// <summary>Half the 90 % range before it was cut at nothing and at all.</summary>
    internal double HalfRange { get; init; }
}

/// <summary>A point of a picture, fractions of its width and height from the upper left.</summary>
public readonly record struct PicturePoint(double X, double Y);
