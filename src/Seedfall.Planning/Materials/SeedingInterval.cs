using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What past sprays allow.</summary>
/// <param name="Earliest">First day seed may go down; null where no past spray sets one.</param>
/// <param name="Walls">One per spray whose interval sets a day, the latest first: each holds seed-down before its day.</param>
/// <param name="Assumptions">One per spray whose label interval was not entered.</param>
/// <param name="Advice">What research found for the same active ingredient, beside the label.</param>
/// <param name="Holds">The walls with the first day each lets seed go down, in the same order.</param>
public sealed record SeedingWait(
    DateOnly? Earliest, IReadOnlyList<Wall> Walls, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<Advice> Advice, IReadOnlyList<(DateOnly Day, Wall Wall)> Holds)
{
    /// <summary>The walls that still stand on a day.</summary>
    public IReadOnlyList<Wall> StandingOn(DateOnly day) => [.. Holds.Where(h => h.Day > day).Select(h => h.Wall)];
}

/// <summary>Waits between a herbicide and seed.</summary>
public static class SeedingInterval
{
    /// <summary>The first day the lawn's past sprays allow seeding: by the label, or by the longest usual wait where it was not entered.</summary>
    /// <param name="lawn">The lawn with its past sprays.</param>
    /// <param name="method">How the seed goes on; decides only which research is shown.</param>
    public static SeedingWait EarliestSeeding(Lawn lawn, SeedingMethod method)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        var sprays = lawn.Sprayed.Select((s, i) => new Waited(s, i + 1)).ToList();
        var holding = sprays.Where(s => s.Days > 0).OrderByDescending(s => s.Day).ToList();
        return new(
            holding.Count > 0 ? holding[0].Day : null,
            [.. holding.Select(Wall)],
            [.. sprays.Where(s => !s.Entered).Select(Assumed)],
            [.. sprays.SelectMany(s => Research(lawn, s, method))],
            [.. holding.Select(s => (s.Day, Wall(s)))]);
    }

    private static Wall Wall(Waited s) => new(
        $"label.seeding-interval.{s.Number}",
        $"Wait after {s.Spray.ActiveIngredient} before seeding",
        Text($"{s.Spray.ActiveIngredient} went on {FigureText.DateText(s.Spray.Date)}; {s.Days} days must pass before seed goes down."),
        Text($"Seed on {FigureText.DateText(s.Day)} or later."),
        s.Entered ? "label, as entered" : s.Source);

    private static Assumption Assumed(Waited s) => new(
        $"assumed.sprayed.{s.Number}",
        Text($"{s.Spray.ActiveIngredient} of {FigureText.DateText(s.Spray.Date)}: a wait of {s.Days} days before seeding is taken ({s.Source})."),
        Text($"Seed goes down no sooner than {FigureText.DateText(s.Day)}."),
        "Enter the seeding interval from that product's label: it binds.");

    private static IEnumerable<Advice> Research(Lawn lawn, Waited s, SeedingMethod method)
    {
        foreach (var species in lawn.Patches.SelectMany(p => p.Grasses).Distinct().Order())
        {
            if (SprayedResearch.For(s.Spray.ActiveIngredient, species, method) is { } found)
            {
                var from = s.Spray.Date.AddDays(found.WaitDays);
                var way = found.Method switch
                {
                    SeedingMethod.SlitSeed => "slit-seeded",
                    SeedingMethod.Broadcast => "broadcast",
                    _ => "seeded",
                };
                yield return new(
                    $"research.sprayed.{s.Number}.{SpeciesIds.Of(species)}",
                    Text($"Research beside the label: {Name(species)} {way} {found.WaitDays} days after {s.Spray.ActiveIngredient} stood well, so from {FigureText.DateText(from)} ({found.At}).{(from > s.Day ? " That is later than the label's day: wait for it." : "")}"),
                    found.Source,
                    found.Sureness);
            }
        }
    }

    private static string Name(GrassSpecies species) => SpeciesIds.Of(species).Replace('-', ' ').Replace("kentucky", "Kentucky", StringComparison.Ordinal).Replace("chewings", "Chewings", StringComparison.Ordinal);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>A past spray with the wait that counts for it.</summary>
    private sealed record Waited(PastSpray Spray, int Number)
    {
        internal bool Entered => Spray.LabelSeedingIntervalDays is not null;

        internal int Days => Spray.LabelSeedingIntervalDays ?? UsualInterval.For(Spray.ActiveIngredient).Days;

        internal string Source => UsualInterval.For(Spray.ActiveIngredient).Source;

        internal DateOnly Day => Spray.Date.AddDays(Days);
    }
}
