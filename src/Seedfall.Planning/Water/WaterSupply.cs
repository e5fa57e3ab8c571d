using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Planning.Water.Supply;
using Seedfall.Planning.Water.Timetable;

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

    /// <summary>Hose between the tap and the sprinkler; null where none or not known.</summary>
    public HoseRun? Hose { get; init; }

    /// <summary>What the sprinkler is rated for; with the tap's pressure and the hose its flow follows.</summary>
    public NozzleRating? Nozzle { get; init; }

    /// <summary>Name of the tap it stands on, of <see cref="WaterSupply.OtherTaps"/>; null for the first tap.</summary>
    public string? Tap { get; init; }

    /// <summary>Name of its timer, of <see cref="WaterSupply.Timers"/>; null where a hand opens the tap or timers are not named.</summary>
    public string? Timer { get; init; }

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

/// <summary>A hose between tap and sprinkler.</summary>
/// <param name="Length">How long.</param>
/// <param name="Bore">Inner diameter.</param>
public sealed record HoseRun(Length Length, Length Bore);

/// <summary>A tap beside the first one.</summary>
/// <param name="Name">As the adviser calls it.</param>
/// <param name="Flow">What it gives with the others shut.</param>
public sealed record FurtherTap(string Name, FlowRate Flow);

/// <summary>The household's own use at certain hours.</summary>
/// <param name="From">From.</param>
/// <param name="To">To, on the same day.</param>
/// <param name="Flow">What it draws then.</param>
public sealed record HouseholdHours(TimeOnly From, TimeOnly To, FlowRate Flow);

/// <summary>Pressure at the first tap.</summary>
/// <param name="Still">With nothing running.</param>
/// <param name="Running">While <paramref name="At"/> flows; null where only the still pressure was read: the tap's flow is then taken to leave none.</param>
/// <param name="At">Flow while the running pressure was read; needed with it.</param>
public sealed record PressureTest(Pressure Still, Pressure? Running, FlowRate? At);

/// <summary>Where the lawn's water comes from and when it may be used. Null means not known.</summary>
public sealed record WaterSupply
{
    public BucketTest? Bucket { get; init; }

    /// <summary>Typed tap flow, used where no bucket test was made.</summary>
    public FlowRate? Flow { get; init; }

    public IReadOnlyList<SprinklerSet> Sets { get; init; } = [];

    /// <summary>Allowed hours; empty means any hour.</summary>
    public IReadOnlyList<WateringWindow> Allowed { get; init; } = [];

    /// <summary>Pressure at the first tap.</summary>
    public PressureTest? Pressure { get; init; }

    /// <summary>Taps beside the first.</summary>
    public IReadOnlyList<FurtherTap> OtherTaps { get; init; } = [];

    /// <summary>What all taps give together with all open; null where not tried.</summary>
    public FlowRate? Together { get; init; }

    /// <summary>The well behind the taps; null for a main.</summary>
    public WellLimit? Well { get; init; }

    /// <summary>Flow kept for the household at all hours.</summary>
    public FlowRate? Reserved { get; init; }

    /// <summary>Hours of the household's own use, on top of <see cref="Reserved"/>.</summary>
    public IReadOnlyList<HouseholdHours> Household { get; init; } = [];

    /// <summary>Timers with what they can hold; empty where not described.</summary>
    public IReadOnlyList<TimetableTimer> Timers { get; init; } = [];

    /// <summary>Price of water in steps of the bill; null where one price or none is known.</summary>
    public MeterPrice? Meter { get; init; }

    /// <summary>The household's own use in a billing period of about a month; null counts as none.</summary>
    public Volume? HouseholdPerMonth { get; init; }

    /// <summary>True once the town has granted extra watering for new seed.</summary>
    public bool NewSeedPermit { get; init; }

    /// <summary>True when a timer can start rounds with nobody at home.</summary>
    public bool? Timer { get; init; }
}
