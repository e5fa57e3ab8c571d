namespace Seedfall.Photos.Reading;

/// <summary>The kinds of picture that are read.</summary>
public enum PhotoFormat
{
    Jpeg,
    Png,
    WebP,
    Heic,
}
