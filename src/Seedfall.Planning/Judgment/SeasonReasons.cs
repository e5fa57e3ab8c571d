using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Judgment;

/// <summary>A reason to wait, with the day the work may go on and what that day brings.</summary>
internal sealed record Waiting(Reason Reason, DateOnly? Until, string? For);

/// <summary>Reasons from the calendar, the label and the water.</summary>
internal static class SeasonReasons
{
    /// <summary>The reason not to seed on the plan's day; null where nothing in the season forbids it.</summary>
    internal static Waiting? Wait(Choices choices, SeasonTiming timing, DateOnly? earliestSeeding)
    {
        if (timing.SeedDown is not { } day)
        {
            return choices.SeedDown is null || timing.Window is null ? TooLate(timing, earliestSeeding) : Outside(timing);
        }

        if (earliestSeeding > day)
        {
            return Label(timing, day, earliestSeeding.Value);
        }

        return ChanceOn(timing, day) < Thresholds.Chance ? Unlikely(timing, day, earliestSeeding) : null;
    }

    /// <summary>The reason the water must be mended first; null where it is enough, or nothing was measured that could refuse it.</summary>
    internal static Reason? Water(WaterProof? water)
    {
        if (water is not { Result: ProofResult.Refused })
        {
            return null;
        }

        var measured = water.Figures.Any(figure => figure.Id == "water.tap" && figure.Working.Sureness == Sureness.Measured);
        return measured ? new Reason("verdict.water", $"{water.Sentence} Mend the water before anyone buys seed.", Short(water)) : null;
    }

    /// <summary>Further lines worth saying that do not decide.</summary>
    internal static IEnumerable<Reason> Notes(SeasonTiming timing, WaterProof? water)
    {
        if (timing.SeedDown is { } day && ChanceOn(timing, day) is { } chance)
        {
            yield return new Reason("verdict.chance", Text($"Seeded on {FigureText.DateText(day)}, a stand before winter has a {chance:P0} chance."), ChanceFigure(timing, chance));
        }

        if (water is { Result: ProofResult.Refused } && Water(water) is null)
        {
            yield return new Reason("verdict.water", "By what is assumed of the tap the water is not enough: measure it before anyone buys seed.", Short(water));
        }
    }

    private static Waiting Label(SeasonTiming timing, DateOnly day, DateOnly earliest)
    {
        var inTime = ChanceOn(timing, earliest) >= Thresholds.Chance || (timing.Stand.Count == 0 && earliest <= timing.Window?.Closes);
        var figure = new Figure("verdict.earliest", "First day past sprays allow seeding", QuantityKind.Date, earliest.DayNumber, new Working(
            "day sprayed + the label's wait", [], "label intervals entered with the sprays, or the longest usual wait", Sureness.Measured));
        return inTime
            ? new Waiting(new Reason("verdict.interval", Text($"What was sprayed forbids seed on {FigureText.DateText(day)}; it may go down from {FigureText.DateText(earliest)}."), figure), earliest, "seed-down, once the label's wait is over")
            : Fallback(timing, earliest, new Reason("verdict.interval", Text($"What was sprayed forbids seed before {FigureText.DateText(earliest)}, too late for this autumn."), figure));
    }

    private static Waiting TooLate(SeasonTiming timing, DateOnly? earliest)
    {
        var best = timing.Stand.Count > 0 ? timing.Stand.Max(c => c.Chance) : (double?)null;
        return best < 0.5 || best is null
            ? Fallback(timing, earliest, new Reason("verdict.no-window", "No autumn day gives the grasses chosen an even chance of a stand here: too hot, then too cold."))
            : Fallback(timing, earliest, new Reason("verdict.too-late", "Too late this autumn: from today on no day gives seedlings an even chance before winter.", DaysLeft(timing)));
    }

    private static Waiting Outside(SeasonTiming timing) => new(
        new Reason("verdict.outside-season", "The day chosen is no autumn seeding day."),
        timing.Window!.Best,
        "seed-down on the best day of the window");

    private static Waiting Unlikely(SeasonTiming timing, DateOnly day, DateOnly? earliest)
    {
        var chance = ChanceOn(timing, day)!.Value;
        var reason = new Reason("verdict.unlikely", Text($"Seeded on {FigureText.DateText(day)}, a stand before winter has only a {chance:P0} chance."), ChanceFigure(timing, chance));
        return timing.Window is { } window && day < window.Opens
            ? new Waiting(reason, Later(window.Opens, earliest), "the seeding window, once the soil has cooled")
            : Fallback(timing, earliest, reason);
    }

    private static Waiting Fallback(SeasonTiming timing, DateOnly? earliest, Reason reason) => timing.OtherWindow is { } other
        ? new Waiting(reason, Later(other.Opens, earliest), timing.OtherWindowName ?? "the next seeding window")
        : new Waiting(reason, earliest, "the next seeding window");

    private static DateOnly Later(DateOnly day, DateOnly? other) => other > day ? other.Value : day;

    private static double? ChanceOn(SeasonTiming timing, DateOnly day) => timing.Stand.FirstOrDefault(c => c.Date == day)?.Chance;

    private static Figure ChanceFigure(SeasonTiming timing, double chance) =>
        new("verdict.stand-chance", "Chance of a stand, as judged", QuantityKind.Chance, chance, timing.StandWorking with { Note = $"{timing.StandWorking.Note} Below 30 % the day is refused: {Thresholds.ChanceSource}." });

    private static Figure? DaysLeft(SeasonTiming timing) => timing.Figures.FirstOrDefault(f => f.Id == "timing.growing-days") is { } days
        ? days with { Id = "verdict.days-left", Label = "Growing days left, as judged" }
        : null;

    private static Figure? Short(WaterProof water) => water.Shortfall is { } shortfall
        ? shortfall with { Id = "verdict.water-short", Label = "Watering time short each week, as judged" }
        : null;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
