namespace Seedfall.Engine.Simulation;

/// <summary>The seedbed's watering as the tap can really give it: the same rounds every day from a first day on.</summary>
/// <param name="HoursOfDay">Hour in which each round falls, 0 to 23, ascending; empty means rain only.</param>
/// <param name="DepthMm">Depth of a round, mm.</param>
/// <param name="SkipAfterRainMm">A round is left out when this much rain fell in the six hours before, mm.</param>
public sealed record WateringRounds(IReadOnlyList<int> HoursOfDay, double DepthMm, double SkipAfterRainMm = 2.0)
{
    /// <summary>Nothing but rain.</summary>
    public static WateringRounds RainOnly { get; } = new([], 0.0);

    /// <summary>Irrigation of each hour of the day, mm; throws where a round is impossible.</summary>
    internal double[] ByHour()
    {
        var depths = new double[24];
        foreach (var hour in HoursOfDay)
        {
            if (hour is < 0 or > 23)
            {
                throw new ArgumentOutOfRangeException(nameof(HoursOfDay), hour, "an hour from 0 to 23 is needed");
            }

            depths[hour] += double.IsFinite(DepthMm) && DepthMm >= 0.0 ? DepthMm : throw new ArgumentOutOfRangeException(nameof(DepthMm), DepthMm, "0 mm or more is needed");
        }

        return depths;
    }
}
