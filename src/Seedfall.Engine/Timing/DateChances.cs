namespace Seedfall.Engine.Timing;

/// <summary>
/// Chances by date from past seasons: each season gave a date, counted in days from its season's start, or had not by the
/// season's end. Past seasons weigh alike; seasons not known are left out before.
/// </summary>
public sealed class DateChances
{
    private readonly int[] _reached;

    private DateChances(int[] reachedAscending, int seasons)
    {
        _reached = reachedAscending;
        Seasons = seasons;
    }

    /// <summary>How many seasons stand behind the chances.</summary>
    public int Seasons { get; }

    /// <summary>How many of them reached it by the season's end.</summary>
    public int SeasonsReached => _reached.Length;

    /// <summary>From one outcome per season, each with its season; unknown ones are dropped. Throws when none is left.</summary>
    public static DateChances From(IEnumerable<(AutumnSeason Season, SeasonDate Date)> outcomes)
    {
        var known = outcomes.Where(o => o.Date.Outcome != SeasonOutcome.Unknown).ToArray();
        return FromDays(known.Where(o => o.Date.Date is not null).Select(o => o.Season.DayOf(o.Date.Date!.Value)), known.Length);
    }

    /// <summary>From the days of the seasons that reached it and the number of all seasons. Throws when that is not at least 1 and the number of days.</summary>
    public static DateChances FromDays(IEnumerable<int> daysReached, int seasons)
    {
        int[] days = [.. daysReached.Order()];
        if (seasons < 1 || days.Length > seasons)
        {
            throw new ArgumentOutOfRangeException(nameof(seasons), seasons, $"at least 1 season and at least the {days.Length} that reached it are needed");
        }

        return new DateChances(days, seasons);
    }

    /// <summary>Share of seasons that had it on or before a day counted from the season's start.</summary>
    public double ChanceBy(int day)
    {
        var count = 0;
        while (count < _reached.Length && _reached[count] <= day)
        {
            count++;
        }

        return (double)count / Seasons;
    }

    /// <summary>
    /// First day by which at least a share of seasons (above 0, up to 1; throws otherwise) had it; null where that lies
    /// beyond the season's end.
    /// </summary>
    public int? Quantile(double share)
    {
        if (!(share > 0.0 && share <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "a share above 0 and up to 1 is needed");
        }

        var rank = (int)Math.Ceiling((share * Seasons) - 1e-9);
        return rank <= _reached.Length ? _reached[rank - 1] : null;
    }

    /// <summary>
    /// Standard error of a chance from so few seasons, never 0: adjusted proportion (k + 2) / (n + 4) of Agresti and Coull 1998.
    /// Print no chance finer than this.
    /// </summary>
    public double StandardError(double chance)
    {
        var adjusted = ((chance * Seasons) + 2.0) / (Seasons + 4.0);
        return Math.Sqrt(adjusted * (1.0 - adjusted) / (Seasons + 4.0));
    }
}
