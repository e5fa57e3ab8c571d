using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Water;

/// <summary>Kinds of sprinkler as the trade names them.</summary>
public enum SprinklerKind
{
    Unknown,
    Oscillating,
    Impact,
    FixedSpray,
    Rotor,
    MultiStreamRotor,
    Traveling,
    HandHose,
}

/// <summary>A filled bucket and a watch: the tap's flow.</summary>
public sealed record BucketTest(Volume Volume, double Seconds)
{
    /// <summary>Flow = volume / time.</summary>
    public FlowRate Flow => FlowRate.FromLitersPerMinute(Volume.Liters / (Seconds / 60.0));
}

/// <summary>Catch-can readings under one set: depths caught in the minutes it ran.</summary>
public sealed record CatchCanTest(IReadOnlyList<Depth> Readings, double Minutes);

/// <summary>Heads that run together (or one hose-end sprinkler in one position).</summary>
public sealed record SprinklerSet
{
    public required string Name { get; init; }

    /// <summary>Patches this set wets, by id.</summary>
    public required IReadOnlyList<string> PatchIds { get; init; }

    public SprinklerKind Kind { get; init; } = SprinklerKind.Unknown;

    public PrecipitationRate? Rate { get; init; }

    public CatchCanTest? Cans { get; init; }

    /// <summary>What the set draws while it runs; null means area times rate, or the whole tap.</summary>
    public FlowRate? Flow { get; init; }

    /// <summary>Positions the sprinkler is moved through by hand to cover its patches in one round; 1 for fixed heads.</summary>
    public int Positions { get; init; } = 1;

    /// <summary>Where its heads stand on the lawn's sheet; for a sprinkler moved by hand, the places it is set down at. Empty where not placed.</summary>
    public IReadOnlyList<CoverageHead> Heads { get; init; } = [];
}

/// <summary>Days of the week as flags.</summary>
[Flags]
public enum WeekDays
{
    None = 0,
    Monday = 1,
    Tuesday = 2,
    Wednesday = 4,
    Thursday = 8,
    Friday = 16,
    Saturday = 32,
    Sunday = 64,
    All = 127,
}

/// <summary>Hours in which watering is allowed or possible; <see cref="To"/> after <see cref="From"/> on the same day.</summary>
public sealed record WateringWindow(WeekDays Days, TimeOnly From, TimeOnly To);

/// <summary>Where the lawn's water comes from and when it may be used. Null means not known.</summary>
public sealed record WaterSupply
{
    public BucketTest? Bucket { get; init; }

    /// <summary>Typed tap flow, used where no bucket test was made.</summary>
    public FlowRate? Flow { get; init; }

    public IReadOnlyList<SprinklerSet> Sets { get; init; } = [];

    /// <summary>Allowed hours; empty means any hour.</summary>
    public IReadOnlyList<WateringWindow> Allowed { get; init; } = [];

    /// <summary>True once the town has granted extra watering for new seed.</summary>
    public bool NewSeedPermit { get; init; }

    /// <summary>True when a timer can start rounds with nobody at home.</summary>
    public bool? Timer { get; init; }
}
