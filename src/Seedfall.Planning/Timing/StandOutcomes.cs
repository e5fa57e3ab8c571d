namespace Seedfall.Planning.Timing;

/// <summary>Whether a stand would have been had, by seed-down day and member season.</summary>
internal sealed class StandOutcomes
{
    private readonly bool[][] _stood;

    private StandOutcomes(bool[][] stood) => _stood = stood;

    internal int Members => _stood.Length;

    /// <summary>Every grass of the mix must stand before the first hard frost, and none may be seeded into hot soil.</summary>
    internal static StandOutcomes Of(IReadOnlyList<SeasonWeather> members, IReadOnlyList<StandNeed> needs) =>
        new([.. members.Select(member => Stood(member, needs))]);

    /// <summary>Whether the stand was had in one member when seeded on a day.</summary>
    internal bool Stood(int member, int day) => _stood[member][day];

    /// <summary>Members in which seeding on a day gave a stand.</summary>
    internal int Count(int day) => _stood.Count(member => member[day]);

    /// <summary>Share of members, 0 to 1; 0 where there are none.</summary>
    internal double Share(int day) => Members == 0 ? 0.0 : (double)Count(day) / Members;

    /// <summary>
    /// Chance for a season still to come: (k + 1/2) / (n + 1), whole percents. Half a season of doubt on either side keeps a
    /// handful of seasons from promising certainty.
    /// </summary>
    internal double Chance(int day) => Math.Round((Count(day) + 0.5) / (Members + 1.0), 2, MidpointRounding.AwayFromZero);

    private static bool[] Stood(SeasonWeather member, IReadOnlyList<StandNeed> needs)
    {
        var nextHard = Frosts.NextHard(member.TminC);
        var stood = new bool[SeasonCalendar.Length];
        Array.Fill(stood, true);
        foreach (var need in needs)
        {
            var dates = new StandDates(need, member);
            for (var day = 0; day < stood.Length; day++)
            {
                stood[day] = stood[day] && !dates.TooHot(day) && dates.Established(day) is { } established && established < nextHard[day];
            }
        }

        return stood;
    }
}
