using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>The eleven numbers of each pixel that the second look judges, with the eight of the picture.</summary>
internal sealed class PixelFeatures
{
    /// <summary>Numbers of a pixel.</summary>
    internal const int PixelCount = 11;

    /// <summary>Numbers of a pixel and its picture.</summary>
    internal const int Count = PixelCount + PictureColors.Count;

    private readonly float[][] _planes;
    private readonly float[] _offsets;

    private PixelFeatures(float[][] planes, float[] offsets, PictureColors colors) => (_planes, _offsets, Colors) = (planes, offsets, colors);

    internal PictureColors Colors { get; }

    /// <summary>Planes in order; the offset is to be taken from each.</summary>
    internal (float[] Plane, float Offset) this[int i] => (_planes[i], _offsets[i]);

    internal static PixelFeatures Of(ColorPlanes planes, IReadOnlyList<double> firstLook)
    {
        var chances = FirstLook.Chances(planes, firstLook);
        var colors = PictureColors.Of(planes, chances);
        var (near, around, scratch) = (new float[planes.Count], new float[planes.Count], new float[planes.Count]);
        BoxMean.Apply(chances, near, scratch, planes.Width, planes.Height, 3);
        BoxMean.Apply(chances, around, scratch, planes.Width, planes.Height, 10);
        var (red, blue, light) = (colors.GroundGreenRed, colors.GroundGreenBlue, colors.GroundLight);
        return new PixelFeatures(
            [planes.GreenRed, planes.GreenBlue, planes.Light, planes.WideGreenRed, planes.WideGreenBlue, planes.WideLight, planes.GreenRedAbove, planes.Rough, chances, near, around],
            [red, blue, light, red, blue, light, 0f, 0f, 0f, 0f, 0f],
            colors);
    }

    /// <summary>All nineteen numbers of one pixel, for fitting.</summary>
    internal void CopyTo(int pixel, Span<float> to)
    {
        for (var j = 0; j < PixelCount; j++)
        {
            to[j] = _planes[j][pixel] - _offsets[j];
        }

        Colors.CopyTo(to[PixelCount..]);
    }
}
