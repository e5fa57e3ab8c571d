using System.Diagnostics.CodeAnalysis;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Exchange.Ground;

/// <summary>An outline read from a file, in degrees.</summary>
/// <param name="Name">What the file calls it; null where it does not say.</param>
/// <param name="Ring">Corners in order; the first is not repeated.</param>
/// <param name="Holes">Rings inside that are not part of it.</param>
public sealed record ImportedOutline(string? Name, IReadOnlyList<GeoPoint> Ring, IReadOnlyList<IReadOnlyList<GeoPoint>> Holes)
{
    /// <summary>The outline in meters on a sheet; may still cross itself, see <see cref="OutlineFaults"/>.</summary>
    public PatchShape.Outline OnSheet(LocalPlane plane)
    {
        ArgumentNullException.ThrowIfNull(plane);
        return new(plane.ToGround(Ring), [.. Holes.Select(plane.ToGround)]);
    }
}

/// <summary>A walk read from a file.</summary>
/// <param name="Name">What the file calls it; null where it does not say.</param>
/// <param name="Fixes">Its positions in order.</param>
public sealed record ImportedWalk(string? Name, IReadOnlyList<TrackFix> Fixes);

/// <summary>What stands in a file of outlines, or why it was refused; never half of each.</summary>
public sealed record OutlineReadResult
{
    public IReadOnlyList<ImportedOutline> Outlines { get; private init; } = [];

    public IReadOnlyList<ImportedWalk> Walks { get; private init; } = [];

    /// <summary>What was passed over or closed; never silent.</summary>
    public IReadOnlyList<string> Remarks { get; private init; } = [];

    /// <summary>Why the file was refused; null where it was read.</summary>
    public OutlineProblem? Problem { get; private init; }

    /// <summary>True where the file was read.</summary>
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool IsRead => Problem is null;

    /// <summary>The first point of the file: a zero point for a sheet.</summary>
    public GeoPoint? First => Outlines.Count > 0 ? Outlines[0].Ring[0] : Walks.Count > 0 ? Walks[0].Fixes[0].At : null;

    internal static OutlineReadResult Read(OutlineGather gather) => new() { Outlines = gather.Outlines, Walks = gather.Walks, Remarks = gather.Remarks };

    internal static OutlineReadResult Refused(OutlineProblem problem) => new() { Problem = problem };
}
