using Seedfall.Engine.Timing;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Timing;

/// <summary>Dates and lengths of the season worth printing.</summary>
internal static class TimingFigures
{
    internal static IReadOnlyList<Figure> For(TimingFacts facts) =>
    [
        .. SeedDownFigures(facts),
        .. Middle(facts, "timing.soil70", "Soil at 2 in falls to 70 degF for good", facts.CoolDays, 0.5, "5-day mean soil temperature at 2 in at or below 70 degF and held for three days", Flat),
        .. Middle(facts, "timing.frost32", "First 32 degF night", facts.Frost32Days, 0.5, "first night at or below 32 degF", null),
        .. Middle(facts, "timing.frost28", "First 28 degF night", facts.Frost28Days, 0.5, "first night at or below 28 degF", null),
        .. Middle(facts, "timing.frost28.early", "First 28 degF night, one autumn in ten", facts.Frost28Days, 0.1, "first night at or below 28 degF", null),
        .. facts.Simulated?.ChoiceFigures() ?? [],
        .. GrowingDays(facts),
    ];

    private const string Flat = "Late-summer soil lingers near 70 degF: this date differs by about ten days between years, and forecasts of it had no skill over the usual dates at measuring stations (docs/validation.md). Go by the chance of a stand; this date opens no window by itself.";

    private static IEnumerable<Figure> Middle(
        TimingFacts facts, string id, string label, DateChances? days, double share, string what, string? note)
    {
        if (days?.Quantile(share) is { } day)
        {
            yield return new Figure(id, label, QuantityKind.Date, facts.Calendar.Date(day).DayNumber, new Working(
                share == 0.5 ? $"median over the seasons of: {what}" : $"day by which it has come in {share:P0} of the seasons: {what}",
                [new("n", "past seasons", days.Seasons, ""), new("k", "seasons in which it came by the season's end", days.SeasonsReached, "")],
                "this place's weather history",
                Sureness.Computed,
                note));
        }
    }

    private static IEnumerable<Figure> SeedDownFigures(TimingFacts facts)
    {
        if (facts.SeedDown is not { } day || facts.Members.Count == 0)
        {
            yield break;
        }

        yield return new Figure("timing.chance", "Chance of a stand from the seed-down day", QuantityKind.Chance, facts.Outcomes.Chance(day), StandWorking.Of(facts));
        if (facts.UsualEmergence(day) is { } up && facts.Simulated is { } simulated)
        {
            yield return new Figure("timing.emergence", "Slowest grass half up", QuantityKind.Date, facts.Calendar.Date(up).DayNumber, simulated.EmergenceWorking);
        }
        else if (facts.UsualEmergence(day) is { } ruled)
        {
            yield return DateFigure(facts, "timing.emergence", "Slowest grass half up", ruled, "median day by which sum(T - Tb) since seed-down reaches thetaE", FieldEmergence.Source, facts.Slowest.EmergenceDegreeDays, "thetaE");
        }

        foreach (var figure in MowingFigures.For(facts, day))
        {
            yield return figure;
        }
    }

    private static Figure DateFigure(TimingFacts facts, string id, string label, int day, string formula, string source, double need, string symbol) => new(
        id, label, QuantityKind.Date, facts.Calendar.Date(day).DayNumber, new Working(
            formula,
            [new("n", "past seasons", facts.Members.Count, ""), new(symbol, $"degree-days needed by {facts.Slowest.Name}", need, "degC d")],
            source,
            Sureness.Assumed,
            "Rules of thumb; look at the seedbed, not at the date."));

    private static IEnumerable<Figure> GrowingDays(TimingFacts facts)
    {
        var today = facts.Choices.Today is { } date && facts.Calendar.Holds(date) ? facts.Calendar.Index(date) : (int?)null;
        if ((facts.SeedDown ?? today) is not { } from || facts.UsualHardFrost is not { } frost)
        {
            yield break;
        }

        yield return new Figure("timing.growing-days", facts.SeedDown is null ? "Growing days left" : "Growing days from seed-down", QuantityKind.Days, Math.Max(0, frost - from), new Working(
            "days from D to the usual first 28 degF night F",
            [new("D", "day of the season counted from", from, ""), new("F", "usual first 28 degF night, day of the season", frost, "")],
            "this place's weather history; 28 degF as the end of seedling growth common practice",
            Sureness.Computed));
    }
}
