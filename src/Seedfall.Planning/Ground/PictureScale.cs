using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>A place on a picture, pixels right and down from its top left corner.</summary>
public readonly record struct PicturePoint(double RightPx, double DownPx);

/// <summary>Pixels of a plan, survey or aerial picture to meters, from two points on it a known distance apart.</summary>
public sealed class PictureScale
{
    /// <summary>Half width of the range a pick on a picture falls in nine times in ten, px: a finger on a phone, not a survey.</summary>
    public const double UsualPickPx = 3.0;

    private readonly PicturePoint _zero;
    private readonly double _sine;
    private readonly double _cosine;

    /// <summary>The scale by two picks.</summary>
    /// <param name="first">First known point; becomes the zero point of the meters.</param>
    /// <param name="second">Second known point, at least 10 px away.</param>
    /// <param name="between">Distance between them on the ground, above zero.</param>
    /// <param name="distanceBand">Half width of the distance's own 90 % range, as a share.</param>
    /// <param name="pickPx">Half width of a pick's 90 % range in each direction, px.</param>
    /// <param name="upDeg">Bearing the picture's upper edge points to, degrees clockwise from north.</param>
    public PictureScale(PicturePoint first, PicturePoint second, Length between, Fraction distanceBand, double pickPx = UsualPickPx, double upDeg = 0.0)
    {
        var apartPx = Math.Sqrt(Square(second.RightPx - first.RightPx) + Square(second.DownPx - first.DownPx));
        if (!(apartPx >= LeastApartPx && double.IsFinite(apartPx)))
        {
            throw new ArgumentException($"two points at least {LeastApartPx} px apart are needed, found {apartPx:0.#} px", nameof(second));
        }

        if (!(between.Meters > 0.0) || !(pickPx >= 0.0) || !double.IsFinite(upDeg))
        {
            throw new ArgumentOutOfRangeException(nameof(between), between, "a distance above zero, a pick of zero or more and a finite bearing are needed");
        }

        _zero = first;
        (_sine, _cosine) = Math.SinCos(upDeg * Math.PI / 180.0);
        MetersPerPixel = between.Meters / apartPx;
        PickM = pickPx * MetersPerPixel;

        // Two picks, each off along the line between them.
        ScaleBand = Math.Sqrt(2.0 * Square(pickPx / apartPx) + Square(distanceBand.Value));
    }

    /// <summary>The least distance of the two points that still gives a scale, px.</summary>
    public const double LeastApartPx = 10.0;

    public double MetersPerPixel { get; }

    /// <summary>Half width of the scale's 90 % range as a share: two picks and the distance itself; areas are off by twice that.</summary>
    public double ScaleBand { get; }

    /// <summary>Half width of a corner's 90 % range in each direction, m.</summary>
    public double PickM { get; }

    /// <summary>Meters east and north of the first point.</summary>
    public GroundPoint ToGround(PicturePoint point)
    {
        var (rightM, upM) = ((point.RightPx - _zero.RightPx) * MetersPerPixel, (_zero.DownPx - point.DownPx) * MetersPerPixel);
        return new(rightM * _cosine + upM * _sine, upM * _cosine - rightM * _sine);
    }

    /// <summary>The place on the picture of a point in meters.</summary>
    public PicturePoint ToPicture(GroundPoint point)
    {
        var (rightM, upM) = (point.EastM * _cosine - point.NorthM * _sine, point.EastM * _sine + point.NorthM * _cosine);
        return new(_zero.RightPx + rightM / MetersPerPixel, _zero.DownPx - upM / MetersPerPixel);
    }

    /// <summary>
    /// How an outline drawn over this picture was measured: scale and picks together,
    /// <c>band^2 = (2 scale)^2 + (corner part)^2</c>.
    /// </summary>
    public Measuring Measured(PatchShape.Outline outline)
    {
        var band = Math.Sqrt(Square(2.0 * ScaleBand) + Square(CornerError.AreaShare(outline, PickM)));
        return new(MeasuredBy.Picture, Fraction.Of(Math.Min(1.0, band)));
    }

    private static double Square(double x) => x * x;
}
