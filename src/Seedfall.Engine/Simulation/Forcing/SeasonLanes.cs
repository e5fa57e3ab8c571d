using System.Runtime.Intrinsics;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Seedbed;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>What one hour of four seasons brings, the same for every patch of the place.</summary>
internal struct HourLanes
{
    internal WeatherLanes Weather;

    /// <summary>mm.</summary>
    internal Lanes RainMm;

    /// <summary>Rain of this and the five hours before, mm.</summary>
    internal Lanes RecentRainMm;

    /// <summary>Reference evapotranspiration, mm.</summary>
    internal Lanes DemandMm;

    /// <summary>Water potential of the air, MPa, not below the driest of <see cref="SeedPotential"/>.</summary>
    internal Lanes AirMPa;

    /// <summary>To be added to the column's soil temperature, degC.</summary>
    internal Lanes CorrectionC;
}

/// <summary>Four seasons of one place side by side, hour by hour, their run-up first.</summary>
internal sealed class SeasonLanes
{
    private const int RainWindowHours = 6;

    private SeasonLanes(HourLanes[] hours, int runUpDays, double[] startRad, double[] seasonRad, double pressureKPa)
    {
        (Hours, RunUpDays, StartRad, SeasonRad, PressureKPa) = (hours, runUpDays, startRad, seasonRad, pressureKPa);
    }

    /// <summary>Every hour, run-up included.</summary>
    internal HourLanes[] Hours { get; }

    internal int RunUpDays { get; }

    /// <summary>Days after the run-up.</summary>
    internal int SeasonDays => (Hours.Length / 24) - RunUpDays;

    /// <summary>Where in the year each lane's run-up begins.</summary>
    internal double[] StartRad { get; }

    /// <summary>Where in the year each lane's season begins.</summary>
    internal double[] SeasonRad { get; }

    internal double PressureKPa { get; }

    /// <summary>The hours after the run-up.</summary>
    internal ReadOnlySpan<HourLanes> Season => Hours.AsSpan(24 * RunUpDays);

    /// <summary>From the hourly weather of up to four seasons of one length, whose evaporative demand is given by the hour.</summary>
    internal static SeasonLanes Of(ReadOnlySpan<ColumnForcing> seasons, double[][] demandMm, int runUpDays, double latitudeDeg, HeatParameters parameters)
    {
        var four = new ColumnForcing[LaneMath.Width];
        for (var lane = 0; lane < four.Length; lane++)
        {
            four[lane] = seasons[Math.Min(lane, seasons.Length - 1)];
        }

        var hours = new HourLanes[four[0].Weather.Hours];
        var series = new HourSeries(four, demandMm);
        for (var day = 0; day < hours.Length / 24; day++)
        {
            var emissivity = Each(four, f => f.SkyEmissivity(day, parameters));
            var vaporLog = Each(four, f => Math.Log(Math.Max(1.0e-3, Largest(f.Weather.VaporKPa.AsSpan(24 * day, 24))) / 0.6108));
            for (var h = 24 * day; h < 24 * (day + 1); h++)
            {
                series.Fill(ref hours[h], h, emissivity, vaporLog, parameters);
            }
        }

        var recent = Lanes.Zero;
        for (var h = 0; h < hours.Length; h++)
        {
            recent += hours[h].RainMm - (h >= RainWindowHours ? hours[h - RainWindowHours].RainMm : Lanes.Zero);
            hours[h].RecentRainMm = recent;
        }

        double[] Angles(int skip) => [.. four.Select(f => SeasonAngle.Rad(f.Weather.FirstDay.AddDays(skip), latitudeDeg))];
        return new SeasonLanes(hours, runUpDays, Angles(0), Angles(runUpDays), four[0].PressureKPa);
    }

    /// <summary>Sets the soil correction from one value per lane and season day, taken to hold at noon and joined by lines.</summary>
    internal void Correct(ReadOnlySpan<Lanes> byDayC)
    {
        for (var h = 0; h < 24 * SeasonDays; h++)
        {
            var sinceNoon = (h - 11.5) / 24.0;
            var day = (int)Math.Floor(sinceNoon);
            var (before, after) = (byDayC[Math.Clamp(day, 0, SeasonDays - 1)], byDayC[Math.Clamp(day + 1, 0, SeasonDays - 1)]);
            Hours[(24 * RunUpDays) + h].CorrectionC = before + ((sinceNoon - day) * (after - before));
        }
    }

    private static Lanes Each(ColumnForcing[] four, Func<ColumnForcing, double> value) => Vector256.Create(value(four[0]), value(four[1]), value(four[2]), value(four[3]));

    private static double Largest(ReadOnlySpan<double> values)
    {
        var largest = values[0];
        foreach (var value in values)
        {
            largest = Math.Max(largest, value);
        }

        return largest;
    }

    /// <summary>The hourly arrays of four seasons.</summary>
    private readonly struct HourSeries(ColumnForcing[] four, double[][] demandMm)
    {
        private const double DaylightWm2 = 5.0;

        private readonly FourSeries _air = FourSeries.Of(four, f => f.Weather.AirC);
        private readonly FourSeries _vapor = FourSeries.Of(four, f => f.Weather.VaporKPa);
        private readonly FourSeries _solar = FourSeries.Of(four, f => f.Weather.SolarWm2);
        private readonly FourSeries _wind = FourSeries.Of(four, f => f.Weather.WindMs);
        private readonly FourSeries _rain = FourSeries.Of(four, f => f.Weather.RainMm);
        private readonly FourSeries _demand = FourSeries.Of(demandMm, d => d);

        internal void Fill(ref HourLanes hour, int h, Lanes emissivity, Lanes vaporLog, HeatParameters parameters)
        {
            var (air, solar) = (_air.At(h), _solar.At(h));
            var kelvin = air + Vector256.Create(273.15);
            var longwave = emissivity * Longwave.StefanBoltzmannWm2K4 * (kelvin * kelvin) * (kelvin * kelvin);
            var byDay = Vector256.GreaterThan(solar, Vector256.Create(DaylightWm2));
            var wind = _wind.At(h) * Vector256.ConditionalSelect(byDay, Vector256.Create(parameters.DayWind), Vector256.Create(parameters.NightWind));
            var dryness = LaneMath.Min(Lanes.Zero, vaporLog - (17.27 * air / (air + Vector256.Create(237.3))));
            hour.Weather = WeatherLanes.Of(air, _vapor.At(h), solar, longwave, wind, parameters);
            hour.RainMm = _rain.At(h);
            hour.DemandMm = _demand.At(h);
            hour.AirMPa = LaneMath.Max(Vector256.Create(-SeedPotential.DriestMPa), dryness * kelvin * (SeedPotential.AirMPaAt298K / 298.0));
        }
    }

    /// <summary>One quantity of four seasons.</summary>
    private readonly record struct FourSeries(double[] First, double[] Second, double[] Third, double[] Fourth)
    {
        internal static FourSeries Of<T>(T[] seasons, Func<T, double[]> series)
        {
            double[] Lane(int lane) => series(seasons[Math.Min(lane, seasons.Length - 1)]);
            return new FourSeries(Lane(0), Lane(1), Lane(2), Lane(3));
        }

        internal Lanes At(int hour) => Vector256.Create(First[hour], Second[hour], Third[hour], Fourth[hour]);
    }
}
