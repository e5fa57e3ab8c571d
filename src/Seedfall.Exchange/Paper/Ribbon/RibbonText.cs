using Seedfall.Engine.Units;
using Seedfall.Planning.Timing;

namespace Seedfall.Exchange.Paper.Ribbon;

/// <summary>The season ribbon in words: for the reader who cannot see it, and for the sentence above it.</summary>
internal static class RibbonText
{
    /// <summary>One or two sentences that say what the picture shows.</summary>
    public static string Sentence(SeasonTiming timing)
    {
        var parts = new List<string>();
        if (timing.SeedDown is { } day)
        {
            parts.Add($"Seed-down day is {Wording.Day(day)}{At(timing.Stand, day)}.");
        }

        if (timing.Window is { } window)
        {
            parts.Add($"The window runs from {Wording.Short(window.Opens)} to {Wording.Short(window.Closes)}, best {Wording.Short(window.Best)}{(timing.SeedDown is null && window.ChanceAtBest is { } best ? $" at a {Wording.Percent(best)} chance" : "")}.");
        }
        else
        {
            parts.Add("No day of this autumn is worth seeding.");
        }

        if (timing.OtherWindow is { } other)
        {
            parts.Add($"{Capital(timing.OtherWindowName ?? "another seeding")}: {Wording.Short(other.Opens)} to {Wording.Short(other.Closes)}.");
        }

        return string.Join(' ', parts);
    }

    /// <summary>What each panel shows, in sentences.</summary>
    public static string Description(SeasonTiming timing) => string.Join(' ', new[]
    {
        Sentence(timing),
        Half(timing.SoilCool) is { } cool ? $"In half of the past years the soil has cooled through 70 degF for good by {Wording.Short(cool)}." : "",
        Frost(timing.Frost32, "32 degF"),
        Frost(timing.Frost28, "28 degF"),
        timing.Phases.Count > 0 ? $"Watering: {string.Join("; ", timing.Phases.Select(p => $"{p.Name} {Wording.Span(p.From, p.To)}"))}." : "",
    }.Where(s => s.Length > 0));

    /// <summary>One row for each week of the season.</summary>
    public static IEnumerable<RibbonRow> Rows(SeasonTiming timing, RibbonFrame frame)
    {
        for (var date = frame.From; date <= frame.To; date = date.AddDays(7))
        {
            var fan = timing.SoilFan.FirstOrDefault(f => f.Date == date);
            yield return new RibbonRow(
                Wording.Short(date),
                fan is null ? "" : Degrees(fan.P50C),
                fan is null ? "" : $"{Degrees(fan.P10C)} to {Degrees(fan.P90C)}",
                timing.ThisYear.FirstOrDefault(l => l.Date == date) is { } line ? Degrees(line.SoilC) : "",
                Percent(timing.Stand, date),
                Percent(timing.SoilCool, date),
                Percent(timing.Frost32, date),
                Percent(timing.Frost28, date));
        }
    }

    private static string Frost(IReadOnlyList<DateChance> chances, string degrees)
    {
        var (early, half) = (FirstAt(chances, 0.1), Half(chances));
        return early is null || half is null ? "" : $"The first {degrees} night has come in one year of ten by {Wording.Short(early.Value)}, in half by {Wording.Short(half.Value)}.";
    }

    private static DateOnly? Half(IReadOnlyList<DateChance> chances) => FirstAt(chances, 0.5);

    private static DateOnly? FirstAt(IReadOnlyList<DateChance> chances, double level) => chances.FirstOrDefault(c => c.Chance >= level)?.Date;

    private static string At(IReadOnlyList<DateChance> chances, DateOnly date) =>
        chances.FirstOrDefault(c => c.Date == date) is { } at ? $": a {Wording.Percent(at.Chance)} chance of an established stand" : "";

    private static string Percent(IReadOnlyList<DateChance> chances, DateOnly date) =>
        chances.FirstOrDefault(c => c.Date == date) is { } at ? Wording.Percent(at.Chance) : "";

    private static string Degrees(double celsius) =>
        FormattableString.Invariant($"{new Temperature(celsius).Fahrenheit:0} °F ({celsius:0} °C)");

    private static string Capital(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";
}

/// <summary>One row of the ribbon's table, as text.</summary>
internal sealed record RibbonRow(string Date, string Middle, string Range, string ThisYear, string Stand, string Cool, string Frost32, string Frost28);
