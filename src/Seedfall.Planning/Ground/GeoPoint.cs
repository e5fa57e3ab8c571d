namespace Seedfall.Planning.Ground;

/// <summary>A point on the earth in WGS 84, as phones, maps and GeoJSON, GPX and KML files give it.</summary>
/// <param name="LatitudeDeg">Degrees north, -90 to 90; south is negative.</param>
/// <param name="LongitudeDeg">Degrees east, -180 to 180; west is negative.</param>
public readonly record struct GeoPoint(double LatitudeDeg, double LongitudeDeg);
