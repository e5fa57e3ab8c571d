using Seedfall.Engine.Units;
using Seedfall.Planning.Plan;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Plan;

/// <summary>The choices of a season as a form; in the address for a what-if, in the body to keep them.</summary>
internal static class WhatIf
{
    public static DateField SeedDown { get; } = new("seedDown", "Seed-down day") { Hint = "Blank takes the best day of the window." };

    public static NumberField Season { get; } = new("season", "Season", 1950.0, 2150.0) { Whole = true };

    public static ChoiceField<SeedingMethod> Method { get; } = new("method", "How the seed goes on", [(SeedingMethod.Broadcast, "broadcast", "Broadcast in two halves"), (SeedingMethod.SlitSeed, "slit", "Slit-seeded")]) { Blank = null };

    public static NumberField Share { get; } = new("share", "Overseeding rate, of the new-lawn rate", 50.0, 67.0, "%") { Hint = "50 to 67; blank takes 50." };

    public static ChoiceField<int> Rounds { get; } = new("rounds", "Rounds a day on the seedbed", [(0, "0", "None: rain alone"), (1, "1", "1"), (2, "2", "2"), (3, "3", "3"), (4, "4", "4")]) { Blank = "As soil and air ask for" };

    public static QuantityField<Depth> RoundDepth { get; } = new("round", "Water in a round", UnitChoices.Depth, Depth.FromInches(0.02), Depth.FromInches(1.0)) { Hint = "Blank makes up for what the seedbed loses." };

    /// <summary>The names a form or an address may carry.</summary>
    public static IReadOnlyList<string> Names { get; } = [Season.Name, SeedDown.Name, Rounds.Name, RoundDepth.Name, RoundDepth.UnitName, Method.Name, Share.Name];

    public static void Fill(Entries entries, Choices choices)
    {
        Season.Fill(entries, choices.Season);
        SeedDown.Fill(entries, choices.SeedDown);
        Method.Fill(entries, choices.Method);
        Share.FillShare(entries, choices.OverseedShare);
        Rounds.Fill(entries, choices.SeedbedRounds);
        RoundDepth.Fill(entries, choices.RoundDepth);
    }

    /// <summary>The choices asked for, where those not named stay as kept; meaningless where problems were noted.</summary>
    public static Choices Read(Entries entries, Choices kept)
    {
        var season = Season.ReadWhole(entries) ?? kept.Season;
        var seedDown = entries.Has(SeedDown.Name) ? SeedDown.Read(entries) : season == kept.Season ? kept.SeedDown : null;
        if (seedDown is { } day && day.Year != season)
        {
            entries.Wrong(SeedDown.Name, FormattableString.Invariant($"{SeedDown.Label}: a day in the season {season} is needed, not {day:yyyy-MM-dd}."));
        }

        return kept with
        {
            Season = season,
            SeedDown = seedDown,
            Method = Method.Read(entries) ?? kept.Method,
            SeedbedRounds = entries.Has(Rounds.Name) ? Rounds.Read(entries) : kept.SeedbedRounds,
            RoundDepth = entries.Has(RoundDepth.Name) ? RoundDepth.Read(entries) : kept.RoundDepth,
            OverseedShare = entries.Has(Share.Name) ? Share.ReadShare(entries) : kept.OverseedShare,
        };
    }
}
