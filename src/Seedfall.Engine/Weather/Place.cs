namespace Seedfall.Engine.Weather;

/// <summary>A point on the ground.</summary>
/// <param name="LatitudeDeg">Degrees north, -90 to 90.</param>
/// <param name="LongitudeDeg">Degrees east, -180 to 180 (west is negative).</param>
/// <param name="ElevationM">Meters above sea level, -430 to 9000.</param>
public sealed record Place(double LatitudeDeg, double LongitudeDeg, double ElevationM);
