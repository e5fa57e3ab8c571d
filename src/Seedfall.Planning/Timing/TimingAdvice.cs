using System.Globalization;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Timing;

/// <summary>What to know about the season's chances, and what had to be assumed for them.</summary>
internal static class TimingAdvice
{
    /// <summary>Below this number of seasons chances are said to be rough.</summary>
    internal const int FewSeasons = 5;

    internal static IReadOnlyList<Advice> For(TimingFacts facts, Lawn lawn, Place? station) =>
    [
        .. Few(facts),
        .. Outside(facts),
        .. Past(facts),
        .. StationDistance.Warning(lawn.Place, station) is { } far ? [far] : Array.Empty<Advice>(),
    ];

    internal static IReadOnlyList<Assumption> Assumptions(TimingFacts facts) =>
    [
        .. facts.Members.Count == 0 ? [NoSeasons] : Array.Empty<Assumption>(),
        .. facts.Past.Soil is { } soil
            ? soil.Assumptions.Select((sentence, i) => new Assumption($"assumed.timing.soil-{i + 1}", sentence, "Soil dates are less sure.", "Give a longer weather history, or one with measured sun."))
            : [],
        .. facts.Members.Count > 0 ? [OpenGround] : Array.Empty<Assumption>(),
        .. facts.Label is { MowingsBeforeSeedlings: null } label ? [UsualMowings(label)] : Array.Empty<Assumption>(),
    ];

    /// <summary>The wall before a day outside the autumn season.</summary>
    internal static Wall OutsideSeason(DateOnly chosen, SeasonCalendar calendar)
    {
        var (first, last) = (calendar.Date(SeasonCalendar.FirstSeeding), calendar.Date(SeasonCalendar.LastSeeding));
        return new Wall(
            "timing.outside-season",
            "Autumn season",
            $"Seed-down on {FigureText.DateText(chosen)} lies outside the autumn season of {calendar.Year}, {FigureText.DateText(first)} to {FigureText.DateText(last)}.",
            "Choose a day inside the season, or none for the best day.",
            "Seedfall's own calendar of autumn seeding");
    }

    private static Assumption NoSeasons { get; } = new(
        "assumed.timing.no-seasons",
        "No past autumn of this place is known: the seeding window is the usual one of its latitude.",
        "No chances can be given, and a place in the mountains or by the sea may be weeks off.",
        "Give a weather file of the nearest station with at least five past years.");

    private static Assumption OpenGround { get; } = new(
        "assumed.timing.open-ground",
        "Soil temperatures are those of open, level ground under short grass, watered by rain alone.",
        "Shade, wet ground and mulch run some degrees cooler, bare dry ground warmer.",
        "Read a soil thermometer at 2 in on a few mornings and evenings.");

    private static Assumption UsualMowings(HerbicideLabel label) => new(
        "assumed.label.mowings",
        $"No count of mowings before it may go on seedlings was entered for {label.ActiveIngredient}: the {SeedlingMowings.Usual} that most labels ask for are counted.",
        "The day from which seedlings may be sprayed; a label that asks for more makes it later.",
        "Enter the count from the label in hand, 0 where it asks for none.");

    private static IEnumerable<Advice> Few(TimingFacts facts)
    {
        if (facts.Members.Count is > 0 and < FewSeasons)
        {
            yield return new Advice(
                "timing.few-seasons",
                $"Only {facts.Members.Count} past autumn{(facts.Members.Count == 1 ? " is" : "s are")} known: read every chance here as a hint. One more season can move it by {100.0 / (facts.Members.Count + 1):0} points.",
                "arithmetic on the number of seasons",
                Sureness.Computed);
        }
    }

    private static IEnumerable<Advice> Outside(TimingFacts facts)
    {
        if (facts.Choices.SeedDown is not { } chosen || facts.SeedDown is not { } day || (facts.Window is { } window && day >= window.Opens && day <= window.Closes))
        {
            yield break;
        }

        var known = facts.Members.Count > 0;
        var chance = known ? string.Create(CultureInfo.InvariantCulture, $" Its chance of a stand is {100.0 * facts.Outcomes.Chance(day):0} %") : "";
        var best = facts.Window is not { } open ? (known ? "; no autumn day does well enough from now on." : "")
            : $"{(known ? string.Create(CultureInfo.InvariantCulture, $", against {100.0 * facts.Outcomes.Chance(open.Best):0} % on {FigureText.DateText(facts.Calendar.Date(open.Best))}.") : "")} The window runs from {FigureText.DateText(facts.Calendar.Date(open.Opens))} to {FigureText.DateText(facts.Calendar.Date(open.Closes))}.";
        yield return new Advice(
            "timing.outside-window",
            $"Seed-down on {FigureText.DateText(chosen)} is outside the window.{chance}{best}",
            known ? "chance curve of this plan" : CalendarWindow.Source,
            Sureness.Assumed);
    }

    private static IEnumerable<Advice> Past(TimingFacts facts)
    {
        if (facts.Choices.Today is not { } today || facts.Members.Count == 0 || facts.Choices.SeedDown is not null)
        {
            yield break;
        }

        var whole = WindowChoice.Of(facts.Outcomes, SeasonCalendar.FirstSeeding, SeasonCalendar.LastSeeding, facts.CoolDays?.Quantile(0.5));
        if (whole is not null && facts.Calendar.Index(today) > whole.Closes)
        {
            yield return new Advice(
                "timing.window-passed",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The best of this autumn's window closed on {FigureText.DateText(facts.Calendar.Date(whole.Closes))}; seeding then had a {100.0 * facts.Outcomes.Chance(whole.Best):0} % chance. Each week's delay costs two to four more weeks to a mature lawn."),
                "chance curve of this plan; Purdue AY-3 and UNL on delay",
                Sureness.Published);
        }
    }
}
