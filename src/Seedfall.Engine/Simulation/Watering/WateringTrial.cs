namespace Seedfall.Engine.Simulation.Watering;

/// <summary>Decides at a midnight what is given on the day that begins, from the bed as it is then.</summary>
/// <param name="bed">The bed at that midnight; a copy may be tried things on.</param>
/// <param name="day">Index of the day that begins.</param>
/// <returns>Water by the hour of the day, mm: 24 numbers.</returns>
public delegate double[] WateringPolicy(WateredBed bed, int day);

/// <summary>What a way of watering came to.</summary>
/// <param name="DryHours">Hours in which the layer was drier than <see cref="PatchConditions.DryMPa"/>.</param>
/// <param name="ShortHours">Hours that did not hold what was wanted.</param>
/// <param name="TooWetHours">Hours in which it was too wet.</param>
/// <param name="WaterMm">Water given, mm.</param>
/// <param name="RunoffMm">Over the edge, rain's share included, mm.</param>
/// <param name="DrainageMm">Below 30 cm, mm.</param>
/// <param name="IrrigationMm">Water by the hour, from the weather's first hour, mm.</param>
public sealed record WateringOutcome(int DryHours, int ShortHours, int TooWetHours, double WaterMm, double RunoffMm, double DrainageMm, double[] IrrigationMm);

/// <summary>Steps a seedbed through a season under a way of watering decided day by day.</summary>
public static class WateringTrial
{
    /// <summary>Runs from a bed at field capacity at the weather's first hour; counts from the first day of the policy.</summary>
    /// <param name="patch">The ground.</param>
    /// <param name="weather">The sky.</param>
    /// <param name="before">Water given before the policy begins, by the hour, mm; shorter than the weather or empty.</param>
    /// <param name="firstDay">Day on which the policy begins.</param>
    /// <param name="days">Days it runs.</param>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="policy">What is given.</param>
    public static WateringOutcome Run(
        PatchConditions patch, BedWeather weather, ReadOnlySpan<double> before, int firstDay, int days, Hold wanted, WateringPolicy policy)
    {
        ArgumentNullException.ThrowIfNull(policy);
        var bed = Start(patch, weather, before, firstDay);
        var given = new double[24 * (firstDay + days)];
        before[..Math.Min(before.Length, 24 * firstDay)].CopyTo(given);
        var (dry, below, wet, runoff, drainage) = (0, 0, 0, 0.0, 0.0);
        for (var day = firstDay; day < firstDay + days; day++)
        {
            policy(bed, day).CopyTo(given, 24 * day);
            for (var hour = 24 * day; hour < 24 * (day + 1); hour++)
            {
                var losses = bed.Step(weather, hour, given[hour]);
                (dry, below, wet) = (dry + (bed.Dry ? 1 : 0), below + (bed.Holds(wanted) ? 0 : 1), wet + (bed.TooWet ? 1 : 0));
                (runoff, drainage) = (runoff + losses.RunoffMm, drainage + losses.DrainageMm);
            }
        }

        return new WateringOutcome(dry, below, wet, given.AsSpan(24 * firstDay).ToArray().Sum(), runoff, drainage, given);
    }

    /// <summary>The bed at the midnight a day begins.</summary>
    /// <param name="patch">The ground.</param>
    /// <param name="weather">The sky.</param>
    /// <param name="given">Water given by the hour, mm; hours beyond it got none.</param>
    /// <param name="day">The day.</param>
    public static WateredBed Start(PatchConditions patch, BedWeather weather, ReadOnlySpan<double> given, int day)
    {
        var bed = new WateredBed(patch);
        for (var hour = 0; hour < 24 * day; hour++)
        {
            bed.Step(weather, hour, hour < given.Length ? given[hour] : 0.0);
        }

        return bed;
    }

    /// <summary>The same depth at the same hours every day.</summary>
    public static WateringPolicy Fixed(WateringRounds rounds)
    {
        ArgumentNullException.ThrowIfNull(rounds);
        var hours = rounds.ByHour();
        return (_, _) => hours;
    }
}
