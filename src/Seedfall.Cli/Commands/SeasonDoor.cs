using Seedfall.Cli.Output;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Plan;

namespace Seedfall.Cli.Commands;

/// <summary>Refuses a season the weather can say nothing about and days outside the season.</summary>
internal static class SeasonDoor
{
    private const int YearsAhead = 10;

    internal static void Require(Choices choices, WeatherHistory weather)
    {
        var (first, last) = (weather.Years[0], weather.Years[^1]);
        if (choices.Season < first || choices.Season > last + YearsAhead)
        {
            throw new CommandException(ExitCode.BadInput, FormattableString.Invariant($"--season: expected a year from {first} to {last + YearsAhead} for weather of {first} to {last}, found {choices.Season}"));
        }

        if (choices.SeedbedRounds is < 0 or > 4)
        {
            throw new CommandException(ExitCode.BadInput, FormattableString.Invariant($"--rounds: expected 0 to 4, found {choices.SeedbedRounds}"));
        }

        foreach (var (name, day) in new[] { ("--seed-down", choices.SeedDown), ("--today", choices.Today) })
        {
            if (day is { } date && Math.Abs(date.Year - choices.Season) > 1)
            {
                throw new CommandException(ExitCode.BadInput, FormattableString.Invariant($"{name}: expected a day of the season {choices.Season}, found {date:yyyy-MM-dd}"));
            }
        }
    }
}
