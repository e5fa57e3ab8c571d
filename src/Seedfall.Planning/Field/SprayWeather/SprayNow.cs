using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Go, wait or stop, with everything behind it.</summary>
/// <param name="Reasons">The weightiest first.</param>
/// <param name="Figures">Wind at the nozzle and Delta-T, where they can be had.</param>
/// <param name="Assumptions">What was taken because it was not entered or not read.</param>
public sealed record SprayJudgment(SprayVerdict Verdict, IReadOnlyList<SprayReason> Reasons, IReadOnlyList<Figure> Figures, IReadOnlyList<Assumption> Assumptions);

/// <summary>The judgment on the spot.</summary>
public static class SprayNow
{
    /// <summary>Cloud taken for each answer about the sky, percent.</summary>
    public static IReadOnlyDictionary<SkyCover, double> CloudPct { get; } = new Dictionary<SkyCover, double> { [SkyCover.Clear] = 0.0, [SkyCover.Broken] = 50.0, [SkyCover.Overcast] = 100.0 };

    /// <summary>Whether to spray now.</summary>
    /// <param name="reading">What was read and seen.</param>
    /// <param name="label">What was entered of the label.</param>
    /// <param name="sun">The day's sun at the lawn.</param>
    /// <param name="now">The moment.</param>
    /// <param name="nozzleHeight">Height of the nozzle, 0.15 to 2 m; null for the usual one.</param>
    public static SprayJudgment Judge(SprayReading reading, SprayLabel label, DaySun sun, DateTimeOffset now, Length? nozzleHeight = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(sun);
        var limits = SprayLimits.For(label, nozzleHeight);
        var moment = MomentOf(reading, limits, sun, now);
        var reasons = SprayRules.Judge(moment, limits);
        return new(SprayRules.VerdictOf(reasons), reasons, SprayFigures.Of(moment, limits, WindSource(reading)), [.. SprayAssumptions.Of(label, nozzleHeight), .. NotRead(reading)]);
    }

    /// <summary>The reading at the heights the rules want it.</summary>
    public static SprayMoment MomentOf(SprayReading reading, SprayLimits limits, DaySun sun, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(sun);
        Require(reading);
        var (wall, nozzle, still) = WindOf(reading, limits);
        var gust = reading.Gust?.MetersPerSecond;
        return new SprayMoment
        {
            WallMs = wall,
            NozzleMs = nozzle,
            StillMs = still,
            GustWallMs = gust,
            GustNozzleMs = gust is null ? null : reading.Held == WindHeld.AtNozzle ? gust : gust * limits.NozzleShare,
            AirC = reading.Air?.Celsius,
            HumidityPct = reading.Humidity?.Percent,
            CloudPct = reading.Sky is { } sky ? CloudPct[sky] : null,
            AfterSunriseMinutes = sun.AfterSunriseMinutes(now),
            BeforeSunsetMinutes = sun.BeforeSunsetMinutes(now),
            WarmedC = reading is { Air: { } air, MorningLow: { } low } && sun.HoursFromNoon(now) < 0.0 ? air.Celsius - low.Celsius : null,
            Hangs = reading.Hangs,
            WetLeaves = reading.WetLeaves,
            RainInMinutes = reading.RainInMinutes,
            RainKnown = reading.NoRainInSight,
        };
    }

    private static (double? Wall, double? Nozzle, double? Still) WindOf(SprayReading reading, SprayLimits limits)
    {
        if (reading.Wind is { } wind)
        {
            return reading.Held == WindHeld.AtNozzle
                ? (wind.MetersPerSecond, wind.MetersPerSecond, wind.MetersPerSecond / limits.NozzleShare)
                : (wind.MetersPerSecond, wind.MetersPerSecond * limits.NozzleShare, wind.MetersPerSecond);
        }

        if (reading.Force is not { } force)
        {
            return (null, null, null);
        }

        var signs = Beaufort.Of(force);
        var most = signs.Most.MetersPerSecond * limits.TwoMeterShare;
        return (most, most * limits.NozzleShare, signs.Middle.MetersPerSecond * limits.TwoMeterShare);
    }

    private static string WindSource(SprayReading reading) => reading switch
    {
        { Wind: not null, Held: WindHeld.AtNozzle } => "hand anemometer at the nozzle",
        { Wind: not null } => "hand anemometer overhead, brought down to the nozzle by FAO-56 eq. 47",
        _ => "upper end of the Beaufort range (from memory), brought down from 10 m to the nozzle by FAO-56 eq. 47",
    };

    private static IEnumerable<Assumption> NotRead(SprayReading reading)
    {
        if (reading.Gust is null)
        {
            yield return new("assumed.spray.gust", "Gusts were not read: none above the steady wind were judged.", "A gust can carry spray off the lawn in a moment of a quiet hour.", "Watch the reading for a minute and enter the highest.");
        }

        if (reading.Sky is null)
        {
            yield return new("assumed.spray.sky", "The sky was not entered: it is taken as clear.", "With the sun low and the air still that makes a stop.", "Look up.");
        }

        if (reading.Air is null || reading.Humidity is null)
        {
            yield return new("assumed.spray.air", "Temperature and humidity were not both read.", "The label’s temperatures, Delta-T and, unless it was seen, dew are not judged as far as they rest on them.", "Read both in the shade.");
        }
    }

    private static void Require(SprayReading reading)
    {
        foreach (var speed in (Speed?[])[reading.Wind, reading.Gust])
        {
            if (speed is { MetersPerSecond: < 0.0 or > 60.0 })
            {
                throw new ArgumentOutOfRangeException(nameof(reading), speed, "wind from 0 to 60 m/s is needed");
            }
        }

        if (reading.RainInMinutes is < 0.0)
        {
            throw new ArgumentOutOfRangeException(nameof(reading), reading.RainInMinutes, "minutes until rain must not be negative");
        }
    }
}
