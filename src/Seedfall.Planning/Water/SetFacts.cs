using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>One sprinkler set as the proof reckons with it.</summary>
/// <param name="Name">As the adviser calls it.</param>
/// <param name="Key">Stable key for figure ids, for example <c>set-1</c>.</param>
/// <param name="Hand">True where a person holds the hose and judges the soaking.</param>
/// <param name="Positions">Places it is moved through in one round; 1 for fixed heads.</param>
/// <param name="AreaM2">Ground it waters, all positions together, m2.</param>
/// <param name="NominalMmh">Rate it was made or measured for, mm/h.</param>
/// <param name="RateMmh">Rate on this tap, mm/h; never above nominal.</param>
/// <param name="DrawLpm">What it takes from the tap, L/min; never above the tap.</param>
/// <param name="RunTimeMultiplier">Longer run for uneven watering, at least 1.</param>
/// <param name="IntakeMmh">Rate the bare ground takes, mm/h.</param>
/// <param name="StorageMm">Water the surface holds before it runs, mm.</param>
/// <param name="Figures">Rate, uniformity, multiplier, draw.</param>
internal sealed record SetFacts(
    string Name,
    string Key,
    bool Hand,
    int Positions,
    double AreaM2,
    double NominalMmh,
    double RateMmh,
    double DrawLpm,
    double RunTimeMultiplier,
    double IntakeMmh,
    double StorageMm,
    IReadOnlyList<Figure> Figures)
{
    /// <summary>Ids of the patches it waters.</summary>
    internal IReadOnlyList<string> PatchIds { get; init; } = [];

    /// <summary>Name of the tap it stands on; null for any of several that are all alike, or the only one.</summary>
    internal string? Tap { get; init; }

    /// <summary>Name of its timer; null where none is named.</summary>
    internal string? Timer { get; init; }
}
