using Seedfall.Photos.Color;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>A picture looked at once, to be measured with as many taps as anybody likes to make.</summary>
public sealed class CoverScene
{
    private readonly CoverModel _model;
    private readonly float[] _evidence;
    private readonly EvidenceCounts _counts;
    private readonly IReadOnlyList<CoverFlag> _flags;
    private readonly PixelArea? _leftOut;

    private CoverScene(int width, int height, CoverModel model, float[] evidence, IReadOnlyList<CoverFlag> flags, PixelArea? leftOut)
    {
        (Width, Height, _model, _evidence, _flags, _leftOut) = (width, height, model, evidence, flags, leftOut);
        _counts = EvidenceCounts.Of(evidence, leftOut is { } area ? i => area.Holds(i % width, i / width) : null);
    }

    /// <summary>Pixels across of what is measured.</summary>
    public int Width { get; }

    /// <summary>Pixels down.</summary>
    public int Height { get; }

    /// <summary>Looks at a picture with the model shipped.</summary>
    public static CoverScene Of(PixelImage image, PictureArea? grayCard = null) => Of(image, grayCard, CoverModel.Shipped);

    internal static CoverScene Of(PixelImage image, PictureArea? grayCard, CoverModel model)
    {
        ArgumentNullException.ThrowIfNull(image);
        ArgumentOutOfRangeException.ThrowIfLessThan(Math.Min(image.Width, image.Height), GreenCover.LeastSide, nameof(image));
        var original = Math.Max(image.Width, image.Height);
        image = AreaScale.ToLongSide(image, GreenCover.LongSide);
        var card = grayCard is { } area ? PixelArea.Of(area, image) : (PixelArea?)null;
        var balance = card is { } where ? WhiteBalance.FromCard(image, where) : null;
        image = balance?.Apply(image) ?? image;
        var planes = ColorPlanes.Of(image);
        var features = PixelFeatures.Of(planes, model.FirstLook);
        var evidence = SecondLook.Evidence(features, model, planes.Count);
        DryLeaf.HoldDown(planes, evidence);
        var mulch = PaperMulch.LeaveOut(planes, evidence);
        var flags = CoverFlags.Of(image, planes, features.Colors, mulch, original, cardUnreadable: card is not null && balance is null);
        return new CoverScene(image.Width, image.Height, model, evidence, flags, card);
    }

    /// <summary>Cover with the taps made so far.</summary>
    public CoverMeasure Measure(IReadOnlyList<CoverTap> taps) => Measure(taps, shuffle: 1);

    /// <summary>The same, asking for other points: for validation, where one order of asking may be lucky.</summary>
    internal CoverMeasure Measure(IReadOnlyList<CoverTap> taps, int shuffle)
    {
        ArgumentNullException.ThrowIfNull(taps);
        var bias = PictureBias.After(_model.OffsetSpread, [.. taps.Select(tap => ((double)_evidence[At(tap)], tap.IsGreen))]);
        var (cover, half) = CoverRange.Of(_counts, bias, _model);
        var (low, high) = (Math.Max(0.0, cover - half), Math.Min(1.0, cover + half));
        var flags = high - low > CoverRange.Unclear ? [.. _flags, CoverFlag.Unclear] : _flags;
        return new CoverMeasure(cover, low, high, flags, Mask(bias.Mean), WorthTapping.Of(_evidence, Width, Height, _counts, bias, taps, _leftOut, shuffle)) { HalfRange = half };
    }

    /// <summary>The bias with which this picture would measure the cover given, log odds: for fitting.</summary>
    internal double BiasToward(double cover)
    {
        var (low, high) = (-8.0, 8.0);
        for (var i = 0; i < 40; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = _counts.Cover(new EvidenceReading(middle, 1.0)) < cover ? (middle, high) : (low, middle);
        }

        return low;
    }

    private int At(CoverTap tap)
    {
        if (!(tap.X is >= 0.0 and <= 1.0 && tap.Y is >= 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(tap), $"({tap.X}, {tap.Y})", "expected a tap inside the picture, 0 to 1 from the left and from the top");
        }

        return (Math.Min(Height - 1, (int)(tap.Y * Height)) * Width) + Math.Min(Width - 1, (int)(tap.X * Width));
    }

    private CoverMask Mask(EvidenceReading reading)
    {
        var (bias, trust) = ((float)reading.Bias, (float)reading.Trust);
        var chance = new byte[_evidence.Length];
        for (var i = 0; i < chance.Length; i++)
        {
            chance[i] = (byte)((Logistic.Of((trust * _evidence[i]) + bias) * CoverMask.Sure) + 0.5f);
        }

        _leftOut?.Fill(chance, Width, CoverMask.LeftOut);
        return new CoverMask(Width, Height, chance);
    }
}
