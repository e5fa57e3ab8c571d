namespace Seedfall.Photos.Overview;

/// <summary>A point of a picture, pixels from its upper left corner; the middle of the first pixel is (0.5, 0.5).</summary>
/// <param name="X">Pixels to the right.</param>
/// <param name="Y">Pixels down.</param>
public readonly record struct ImagePoint(double X, double Y);

/// <summary>A point of the ground as seen from above.</summary>
/// <param name="AcrossM">Meters to the right of the first mark, as one stands with the camera.</param>
/// <param name="AwayM">Meters away from the camera.</param>
public readonly record struct PlanPoint(double AcrossM, double AwayM);
