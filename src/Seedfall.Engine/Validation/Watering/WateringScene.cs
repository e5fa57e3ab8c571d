using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;

namespace Seedfall.Engine.Validation.Watering;

/// <summary>The seedbed on which ways of watering are compared.</summary>
/// <param name="Name">As printed: the soil.</param>
/// <param name="Ground">The patch.</param>
/// <param name="Sown">The mix.</param>
/// <param name="RoundHours">Hours in which the tap can run, ascending.</param>
/// <param name="TextbookMm">Depth of a fixed round, mm.</param>
/// <param name="WantedMPa">Potential the seed's layer is to be kept at or above, MPa.</param>
public sealed record WateringScene(
    string Name, PatchConditions Ground, IReadOnlyList<SownGrass> Sown, IReadOnlyList<int> RoundHours, double TextbookMm, double WantedMPa)
{
    internal Simulation.Watering.Hold Wanted => new(WantedMPa, true);
}

/// <summary>Ways of watering, as printed.</summary>
public static class WateringWays
{
    /// <summary>Seedfall's daily plan with what is known in the morning.</summary>
    public const string Daily = "daily";

    /// <summary>The same, told the weather to the end of tomorrow.</summary>
    public const string DailyForeseen = "daily-foreseen";

    /// <summary>Fixed rounds of the textbook depth.</summary>
    public const string Textbook = "textbook";

    /// <summary>The same water a day at once, in the first round's hour.</summary>
    public const string OnceDaily = "once-a-day";

    /// <summary>The least water found with all weather known, at the same hours.</summary>
    public const string Least = "least";

    /// <summary>The same where only the seed's layer matters and may dry to -0.5 MPa.</summary>
    public const string LeastDry = "least-dry";

    /// <summary>All, in the order they are printed.</summary>
    public static IReadOnlyList<string> All { get; } = [Daily, DailyForeseen, Textbook, OnceDaily, Least, LeastDry];
}

/// <summary>One season under one way of watering.</summary>
/// <param name="DryHours">Hours in which the seed's layer was drier than -0.5 MPa.</param>
/// <param name="ShortHours">Hours in which it was drier than wanted.</param>
/// <param name="TooWetHours">Hours in which it was too wet.</param>
/// <param name="WaterMm">Water given, mm.</param>
/// <param name="RunoffMm">Water run off, mm.</param>
/// <param name="DrainageMm">Water drained below 30 cm, mm.</param>
/// <param name="UpShare">Live seed up and alive at the end.</param>
/// <param name="EmergenceDays">Days until half of the slowest grass was up; null where it was not.</param>
public readonly record struct WateringSeason(double DryHours, double ShortHours, double TooWetHours, double WaterMm, double RunoffMm, double DrainageMm, double UpShare, double? EmergenceDays);
