using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Reading;

/// <summary>A picture as read: upright, in sRGB, with what its file told about it.</summary>
/// <param name="Image">The pixels, turned as the camera was held, scaled down where asked.</param>
/// <param name="Format">What the bytes were.</param>
/// <param name="OriginalWidth">Pixels across in the file, upright.</param>
/// <param name="OriginalHeight">Pixels down in the file, upright.</param>
/// <param name="TakenAt">When it was taken by the camera's clock, without a zone; null where the file does not say.</param>
/// <param name="HadLocation">The file told where it was taken; the pixels do not.</param>
public sealed record Photo(PixelImage Image, PhotoFormat Format, int OriginalWidth, int OriginalHeight, DateTime? TakenAt, bool HadLocation);
