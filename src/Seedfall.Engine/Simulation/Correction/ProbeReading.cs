using Seedfall.Engine.Units;

namespace Seedfall.Engine.Simulation.Correction;

/// <summary>A thermometer read in the soil.</summary>
/// <param name="Date">Local standard day.</param>
/// <param name="Hour">Hour of local standard time, 0 to 24; null where only the day is known (taken as the day's mean).</param>
/// <param name="Depth">Depth of the sensor, 5 to 300 mm.</param>
/// <param name="Read">What it showed.</param>
public sealed record ProbeReading(DateOnly Date, double? Hour, Depth Depth, Temperature Read)
{
    private const double LowestC = -10.0;
    private const double HighestC = 45.0;
    private const double ShallowestMm = 5.0;
    private const double DeepestMm = 300.0;

    /// <summary>Why the reading cannot be used, in one sentence; null where it can.</summary>
    public string? Problem() => this switch
    {
        { Hour: < 0.0 or > 24.0 } => FormattableString.Invariant($"hour {Hour}: an hour from 0 to 24 is needed"),
        { Depth.Millimeters: < ShallowestMm or > DeepestMm } => FormattableString.Invariant($"depth {Depth.Millimeters:F0} mm: a soil depth from 5 to 300 mm (1/4 to 12 in) is needed"),
        { Read.Celsius: > HighestC } when Temperature.FromFahrenheit(Read.Celsius).Celsius is >= LowestC and <= HighestC =>
            FormattableString.Invariant($"{Read.Celsius:F1} degC is no soil temperature; {Read.Celsius:F1} degF would be: check the unit"),
        { Read.Celsius: < LowestC or > HighestC } => FormattableString.Invariant($"{Read.Celsius:F1} degC: a soil temperature from -10 to 45 degC (14 to 113 degF) is needed"),
        _ => null,
    };
}
