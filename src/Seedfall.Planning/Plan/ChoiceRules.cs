using System.Globalization;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Plan;

/// <summary>The door check of one season's choices.</summary>
public static class ChoiceRules
{
    private const int FirstSeason = 2000;
    private const int LastSeason = 2100;
    private const int MostRounds = 4;
    private const double LeastRoundIn = 0.02;
    private const double MostRoundIn = 1.0;

    /// <summary>Every problem found; empty means the choices may be planned. Paths are written as in <c>choices.seedDown</c>.</summary>
    public static IReadOnlyList<LawnProblem> Problems(Choices choices)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return [.. Season(choices), .. Watering(choices), .. Shares(choices)];
    }

    private static IEnumerable<LawnProblem> Season(Choices choices)
    {
        if (choices.Season is < FirstSeason or > LastSeason)
        {
            yield return new("choices.season", choices.Season.ToString(CultureInfo.InvariantCulture), "a year from 2000 to 2100");
        }

        if (choices.SeedDown is { } day && day.Year != choices.Season)
        {
            yield return new("choices.seedDown", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"a day in {choices.Season}"));
        }
    }

    private static IEnumerable<LawnProblem> Watering(Choices choices)
    {
        if (choices.SeedbedRounds is < 0 or > MostRounds)
        {
            yield return new("choices.seedbedRounds", choices.SeedbedRounds.Value.ToString(CultureInfo.InvariantCulture), "0 to 4 rounds a day");
        }

        if (choices.RoundDepth is { Inches: var depth } && !(depth is >= LeastRoundIn and <= MostRoundIn))
        {
            yield return new("choices.roundDepth", string.Create(CultureInfo.InvariantCulture, $"{depth:0.###} in"), "0.02 to 1 in (0.5 to 25 mm) a round");
        }
    }

    private static IEnumerable<LawnProblem> Shares(Choices choices)
    {
        if (choices.OverseedShare is { } share && !(share.Value is >= SeedTarget.LeastOverseedShare and <= SeedTarget.MostOverseedShare))
        {
            yield return new("choices.overseedShare", string.Create(CultureInfo.InvariantCulture, $"{share.Percent:0.#} %"), "50 to 67 % of the new-lawn rate");
        }

        foreach (var (species, weight) in choices.MixByWeight ?? new Dictionary<GrassSpecies, double>())
        {
            if (!(weight >= 0.0 && double.IsFinite(weight)))
            {
                yield return new($"choices.mixByWeight.{SpeciesIds.Of(species)}", weight.ToString(CultureInfo.InvariantCulture), "a share of 0 or more");
            }
        }

        if (choices.MixByWeight is { Count: > 0 } mix && mix.Values.Sum() <= 0.0)
        {
            yield return new("choices.mixByWeight", "shares that come to 0", "at least one share above 0");
        }
    }
}
