namespace Seedfall.Photos.Reading;

/// <summary>What a picture may be; everything but the bytes is judged by its header, before a pixel is decoded.</summary>
public sealed record PhotoLimits
{
    /// <summary>The limits used where none are given.</summary>
    public static PhotoLimits Ordinary { get; } = new();

    /// <summary>Largest file, bytes.</summary>
    public int MostBytes { get; init; } = 40 << 20;

    /// <summary>Most pixels a header may declare.</summary>
    public long MostPixels { get; init; } = 50_000_000;

    /// <summary>Longest side a header may declare, pixels.</summary>
    public int LongestSide { get; init; } = 12_000;

    /// <summary>Most frames of an animated picture; the first is taken.</summary>
    public int MostFrames { get; init; } = 25;

    /// <summary>Long side to decode to, pixels (the result may be a tenth longer, never enlarged); null keeps the full size.</summary>
    public int? DecodeLongSide { get; init; } = 2000;
}
