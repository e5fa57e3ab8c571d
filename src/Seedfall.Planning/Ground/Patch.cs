using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Judgment.Survey;

namespace Seedfall.Planning.Ground;

/// <summary>Why a patch is thin, as judged on the walk-over.</summary>
public enum DamageCause
{
    Unknown,
    Drought,
    Disease,
    Grubs,
    OtherInsects,
    Shade,
    Wear,
    Weeds,
    DogSpots,
    WinterKill,
    Neglect,
}

/// <summary>A part of the lawn in one condition. Null means not known; the plan then says what it assumed.</summary>
public sealed record Patch
{
    /// <summary>Stable short id, unique within the lawn: lower-case letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required PatchShape Shape { get; init; }

    /// <summary>How the shape's lengths were taken; decides how far off the area may be.</summary>
    public Measuring? Measured { get; init; }

    /// <summary>Grasses growing or wanted here; at least one.</summary>
    public required IReadOnlyList<GrassSpecies> Grasses { get; init; }

    /// <summary>Share of the ground covered by living turf.</summary>
    public Fraction? LivingCover { get; init; }

    public DamageCause Cause { get; init; } = DamageCause.Unknown;

    /// <summary>True when the cause has been dealt with (grubs treated, tree limbed up, leak mended).</summary>
    public bool CauseCured { get; init; }

    /// <summary>Hours of direct sun on a clear day in September (March in the south).</summary>
    public double? SunHours { get; init; }

    /// <summary>What stands between the patch and the sky; hours of sun are reckoned from it where none were counted.</summary>
    public IReadOnlyList<SkyObstacle> Obstacles { get; init; } = [];

    /// <summary>The reckoned hours of sun with their working, once <see cref="SunFilling"/> has been over the lawn.</summary>
    internal Figure? SunWorked { get; init; }

    /// <summary>Slope in percent (rise over run times 100).</summary>
    public double? SlopePercent { get; init; }

    /// <summary>Direction the slope faces (downhill), degrees clockwise from true north; null leaves the slope out of the sun.</summary>
    public double? AspectDeg { get; init; }

    public Depth? Thatch { get; init; }

    /// <summary>Living white grubs per square foot.</summary>
    public double? GrubsPerSquareFoot { get; init; }

    /// <summary>Share of the ground covered by weeds.</summary>
    public Fraction? WeedCover { get; init; }

    /// <summary>True when crowns are firm and the turf is only dormant (tug test).</summary>
    public bool? Dormant { get; init; }

    /// <summary>What the walk-over found; measured there, it wins over what is entered above.</summary>
    public PatchSurvey? Survey { get; init; }
}
