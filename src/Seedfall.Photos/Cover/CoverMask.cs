namespace Seedfall.Photos.Cover;

/// <summary>How sure it is that each pixel of the measured picture is living green.</summary>
public sealed class CoverMask
{
    /// <summary>Not counted: the gray card, or nothing to judge.</summary>
    public const byte LeftOut = 255;

    /// <summary>The greatest chance, a sure green.</summary>
    public const byte Sure = 254;

    internal CoverMask(int width, int height, byte[] chance) => (Width, Height, Chance) = (width, height, chance);

    /// <summary>Pixels across, as of the picture measured: its long side is at most <see cref="GreenCover.LongSide"/>.</summary>
    public int Width { get; }

    /// <summary>Pixels down.</summary>
    public int Height { get; }

    /// <summary>Row by row: 0 not green to 254 green, or 255 left out.</summary>
    public byte[] Chance { get; }

    /// <summary>True where green is likelier than not.</summary>
    public bool IsGreen(int x, int y) => Chance[(y * Width) + x] is > Sure / 2 and not LeftOut;
}
