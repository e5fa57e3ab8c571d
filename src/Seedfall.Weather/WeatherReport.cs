using System.Text.Json.Serialization;

namespace Seedfall.Weather;

/// <summary>What was found in the weather files, what was filled and what the plan will have to assume.</summary>
/// <param name="StationName">Name or id in the files; the first file's name where they give none.</param>
/// <param name="Position">Where it was measured; null where the files do not say.</param>
/// <param name="FirstDay">First day that can be used.</param>
/// <param name="LastDay">Last day that can be used.</param>
/// <param name="DayCount">Days that can be used, filled ones included.</param>
/// <param name="FilledCount">Days of which something was filled over a gap of at most three days.</param>
/// <param name="Files">The files read, in order of name.</param>
/// <param name="Years">Each year from the first to the last day.</param>
/// <param name="Gaps">Every gap between the first and the last day, filled or not.</param>
/// <param name="Columns">Which quantities are there, on how many days, in which unit they stood.</param>
/// <param name="Assumptions">What is missing for a plan and what will stand in for it.</param>
/// <param name="Notes">What was dropped, changed or looks odd.</param>
public sealed record WeatherReport(
    string StationName,
    StationPosition? Position,
    DateOnly FirstDay,
    DateOnly LastDay,
    int DayCount,
    int FilledCount,
    IReadOnlyList<WeatherFile> Files,
    IReadOnlyList<WeatherYear> Years,
    IReadOnlyList<WeatherGap> Gaps,
    IReadOnlyList<WeatherColumn> Columns,
    IReadOnlyList<string> Assumptions,
    IReadOnlyList<string> Notes);

/// <summary>Where a station stands, as its file says.</summary>
/// <param name="LatitudeDeg">Degrees north.</param>
/// <param name="LongitudeDeg">Degrees east.</param>
/// <param name="ElevationM">Meters above the sea; null where the file does not say.</param>
/// <param name="LawnDistanceKm">Distance to the lawn; null where no lawn was given.</param>
public sealed record StationPosition(double LatitudeDeg, double LongitudeDeg, double? ElevationM, double? LawnDistanceKm);

/// <summary>One file that was read.</summary>
/// <param name="Name">Its name without folder.</param>
/// <param name="Format">The format it was recognized as.</param>
/// <param name="Records">Days or hours in it.</param>
/// <param name="Bytes">Bytes read, before unpacking.</param>
/// <param name="Sha256">Hash of those bytes, lower-case hex, so that a plan can be traced to its input.</param>
public sealed record WeatherFile(string Name, string Format, int Records, long Bytes, string Sha256);

/// <summary>One calendar year of the history.</summary>
/// <param name="Year">The year.</param>
/// <param name="Days">Days that can be used, filled ones included.</param>
/// <param name="Filled">Of those, days of which something was filled.</param>
/// <param name="Missing">Days of the year that cannot be used.</param>
/// <param name="LongestMissingRun">Longest run of such days within the year.</param>
public sealed record WeatherYear(int Year, int Days, int Filled, int Missing, int LongestMissingRun);

/// <summary>What a gap lacks.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<GapKind>))]
public enum GapKind
{
    /// <summary>There is no row for the days, or an empty one.</summary>
    NoRows,

    /// <summary>The day's highest or lowest temperature is missing.</summary>
    Temperature,

    /// <summary>Rain is missing.</summary>
    Rain,
}

/// <summary>A run of days without a value.</summary>
/// <param name="First">First day of the run.</param>
/// <param name="Last">Last day of the run.</param>
/// <param name="Days">Length in days.</param>
/// <param name="Kind">What is missing on most of the days.</param>
/// <param name="Filled">True: filled and marked; false: these days stay absent and a season that needs them drops out.</param>
public sealed record WeatherGap(DateOnly First, DateOnly Last, int Days, GapKind Kind, bool Filled);

/// <summary>A quantity in the files.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Unit">The unit it stood in.</param>
/// <param name="UnitSource">How the unit is known.</param>
/// <param name="Days">Usable days that have it.</param>
public sealed record WeatherColumn(string Name, string Unit, string UnitSource, int Days);
