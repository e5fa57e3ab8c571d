namespace Seedfall.Planning.Timing;

/// <summary>How well a stand would have been had, 0 to 1, by seed-down day and member season.</summary>
internal sealed class StandOutcomes
{
    private readonly double[][] _stood;

    private StandOutcomes(double[][] stood, int firstDay, int lastDay) => (_stood, FirstDay, LastDay) = (stood, firstDay, lastDay);

    /// <summary>First seed-down day of the season that is answered.</summary>
    internal int FirstDay { get; }

    /// <summary>Last seed-down day of the season that is answered.</summary>
    internal int LastDay { get; }

    internal int Members => _stood.Length;

    /// <summary>
    /// Every grass must have three leaves before the first hard frost and its second mowing before soil is too cold to grow; heat
    /// after seed-down spoils a share.
    /// </summary>
    internal static StandOutcomes Of(IReadOnlyList<SeasonWeather> members, IReadOnlyList<StandNeed> needs) =>
        new([.. members.Select(member => Stood(member, needs))], SeasonCalendar.FirstSeeding, SeasonCalendar.LastSeeding);

    /// <summary>From shares of the lawn that stood, by member and day of the calendar, good from the first drawn day or a later one on.</summary>
    internal static StandOutcomes OfShares(double[][] stood, int firstDay, int lastDay) => new(stood, Math.Max(firstDay, SeasonCalendar.FirstDrawn), lastDay);

    /// <summary>Sum over the members of what seeding on a day gave.</summary>
    internal double Sum(int day) => _stood.Sum(member => member[day]);

    /// <summary>Mean over the members, 0 to 1; 0 where there are none.</summary>
    internal double Share(int day) => Members == 0 ? 0.0 : Sum(day) / Members;

    /// <summary>
    /// Chance for a season still to come: (k + 1/2) / (n + 1), whole percents. Half a season of doubt on either side keeps a
    /// handful of seasons from promising certainty.
    /// </summary>
    internal double Chance(int day) => ChanceCurves.WholePercent((Sum(day) + 0.5) / (Members + 1.0));

    private static double[] Stood(SeasonWeather member, IReadOnlyList<StandNeed> needs)
    {
        var nextHard = Frosts.NextHard(member.TminC);
        var growthEnds = ChanceCurves.FallDays([member], StandNeed.GrowthEndsC, SeasonCalendar.FirstSeeding)[0] ?? SeasonCalendar.Length;
        var stood = new double[SeasonCalendar.Length];
        Array.Fill(stood, 1.0);
        foreach (var need in needs)
        {
            var dates = new StandDates(need, member);
            for (var day = 0; day < stood.Length; day++)
            {
                var inTime = dates.ThreeLeaves(day) < nextHard[day] && dates.Established(day) <= growthEnds;
                stood[day] = inTime ? Math.Min(stood[day], dates.CoolEnough(day)) : 0.0;
            }
        }

        return stood;
    }
}
