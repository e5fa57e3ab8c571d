using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

public enum SpreaderKind
{
    Rotary,
    Drop,
    HandCrank,
}

/// <summary>The spreader. Null means not known.</summary>
public sealed record SpreaderFacts
{
    public SpreaderKind Kind { get; init; } = SpreaderKind.Rotary;

    /// <summary>Effective swath from a pan or pattern test.</summary>
    public Length? Swath { get; init; }

    public Speed? WalkingSpeed { get; init; }
}

public enum SprayerKind
{
    Backpack,
    HandCan,
    PushTank,
    Boom,
    HoseEnd,
}

/// <summary>The sprayer. Null means not known.</summary>
public sealed record SprayerFacts
{
    public SprayerKind Kind { get; init; } = SprayerKind.Backpack;

    public Volume? Tank { get; init; }

    /// <summary>Carrier put out per area at the calibrated walk.</summary>
    public VolumePerArea? Carrier { get; init; }

    /// <summary>Day the carrier was calibrated; null where not known.</summary>
    public DateOnly? Calibrated { get; init; }
}
