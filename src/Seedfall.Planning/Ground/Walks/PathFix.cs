namespace Seedfall.Planning.Ground.Walks;

/// <summary>A sound fix on the sheet.</summary>
/// <param name="At">Where, m.</param>
/// <param name="Seconds">When, s from the first.</param>
/// <param name="DeviationM">Standard deviation in each direction, m.</param>
internal readonly record struct PathFix(GroundPoint At, double Seconds, double DeviationM);
