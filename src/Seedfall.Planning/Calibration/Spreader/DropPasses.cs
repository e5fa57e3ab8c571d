using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>Passes of a drop spreader, which lays an even band as wide as its hopper (extension leaflets; no pan test is needed for its shape).</summary>
public static class DropPasses
{
    /// <summary>
    /// How far inside the last wheel track the near wheel runs, so that the bands meet without gap or overlap: <c>t - w</c>. Negative
    /// where the wheels stand inside the hopper's width: that much outside.
    /// </summary>
    /// <param name="opening">Width of the row of holes; above 0.</param>
    /// <param name="track">Distance between the wheels, middle to middle; above 0.</param>
    public static Length WheelInside(Length opening, Length track) => opening > Length.Zero && track > Length.Zero
        ? track - opening
        : throw new ArgumentOutOfRangeException(nameof(opening), opening, $"a width and a track above 0 are needed, the track was {track}");
}
