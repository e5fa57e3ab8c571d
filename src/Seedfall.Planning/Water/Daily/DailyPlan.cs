using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>Minutes of one set in one of today's rounds.</summary>
/// <param name="SetName">The set.</param>
/// <param name="Minutes">Whole minutes in each position.</param>
public sealed record DailyRun(string SetName, Figure Minutes);

/// <summary>One of today's rounds.</summary>
/// <param name="Start">When it begins.</param>
/// <param name="Depth">Net depth.</param>
/// <param name="Runs">Minutes by set.</param>
public sealed record DailyRound(TimeOnly Start, Figure Depth, IReadOnlyList<DailyRun> Runs);

/// <summary>A day of the week ahead as it is expected.</summary>
/// <param name="Day">The day.</param>
/// <param name="Rounds">Rounds.</param>
/// <param name="Depth">Water of them all.</param>
/// <param name="Forecast">True where its weather is forecast, false where it is only usual.</param>
/// <param name="Timed">The rounds with their minutes.</param>
public sealed record DailyOutlook(DateOnly Day, int Rounds, Figure Depth, bool Forecast, IReadOnlyList<DailyRound> Timed);

/// <summary>What to water today, and why.</summary>
/// <param name="Sentence">Today in one sentence.</param>
/// <param name="Reasons">Why, each in one sentence.</param>
/// <param name="Rounds">Today's rounds; empty where none is needed.</param>
/// <param name="Week">Today and the six days after.</param>
/// <param name="Warnings">What needs attention.</param>
/// <param name="Figures">State of the ground, water used and saved, cost.</param>
/// <param name="Assumptions">What was not known.</param>
public sealed record DailyPlan(
    string Sentence,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<DailyRound> Rounds,
    IReadOnlyList<DailyOutlook> Week,
    IReadOnlyList<Advice> Warnings,
    IReadOnlyList<Figure> Figures,
    IReadOnlyList<Assumption> Assumptions);
