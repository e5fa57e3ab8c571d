using Seedfall.Engine.Units;

namespace Seedfall.Planning.Records;

/// <summary>What kind of material was put on, as the law sees it.</summary>
public enum ApplicationKind
{
    /// <summary>Herbicide, fungicide, insecticide: what a pesticide law asks a record of.</summary>
    Pesticide,

    /// <summary>Fertilizer, with or without a pesticide of its own.</summary>
    Fertilizer,

    /// <summary>Seed.</summary>
    Seed,

    /// <summary>Soil conditioner, wetting agent, cover and the like.</summary>
    Other,
}

/// <summary>Points of the compass the wind blows from.</summary>
public enum WindFrom
{
    North,
    NorthEast,
    East,
    SouthEast,
    South,
    SouthWest,
    West,
    NorthWest,
}

/// <summary>Product put on, before dilution: a mass or a volume, exactly one of the two.</summary>
public sealed record ProductAmount(Mass? Mass, Volume? Volume);

/// <summary>An active ingredient or nutrient that came with the product.</summary>
/// <param name="Name">For example <c>mesotrione</c> or <c>nitrogen</c>; never a brand.</param>
/// <param name="Amount">Its mass on the treated ground.</param>
public sealed record AppliedActive(string Name, Mass Amount);

/// <summary>Weather as read on the spot. Null means not read.</summary>
public sealed record FieldWeather
{
    public Speed? Wind { get; init; }

    public Speed? Gust { get; init; }

    public WindFrom? From { get; init; }

    public Temperature? Air { get; init; }

    public Fraction? Humidity { get; init; }
}

/// <summary>One application as the record book keeps it. Null means not written down; the book says which of the fields a law asks for are missing.</summary>
public sealed record Application
{
    public required ApplicationKind Kind { get; init; }

    /// <summary>Generic class and grade or strength, for example <c>balanced 12-12-12 starter</c>.</summary>
    public required string Product { get; init; }

    public required ProductAmount Amount { get; init; }

    /// <summary>Ground it went on.</summary>
    public required Area Area { get; init; }

    /// <summary>When it was finished; the entry's own instant is the start.</summary>
    public DateTimeOffset? Ended { get; init; }

    /// <summary>Registration number off the label.</summary>
    public string? RegistrationNumber { get; init; }

    /// <summary>Active ingredients or nutrients with their masses.</summary>
    public IReadOnlyList<AppliedActive> Actives { get; init; } = [];

    /// <summary>Water or other carrier it was diluted in, product not counted.</summary>
    public Volume? Carrier { get; init; }

    /// <summary>Weed, disease, insect or purpose.</summary>
    public string? Target { get; init; }

    /// <summary>For example <c>backpack sprayer, flat fan</c> or <c>rotary spreader, two half-rate passes</c>.</summary>
    public string? Method { get; init; }

    public FieldWeather? AtStart { get; init; }

    public FieldWeather? AtEnd { get; init; }

    /// <summary>Who applied it.</summary>
    public string? Applicator { get; init; }

    public string? License { get; init; }

    /// <summary>Re-entry as the label words it.</summary>
    public string? Reentry { get; init; }

    /// <summary>What was planned or usual and was done otherwise.</summary>
    public string? Deviation { get; init; }

    /// <summary>The entry this one stands in place of; null for a first record.</summary>
    public Guid? Replaces { get; init; }

    /// <summary>Why it stands in its place; needed with <see cref="Replaces"/>.</summary>
    public string? Why { get; init; }
}
