namespace Seedfall.Engine.Timing;

/// <summary>How the search for a date in one season ended.</summary>
public enum SeasonOutcome
{
    /// <summary>It came on the date given.</summary>
    Reached,

    /// <summary>It had not come by the season's end: later than that, or never.</summary>
    NotReached,

    /// <summary>The weather of the season is not known well enough to say.</summary>
    Unknown,
}

/// <summary>A date looked for in one season, or why there is none.</summary>
/// <param name="Outcome">How the search ended.</param>
/// <param name="Date">The date where <see cref="SeasonOutcome.Reached"/>; null otherwise.</param>
public readonly record struct SeasonDate(SeasonOutcome Outcome, DateOnly? Date)
{
    public static SeasonDate NotReached => new(SeasonOutcome.NotReached, null);

    public static SeasonDate Unknown => new(SeasonOutcome.Unknown, null);

    public static SeasonDate On(DateOnly date) => new(SeasonOutcome.Reached, date);
}

/// <summary>The autumn season of a year: from high summer to the shortest days, in either hemisphere.</summary>
/// <param name="Year">The calendar year the autumn falls in.</param>
/// <param name="StartsOn">1 August in the north, 1 February in the south.</param>
/// <param name="EndsOn">31 December in the north, 30 June in the south.</param>
public readonly record struct AutumnSeason(int Year, DateOnly StartsOn, DateOnly EndsOn)
{
    /// <summary>The season of a year at a latitude, degrees north; the equator counts as north.</summary>
    public static AutumnSeason Of(int year, double latitudeDeg) => latitudeDeg >= 0.0
        ? new AutumnSeason(year, new DateOnly(year, 8, 1), new DateOnly(year, 12, 31))
        : new AutumnSeason(year, new DateOnly(year, 2, 1), new DateOnly(year, 6, 30));

    /// <summary>First day of the half year after midsummer: 1 July in the north, 1 January in the south.</summary>
    public DateOnly AfterMidsummer => StartsOn.AddMonths(-1);

    /// <summary>Days from the season's start to a date; negative before it.</summary>
    public int DayOf(DateOnly date) => date.DayNumber - StartsOn.DayNumber;

    /// <summary>The date so many days after the season's start.</summary>
    public DateOnly DateOf(int day) => StartsOn.AddDays(day);
}
