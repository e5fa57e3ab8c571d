using System.Text.Json;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Photos;

/// <summary>The four points marked on an overview, in shares of its width and height, and what they span.</summary>
/// <param name="Points">Near left, near right, far right, far left; each across and down.</param>
/// <param name="AcrossM">The near side.</param>
/// <param name="AwayM">The sides that run away; for a rectangle.</param>
/// <param name="Tapes">Right, far, left side and the diagonal from near left, where it is no rectangle.</param>
/// <param name="Threshold">Cover below which ground is thin.</param>
public sealed record MarksNote(IReadOnlyList<PicturePoint> Points, double AcrossM, double AwayM, IReadOnlyList<double>? Tapes, double Threshold)
{
    /// <summary>Null where the tapes cannot meet.</summary>
    public MarkFrame? Frame() => Tapes is [var right, var far, var left, var diagonal] ? MarkFrame.Taped(AcrossM, right, far, left, diagonal) : MarkFrame.Rectangle(AcrossM, AwayM);
}

/// <summary>A thin spot as stored; outlines in pixels of the plan view.</summary>
public sealed record SpotNote(IReadOnlyList<ImagePoint> Ring, IReadOnlyList<IReadOnlyList<ImagePoint>> Holes, ImagePoint Middle, double AreaM2, double LowM2, double HighM2, double Cover);

/// <summary>What was found on an overview.</summary>
/// <param name="Width">Pixels of the plan view.</param>
/// <param name="PixelsPerMeter">Of the plan view.</param>
/// <param name="MarkedM2">Ground within the marks.</param>
/// <param name="MeasuredM2">Ground seen well enough.</param>
/// <param name="TooCoarseM2">Ground seen too coarsely or too flat.</param>
/// <param name="CellM">Side of a cell of the map.</param>
/// <param name="FewestPixels">Photo pixels under the coarsest measured cell.</param>
/// <param name="FlattestDeg">How steeply the farthest measured cell was looked at.</param>
public sealed record FoundNote(
    int Width, int Height, double PixelsPerMeter, double MarkedM2, double MeasuredM2, double TooCoarseM2, double CellM, double FewestPixels, double FlattestDeg,
    IReadOnlyList<SpotNote> Spots, int SmallCount, double SmallM2);

/// <summary>The notes of a photo's row as what they are.</summary>
internal static class PhotoNotes
{
    public static IReadOnlyList<CoverTap> Taps(this PhotoRow row) => JsonSerializer.Deserialize<List<CoverTap>>(row.Taps)!;

    public static PictureArea? Card(this PhotoRow row) => row.Card is { } text ? JsonSerializer.Deserialize<PictureArea>(text) : null;

    public static IReadOnlyList<PicturePoint> WorthTapping(this PhotoRow row) => JsonSerializer.Deserialize<List<PicturePoint>>(row.WorthTapping)!;

    public static MarksNote? Marks(this PhotoRow row) => row.Marks is { } text ? JsonSerializer.Deserialize<MarksNote>(text) : null;

    public static FoundNote? Found(this PhotoRow row) => row.Found is { } text ? JsonSerializer.Deserialize<FoundNote>(text) : null;

    public static IReadOnlyList<CoverFlag> Flags(this PhotoRow row) =>
        [.. row.Flags.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(f => Enum.TryParse<CoverFlag>(f, out var flag) ? flag : (CoverFlag?)null).OfType<CoverFlag>()];

    public static string Text<T>(T note) => JsonSerializer.Serialize(note);
}
