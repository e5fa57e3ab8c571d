namespace Seedfall.Planning.Ground.Walks;

/// <summary>One position a phone gave while the edge was walked.</summary>
/// <param name="At">Where.</param>
/// <param name="AccuracyM">The phone's own accuracy, m; null where the track carries none.</param>
/// <param name="Time">When; null where the track carries no times.</param>
public readonly record struct TrackFix(GeoPoint At, double? AccuracyM, DateTimeOffset? Time);
