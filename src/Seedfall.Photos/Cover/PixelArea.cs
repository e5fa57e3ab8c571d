using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>A rectangle of pixels; right and bottom are the first beyond it.</summary>
internal readonly record struct PixelArea(int Left, int Top, int Right, int Bottom)
{
    internal static PixelArea Of(PictureArea area, PixelImage image)
    {
        if (!(area.Left >= 0.0 && area.Top >= 0.0 && area.Right <= 1.0 && area.Bottom <= 1.0 && area.Left < area.Right && area.Top < area.Bottom))
        {
            throw new ArgumentOutOfRangeException(nameof(area), area, "expected a rectangle inside the picture, 0 to 1");
        }

        var (left, top) = ((int)(area.Left * image.Width), (int)(area.Top * image.Height));
        return new PixelArea(left, top, Math.Max(left + 1, (int)Math.Ceiling(area.Right * image.Width)), Math.Max(top + 1, (int)Math.Ceiling(area.Bottom * image.Height)));
    }

    internal bool Holds(int x, int y) => x >= Left && x < Right && y >= Top && y < Bottom;

    internal void Fill(byte[] plane, int width, byte value)
    {
        for (var y = Top; y < Bottom; y++)
        {
            plane.AsSpan((y * width) + Left, Right - Left).Fill(value);
        }
    }
}
