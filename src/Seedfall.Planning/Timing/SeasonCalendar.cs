namespace Seedfall.Planning.Timing;

/// <summary>
/// The days of one autumn season, the same length every year: July 10 to December 10 in the north, six months earlier in the
/// south. Southern days are counted around March 1, so that a leap day moves only the days before it.
/// </summary>
/// <param name="Year">Calendar year of the autumn.</param>
/// <param name="South">True south of the equator.</param>
internal sealed record SeasonCalendar(int Year, bool South)
{
    /// <summary>Days in the season.</summary>
    internal const int Length = 154;

    /// <summary>First day on which seed may go down: August 1, or about February 1.</summary>
    internal const int FirstSeeding = 22;

    /// <summary>Last day on which seed may go down in autumn: November 15, or about mid May.</summary>
    internal const int LastSeeding = 128;

    /// <summary>First day drawn.</summary>
    internal const int FirstDrawn = 8;

    internal DateOnly First { get; } = South ? new DateOnly(Year, 3, 1).AddDays(-50) : new DateOnly(Year, 7, 10);

    internal DateOnly Last => Date(Length - 1);

    internal DateOnly Date(int index) => First.AddDays(index);

    internal int Index(DateOnly date) => date.DayNumber - First.DayNumber;

    internal bool Holds(DateOnly date) => Index(date) is >= 0 and < Length;

    internal SeasonCalendar In(int year) => new(year, South);
}
