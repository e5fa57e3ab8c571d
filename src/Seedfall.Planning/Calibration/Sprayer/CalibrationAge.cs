using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>How many sprayings a calibration has served.</summary>
public static class CalibrationAge
{
    /// <summary>Sprayings recorded since a calibration: applications that carried a volume of product or of carrier, on or after its day.</summary>
    /// <param name="log">The lawn's field log.</param>
    /// <param name="calibrated">Day of the calibration.</param>
    public static int Sprayings(FieldLog log, DateOnly calibrated)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Standing.OfType<LogEntry.Applied>()
            .Select(entry => entry.Day.Year)
            .Where(year => year >= calibrated.Year)
            .Distinct()
            .SelectMany(year => YearTotals.Counting(log, year))
            .Count(entry => entry.Day >= calibrated && (entry.What.Carrier is not null || entry.What.Amount.Volume is not null));
    }

    /// <summary>True where the next spraying would be the fourth since or later: calibrate before it (NC State Extension: every fourth application).</summary>
    public static bool IsDue(int sprayings) => sprayings >= SprayerCalibration.GoodForApplications - 1;
}
