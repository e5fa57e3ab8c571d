using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Timing;

/// <summary>Soil temperature at 2 in over the past seasons on one calendar day, degC.</summary>
public sealed record SoilFanDay(DateOnly Date, double P10C, double P25C, double P50C, double P75C, double P90C);

/// <summary>A chance by date, 0 to 1.</summary>
public sealed record DateChance(DateOnly Date, double Chance);

/// <summary>Living cover on one day after seed-down over the past seasons, 0 to 1.</summary>
public sealed record CoverFanDay(DateOnly Date, double P10, double P50, double P90);

/// <summary>Living cover of one patch by day from the seed-down day on.</summary>
public sealed record PatchCover(string PatchId, IReadOnlyList<CoverFanDay> Days);

/// <summary>How the chance of a stand was had.</summary>
public enum StandMethod
{
    /// <summary>The hour-by-hour simulation of seedbed, seed and seedlings over every past season.</summary>
    Simulated,

    /// <summary>Degree-days and frost dates alone: too few past seasons to simulate, or nothing sown.</summary>
    RuleOfThumb,
}

/// <summary>This season's own soil temperature, where its weather is known, degC.</summary>
public sealed record SoilLineDay(DateOnly Date, double SoilC, bool Observed);

/// <summary>A named stretch of the season, both days inclusive.</summary>
/// <param name="Id">Stable id: <c>soak</c>, <c>seedbed</c>, <c>seedlings</c>, <c>weaning</c>, <c>deep</c>.</param>
public sealed record Phase(string Id, string Name, DateOnly From, DateOnly To);

/// <summary>
/// Everything weather-dependent about the season as chances over past seasons, drawn by the season ribbon.
/// Dates are given in the season's own year.
/// </summary>
public sealed record SeasonTiming
{
    /// <summary>Past seasons in the ensemble.</summary>
    public required IReadOnlyList<int> Seasons { get; init; }

    /// <summary>Seasons left out, each with the reason.</summary>
    public required IReadOnlyList<string> SeasonsDropped { get; init; }

    public required IReadOnlyList<SoilFanDay> SoilFan { get; init; }

    public required IReadOnlyList<SoilLineDay> ThisYear { get; init; }

    /// <summary>Chance that by this date the 5-day mean soil temperature is at or below 70 degF and stays.</summary>
    public required IReadOnlyList<DateChance> SoilCool { get; init; }

    /// <summary>Chance that the first 32 degF night has come by this date.</summary>
    public required IReadOnlyList<DateChance> Frost32 { get; init; }

    /// <summary>Chance that the first 28 degF night has come by this date.</summary>
    public required IReadOnlyList<DateChance> Frost28 { get; init; }

    /// <summary>The chance curve: chance of an established stand by seed-down date.</summary>
    public required IReadOnlyList<DateChance> Stand { get; init; }

    /// <summary>What the chance curve rests on.</summary>
    public StandMethod StandMethod { get; init; } = StandMethod.RuleOfThumb;

    /// <summary>The rule-of-thumb curve beside a simulated one, to compare; empty where the chance curve is the rule of thumb itself.</summary>
    public IReadOnlyList<DateChance> StandByRule { get; init; } = [];

    /// <summary>Living cover of the whole lawn by day from the seed-down day on; empty where it was not simulated.</summary>
    public IReadOnlyList<CoverFanDay> CoverForecast { get; init; } = [];

    /// <summary>The same patch by patch.</summary>
    public IReadOnlyList<PatchCover> CoverByPatch { get; init; } = [];

    /// <summary>This season's soil as computed from weather alone, where thermometers moved <see cref="ThisYear"/>; else empty.</summary>
    public IReadOnlyList<SoilLineDay> ThisYearUncorrected { get; init; } = [];

    /// <summary>What the field log taught; null where it holds nothing that could.</summary>
    public SeasonLearning? Learned { get; init; }

    /// <summary>How the cover forecast was computed; null where there is none.</summary>
    public Working? CoverWorking { get; init; }

    /// <summary>How the chance curve was computed and how far to trust it.</summary>
    public required Working StandWorking { get; init; }

    /// <summary>First and last good seed-down days and the day inside that is best; null where no date is worth seeding.</summary>
    public required SeedWindow? Window { get; init; }

    /// <summary>The seed-down day this plan is made for; null where the verdict is not to seed.</summary>
    public required DateOnly? SeedDown { get; init; }

    public required IReadOnlyList<Phase> Phases { get; init; }

    /// <summary>Dates and lengths worth printing: median 70 degF crossing, median frosts, growing days left, chance at the chosen day.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>Dormant-seeding or spring window, the one to fall back on when autumn is refused for any reason.</summary>
    public SeedWindow? OtherWindow { get; init; }

    /// <summary>What <see cref="OtherWindow"/> is for: <c>dormant seeding</c> or <c>spring seeding</c>.</summary>
    public string? OtherWindowName { get; init; }

    /// <summary>What to know about these chances and dates: few seasons, a chosen day outside the window.</summary>
    public IReadOnlyList<Advice> Advice { get; init; } = [];
}

/// <summary>A seeding window with its best day.</summary>
/// <param name="ChanceAtBest">Chance of a stand at the best day, in whole percents, 0 to 1; null where no past season is known.</param>
public sealed record SeedWindow(DateOnly Opens, DateOnly Best, DateOnly Closes, double? ChanceAtBest);
