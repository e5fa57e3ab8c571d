namespace Seedfall.Photos.Cover;

/// <summary>What the person says about a picture before it is measured.</summary>
public sealed record CoverOptions
{
    /// <summary>Points tapped as green or not green; ten are plenty.</summary>
    public IReadOnlyList<CoverTap> Taps { get; init; } = [];

    /// <summary>Where a gray card lies; its color sets the white balance and it is left out of the count.</summary>
    public PictureArea? GrayCard { get; init; }
}

/// <summary>A tapped point.</summary>
/// <param name="X">From the left edge, fraction of the width, 0 to 1.</param>
/// <param name="Y">From the top edge, fraction of the height, 0 to 1.</param>
/// <param name="IsGreen">Living green leaf, or anything else.</param>
public readonly record struct CoverTap(double X, double Y, bool IsGreen);

/// <summary>A rectangle of a picture, fractions of its width and height from the upper left.</summary>
public readonly record struct PictureArea(double Left, double Top, double Right, double Bottom);
