using System.Text.Json;
using System.Text.Json.Serialization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>A picture under the sheet and how it lies there.</summary>
/// <param name="File">Its name in the lawn's picture folder.</param>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
/// <param name="East">Where its middle lies, meters east of the sheet's zero point.</param>
/// <param name="North">Where its middle lies, meters north.</param>
/// <param name="MetersPerPixel">Size of a pixel on the ground.</param>
/// <param name="TurnDeg">How far it is turned clockwise.</param>
/// <param name="Scale">The two known points it was scaled by; null until it is.</param>
public sealed record PicturePlacing(string File, int Width, int Height, double East, double North, double MetersPerPixel, double TurnDeg, KnownDistance? Scale)
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, RespectRequiredConstructorParameters = true };

    /// <summary>A picture nobody has scaled yet: as wide as a usual lot, which is a guess and said to be one.</summary>
    public static PicturePlacing Unscaled(string file, int width, int height) => new(file, width, height, 0.0, 0.0, 30.0 / width, 0.0, null);

    /// <summary>The scale with its errors; null for a picture not scaled.</summary>
    [JsonIgnore]
    public PictureScale? Scaled => Scale is { A: [var ax, var ay], B: [var bx, var by] } known
        ? new PictureScale(new(ax, ay), new(bx, by), Length.FromMeters(known.Meters), TapedDistance, upDeg: TurnDeg)
        : null;

    /// <summary>Half width of a taped distance's own range, as a share: common practice, a hand tape pulled over grass.</summary>
    public static Fraction TapedDistance { get; } = Fraction.Of(0.01);

    [JsonIgnore]
    public string Json => JsonSerializer.Serialize(this, Strict);

    /// <summary>What a form says of the picture; null where it is damaged, or tells of another picture than the one stored.</summary>
    public static PicturePlacing? Read(string json, PicturePlacing stored)
    {
        try
        {
            return JsonSerializer.Deserialize<PicturePlacing>(json, Strict) is { } read && read.IsSound && read.File == stored.File && read.Width == stored.Width && read.Height == stored.Height ? read : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private bool IsSound =>
        Math.Abs(East) <= 1.0e5 && Math.Abs(North) <= 1.0e5 && MetersPerPixel is > 1.0e-5 and < 100.0 && Math.Abs(TurnDeg) <= 360.0
        && (Scale is null || Scale.IsSound(Width, Height));
}

/// <summary>Two points of a picture, right and down in pixels, and how far apart they lie on the ground.</summary>
public sealed record KnownDistance(IReadOnlyList<double> A, IReadOnlyList<double> B, double Meters)
{
    /// <summary>Two points on or near the picture, far enough apart, and a distance above zero.</summary>
    internal bool IsSound(int width, int height) =>
        A.Count == 2 && B.Count == 2 && Meters is > 0.0 and < 1.0e4
        && A.Concat(B).All(v => v > -2.0 * Math.Max(width, height) && v < 3.0 * Math.Max(width, height))
        && double.Hypot(A[0] - B[0], A[1] - B[1]) >= PictureScale.LeastApartPx;
}
