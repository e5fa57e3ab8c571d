using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>A calibration as it was done with water. Closed: only the kinds below exist.</summary>
public abstract record SprayerTest
{
    private SprayerTest()
    {
    }

    /// <summary>Width one pass covers: of the whole boom or gun, or the spacing of nozzles in an ounce course; null where not measured.</summary>
    public Length? Width { get; init; }

    /// <summary>Pressure read during the test; null where there is no gauge.</summary>
    public Pressure? Pressure { get; init; }

    /// <summary>A measured area sprayed with water; what the tank then takes to be full again is what went out.</summary>
    /// <param name="Ground">Area sprayed in each run, above 0.</param>
    /// <param name="Used">Water that refilled the tank after each run; at least one, each above 0.</param>
    /// <param name="Seconds">Time of each run as far as taken.</param>
    public sealed record Refill(Area Ground, IReadOnlyList<Volume> Used, IReadOnlyList<double> Seconds) : SprayerTest;

    /// <summary>A measured area walked by the watch, then the spray caught standing still for as long.</summary>
    /// <param name="Ground">Area walked in each run, above 0.</param>
    /// <param name="Seconds">Time of each run; at least one, each above 0.</param>
    /// <param name="Caught">What was caught in each catch; at least one, each above 0.</param>
    /// <param name="CatchSeconds">How long each catch lasted; null for the mean time of the runs.</param>
    public sealed record Catch(Area Ground, IReadOnlyList<double> Seconds, IReadOnlyList<Volume> Caught, double? CatchSeconds) : SprayerTest;

    /// <summary>A course on which each nozzle covers 1/128 acre, walked by the watch; ounces each nozzle gives in that time are gallons per acre.</summary>
    /// <param name="Spacing">Distance between nozzles, or the band one nozzle covers; above 0.</param>
    /// <param name="Seconds">Time of each walk over <see cref="SprayerOutput.Course"/>; at least one, each above 0.</param>
    /// <param name="Caught">Nozzle by nozzle what was caught in the mean time; at least one, each above 0.</param>
    public sealed record OunceCourse(Length Spacing, IReadOnlyList<double> Seconds, IReadOnlyList<Volume> Caught) : SprayerTest;
}
