using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Site;

/// <summary>One cloudless day of sun on a patch of ground.</summary>
/// <param name="Date">The day.</param>
/// <param name="OpenHours">Hours from sunrise to sunset over an open horizon.</param>
/// <param name="DirectHours">Hours of direct sun; an hour behind a tree counts with the share that comes through.</param>
/// <param name="FirstSun">When more than half of the beam first reaches the ground, UTC; null where it never does.</param>
/// <param name="LastSun">When it last does, UTC.</param>
/// <param name="KeptShare">Clear-sky radiation of the day as a share of what open, level ground gets; above 1 on a slope toward the sun.</param>
public readonly record struct SunExposureDay(DateOnly Date, double OpenHours, double DirectHours, DateTimeOffset? FirstSun, DateTimeOffset? LastSun, double KeptShare);

/// <summary>Direct sun and clear-sky radiation between screens, minute by minute.</summary>
public static class SunExposure
{
    // Early-autumn air: the clear sky's split into beam and diffuse hangs on it only a little.
    private const double VaporKPa = 1.5;

    // Below this the beam is too weak to matter and the slope's ratio would run away.
    private const double LeastSineAltitude = 0.03;

    /// <summary>The day's sun. Beam and diffuse of a clear sky after <see cref="ClearSky.Parts"/>; diffuse light by <see cref="SkyView"/>.</summary>
    /// <param name="place">Where.</param>
    /// <param name="date">The day at the place.</param>
    /// <param name="screens">What stands around, as on that day.</param>
    /// <param name="tilt">How the ground leans.</param>
    /// <param name="stepMinutes">Longest step, min.</param>
    public static SunExposureDay On(Place place, DateOnly date, IReadOnlyList<SkyScreen> screens, GroundTilt tilt = default, double stepMinutes = 1.0)
    {
        ArgumentNullException.ThrowIfNull(screens);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stepMinutes);
        var times = SunTimes.On(place, date);
        var steps = (int)Math.Ceiling(times.Hours * 60.0 / stepMinutes);
        var day = new Tally();
        var step = steps == 0 ? TimeSpan.Zero : (times.Set - times.Rise) / steps;
        var pressureKPa = Humidity.AtmosphericPressureCore(place.ElevationM);
        var view = SkyView.Factor(screens) * 0.5 * (1.0 + Math.Cos(tilt.SlopeRad));
        for (var i = 0; i < steps; i++)
        {
            var instant = times.Rise + (step * (i + 0.5));
            var sun = SunPosition.At(place, instant);
            var altitudeDeg = Math.Max(0.0, sun.SeenAltitudeDeg(pressureKPa));
            var incidence = tilt.CosineIncidence(altitudeDeg, sun.AzimuthDeg);
            var through = incidence > 0.0 || tilt.SlopePercent == 0.0 ? SkyScreen.ThroughAll(screens, altitudeDeg, sun.AzimuthDeg) : 0.0;
            day.Add(instant, step, through);
            day.AddLight(Math.Sin(SolarGeometry.Radians(altitudeDeg)), Math.Max(0.0, incidence), through, view, pressureKPa);
        }

        return new SunExposureDay(date, times.Hours, day.Hours, day.First, day.Last, day.Open > 0.0 ? day.Kept / day.Open : 0.0);
    }

    private struct Tally
    {
        internal double Hours;
        internal double Open;
        internal double Kept;
        internal DateTimeOffset? First;
        internal DateTimeOffset? Last;

        internal void Add(DateTimeOffset middle, TimeSpan step, double through)
        {
            Hours += through * step.TotalHours;
            if (through > 0.5)
            {
                First ??= middle - (step / 2);
                Last = middle + (step / 2);
            }
        }

        internal void AddLight(double sineAltitude, double incidence, double through, double view, double pressureKPa)
        {
            if (sineAltitude < LeastSineAltitude)
            {
                return;
            }

            var (beam, diffuse) = ClearSky.Parts(VaporKPa, pressureKPa, sineAltitude);
            Open += (beam + diffuse) * sineAltitude;
            Kept += (beam * incidence * through) + (diffuse * sineAltitude * view);
        }
    }
}
