namespace Seedfall.Engine.Simulation.Watering;

/// <summary>
/// What the days ahead are taken to bring where nobody forecasts them: no rain, and the usual demand of the date moved halfway to
/// yesterday's, with a margin for the day that turns out hotter.
/// </summary>
public sealed class ExpectedSky
{
    /// <summary>Share of yesterday's departure from the usual that is expected to last (assumed: persistence and climate half each).</summary>
    public const double Persistence = 0.5;

    private const int Around = 3;

    /// <summary>Rain of a day that makes watering needless for that day, mm: 0.2 in (common practice).</summary>
    private const double SoakingMm = 5.0;

    private readonly double[] _usualMm;

    /// <summary>From past seasons that begin on the same day of the year; at least one.</summary>
    public ExpectedSky(IReadOnlyList<BedWeather> seasons)
    {
        ArgumentOutOfRangeException.ThrowIfZero(seasons.Count);
        var days = seasons.Min(s => s.Hours) / 24;
        RainChance = seasons.Sum(s => Enumerable.Range(0, days).Count(day => s.DayRainMm(day) >= SoakingMm)) / (double)(days * seasons.Count);
        _usualMm = new double[24 * days];
        for (var hour = 0; hour < _usualMm.Length; hour++)
        {
            var (sum, n) = (0.0, 0);
            for (var day = Math.Max(0, (hour / 24) - Around); day <= Math.Min(days - 1, (hour / 24) + Around); day++)
            {
                foreach (var season in seasons)
                {
                    (sum, n) = (sum + season.DemandMm[(24 * day) + (hour % 24)], n + 1);
                }
            }

            _usualMm[hour] = sum / n;
        }
    }

    /// <summary>Share of past days with a soaking rain.</summary>
    public double RainChance { get; }

    /// <summary>The sky as it is expected at a midnight: known to then, and beyond it for some days.</summary>
    /// <param name="known">At least the hours before that midnight.</param>
    /// <param name="today">Day that begins.</param>
    /// <param name="foreseen">Days from today on whose weather is known as well; 0 for none.</param>
    /// <param name="days">Days from today on; fewer where the usual year's hours end before.</param>
    /// <param name="margin">Factor on the demand of the days not known.</param>
    public BedWeather Ahead(BedWeather known, int today, int foreseen, int days, double margin)
    {
        ArgumentNullException.ThrowIfNull(known);
        var end = Math.Min(_usualMm.Length, 24 * (today + days));
        var seen = Math.Min(end, 24 * (today + foreseen));
        var (rain, demand) = (new double[end], new double[end]);
        known.RainMm.AsSpan(0, Math.Min(seen, known.Hours)).CopyTo(rain);
        known.DemandMm.AsSpan(0, Math.Min(seen, known.Hours)).CopyTo(demand);
        var factor = margin * (1.0 - Persistence + (Persistence * Departure(known, Math.Min(seen, known.Hours) / 24)));
        for (var hour = Math.Min(seen, known.Hours); hour < end; hour++)
        {
            demand[hour] = factor * _usualMm[hour];
        }

        return new BedWeather(rain, demand);
    }

    /// <summary>Yesterday's demand over the usual one, held within 0.25 and 2.</summary>
    private double Departure(BedWeather known, int day)
    {
        if (day < 1)
        {
            return 1.0;
        }

        var usual = 0.0;
        for (var hour = 24 * (day - 1); hour < 24 * day; hour++)
        {
            usual += _usualMm[hour];
        }

        return usual > 0.0 ? Math.Clamp(known.DayDemandMm(day - 1) / usual, 0.25, 2.0) : 1.0;
    }
}
