using Seedfall.Engine.Timing;
using Seedfall.Planning.Field;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Timing;

/// <summary>Everything the season's figures and advice are made from.</summary>
internal sealed record TimingFacts(
    SeasonCalendar Calendar,
    Choices Choices,
    PastSeasons Past,
    IReadOnlyList<SeasonWeather> Members,
    IReadOnlyList<StandNeed> Needs,
    StandOutcomes Outcomes,
    SimulatedStands? Simulated,
    DateChances? CoolDays,
    DateChances? Frost32Days,
    DateChances? Frost28Days,
    ChosenWindow? Window,
    int? SeedDown,
    FieldLog Log,
    HerbicideLabel? Label)
{
    /// <summary>The grass that needs the most degree-days.</summary>
    internal StandNeed Slowest => Needs.MaxBy(need => need.EmergenceDegreeDays + need.LeavesDegreeDays)!;

    /// <summary>Middle day of the first hard frost; null where most seasons have none.</summary>
    internal int? UsualHardFrost => Frost28Days?.Quantile(0.5);

    /// <summary>Middle day, over the seasons, by which every grass is up when seeded on a day; null where unknown.</summary>
    internal int? UsualEmergence(int seedDown) => Simulated is null ? Middle(dates => dates.Emerged(seedDown)) : Simulated.Emergence(seedDown);

    /// <summary>Middle day, over the seasons, by which every grass has grown so many degree-days above 0 degC from a day on; null where most seasons end first.</summary>
    /// <param name="from">Day of the calendar after which growth counts.</param>
    /// <param name="degreeDays">What a grass needs, degC d.</param>
    internal int? UsualGrowth(int from, Func<StandNeed, double> degreeDays) =>
        Spread.Middle(Members.Select(member => Needs.Select(need => new StandDates(need, member).Grown(from, degreeDays(need))).Aggregate((int?)0, Later)));

    private int? Middle(Func<StandDates, int?> day) => Spread.Middle(
        Members.Select(member => Needs.Select(need => day(new StandDates(need, member))).Aggregate((int?)0, Later)));

    private static int? Later(int? a, int? b) => a is null || b is null ? null : Math.Max(a.Value, b.Value);
}
