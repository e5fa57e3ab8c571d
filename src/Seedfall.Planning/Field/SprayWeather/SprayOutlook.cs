using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>One hour ahead, judged.</summary>
/// <param name="Hour">The forecast.</param>
/// <param name="Moment">The same at the heights of the rules.</param>
/// <param name="Reasons">The weightiest first.</param>
public sealed record SprayHour(ForecastHour Hour, SprayMoment Moment, SprayVerdict Verdict, IReadOnlyList<SprayReason> Reasons)
{
    /// <summary>True while the sun is up for the whole hour.</summary>
    public bool Daylight => Moment is { AfterSunriseMinutes: >= 0.0, BeforeSunsetMinutes: >= 0.0 };
}

/// <summary>Hours on end that are fit.</summary>
/// <param name="End">The end of its last hour.</param>
/// <param name="HighestNozzle">The strongest wind at the nozzle in it.</param>
public sealed record SprayStretch(DateTimeOffset Start, DateTimeOffset End, Speed HighestNozzle)
{
    public double Hours => (End - Start).TotalHours;
}

/// <summary>What stands against spraying, and in how many hours of daylight it is the first reason.</summary>
public sealed record SprayAgainst(string Id, int Hours);

/// <summary>The hours ahead, the stretches worth keeping free, and why not the others.</summary>
/// <param name="Hours">From the present hour on, at most five days.</param>
/// <param name="Stretches">Fit and long enough for the work, in order of time.</param>
/// <param name="Against">Most hours first.</param>
public sealed record SprayOutlook(IReadOnlyList<SprayHour> Hours, IReadOnlyList<SprayStretch> Stretches, IReadOnlyList<SprayAgainst> Against, SprayLimits Limits, HourlyForecast Forecast)
{
    /// <summary>How far ahead is looked.</summary>
    public const int DaysAhead = 5;

    private const double LongestWorkHours = 12.0;

    /// <summary>What was taken because it was not entered or not forecast.</summary>
    public IReadOnlyList<Assumption> Assumptions { get; init; } = [];

    /// <summary>True where every hour was drawn out of whole days.</summary>
    public bool Rough => Hours.Count > 0 && Hours.All(h => h.Hour.Drawn);

    /// <summary>The longest stretch, the earliest of several; null where there is none.</summary>
    public SprayStretch? Longest => Stretches.Count == 0 ? null : Stretches.MaxBy(s => s.Hours);

    /// <summary>Figures of one of its hours, with their workings.</summary>
    public IReadOnlyList<Figure> FiguresOf(SprayHour hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        var height = FormattableString.Invariant($"forecast wind at {Forecast.WindHeightM:0.#} m, brought down by FAO-56 eq. 47");
        return SprayFigures.Of(hour.Moment, Limits, height);
    }

    /// <summary>The two limits every hour is held to.</summary>
    public IReadOnlyList<Figure> LimitFigures => [SprayFigures.Wall(Limits), SprayFigures.RainFree(Limits)];

    /// <summary>Judges the hours ahead.</summary>
    /// <param name="forecast">Hours on the lawn's own clock; hours before <paramref name="now"/> tell of rain and of the morning's low.</param>
    /// <param name="place">The lawn.</param>
    /// <param name="label">What was entered of the label.</param>
    /// <param name="now">The moment.</param>
    /// <param name="workHours">How long the spraying takes, above 0 and at most 12 h.</param>
    /// <param name="nozzleHeight">Height of the nozzle, 0.15 to 2 m; null for the usual one.</param>
    public static SprayOutlook Of(HourlyForecast forecast, Place place, SprayLabel label, DateTimeOffset now, double workHours, Length? nozzleHeight = null)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(place);
        if (workHours is not > 0.0 or > LongestWorkHours)
        {
            throw new ArgumentOutOfRangeException(nameof(workHours), workHours, "above 0 and at most 12 hours are needed");
        }

        var limits = SprayLimits.For(label, nozzleHeight);
        var moments = new HourMoments(forecast, place, limits);
        var hours = new List<SprayHour>();
        for (var i = 0; i < forecast.Hours.Count; i++)
        {
            var hour = forecast.Hours[i];
            if (hour.Start.AddHours(1.0) > now && hour.Start < now.AddDays(DaysAhead))
            {
                var moment = moments.At(i);
                var reasons = SprayRules.Judge(moment, limits);
                hours.Add(new(hour, moment, SprayRules.VerdictOf(reasons), reasons));
            }
        }

        return new(hours, SprayStretches.In(hours, workHours), SprayStretches.Against(hours), limits, forecast)
        {
            Assumptions = [.. SprayAssumptions.Of(label, nozzleHeight), .. ForecastAssumptions.Of(hours)],
        };
    }
}
