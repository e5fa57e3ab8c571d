using Seedfall.Engine.Units;

namespace Seedfall.Engine.Atmosphere;

/// <summary>Which reference the equation is standardized to.</summary>
public enum ReferenceForm
{
    /// <summary>FAO-56: clipped grass of 0.12 m, one surface resistance by day and night.</summary>
    Fao,

    /// <summary>ASCE 2005 short reference: the same by the day; hourly with day and night resistances.</summary>
    AsceShort,

    /// <summary>ASCE 2005 tall reference (alfalfa).</summary>
    AsceTall,
}

/// <summary>
/// Reference evapotranspiration. Radiation MJ m-2 per day or hour, temperatures degC, vapor and air pressure kPa, wind m/s
/// at 2 m, results mm per day or hour.
/// </summary>
public static class ReferenceEvapotranspiration
{
    /// <summary>Albedo of the reference crop (FAO-56).</summary>
    public const double ReferenceAlbedo = 0.23;

    /// <summary>Water evaporated by one MJ per m2, mm (FAO-56 eq. 20: 1 / 2.45).</summary>
    public const double MmPerMJ = 0.408;

    /// <summary>Reference evapotranspiration of a day. FAO-56 eq. 6; tall constants of ASCE 2005.</summary>
    /// <param name="tmax">Highest temperature.</param>
    /// <param name="tmin">Lowest temperature.</param>
    /// <param name="vapor">Actual vapor pressure.</param>
    /// <param name="netRadiationMJ">Net radiation, MJ m-2 d-1.</param>
    /// <param name="windAtTwoMeters">Mean wind at 2 m.</param>
    /// <param name="airPressure">Air pressure.</param>
    /// <param name="form">Reference surface; FAO and ASCE short agree by the day.</param>
    /// <param name="soilHeatMJ">Heat into the soil, MJ m-2 d-1; 0 by the day.</param>
    public static Depth Daily(
        Temperature tmax, Temperature tmin, Pressure vapor, double netRadiationMJ, Speed windAtTwoMeters, Pressure airPressure,
        ReferenceForm form = ReferenceForm.AsceShort, double soilHeatMJ = 0.0) =>
        Depth.FromMillimeters(DailyCore(
            tmax.Celsius, tmin.Celsius, vapor.Kilopascals, netRadiationMJ, windAtTwoMeters.MetersPerSecond, airPressure.Kilopascals, form, soilHeatMJ));

    /// <summary>As <see cref="Daily"/>, mm/d.</summary>
    public static double DailyCore(
        double tmaxC, double tminC, double vaporKPa, double netRadiationMJ, double windMs, double pressureKPa,
        ReferenceForm form = ReferenceForm.AsceShort, double soilHeatMJ = 0.0)
    {
        var (numerator, denominator) = form == ReferenceForm.AsceTall ? (1600.0, 0.38) : (900.0, 0.34);
        var meanC = 0.5 * (tmaxC + tminC);
        var deficitKPa = Humidity.MeanSaturationVaporPressureCore(tmaxC, tminC) - vaporKPa;
        return Standardized(meanC, deficitKPa, netRadiationMJ - soilHeatMJ, windMs, pressureKPa, numerator, denominator);
    }

    /// <summary>Reference evapotranspiration of an hour, mm/h; negative when dew forms. FAO-56 eq. 53, ASCE 2005 table 1.</summary>
    /// <param name="air">Mean temperature of the hour.</param>
    /// <param name="vapor">Actual vapor pressure.</param>
    /// <param name="netRadiationMJ">Net radiation, MJ m-2 h-1; its sign tells day from night.</param>
    /// <param name="windAtTwoMeters">Mean wind at 2 m.</param>
    /// <param name="airPressure">Air pressure.</param>
    /// <param name="form">Reference surface and form.</param>
    public static Depth Hourly(
        Temperature air, Pressure vapor, double netRadiationMJ, Speed windAtTwoMeters, Pressure airPressure, ReferenceForm form = ReferenceForm.AsceShort) =>
        Depth.FromMillimeters(HourlyCore(air.Celsius, vapor.Kilopascals, netRadiationMJ, windAtTwoMeters.MetersPerSecond, airPressure.Kilopascals, form));

    /// <summary>As <see cref="Hourly"/>, mm/h.</summary>
    public static double HourlyCore(
        double airC, double vaporKPa, double netRadiationMJ, double windMs, double pressureKPa, ReferenceForm form = ReferenceForm.AsceShort)
    {
        var day = netRadiationMJ > 0.0;
        var (numerator, denominator, heatShare) = form switch
        {
            ReferenceForm.AsceTall => (66.0, day ? 0.25 : 1.7, day ? 0.04 : 0.2),
            ReferenceForm.AsceShort => (37.0, day ? 0.24 : 0.96, day ? 0.1 : 0.5),
            _ => (37.0, 0.34, day ? 0.1 : 0.5),
        };
        var deficitKPa = Humidity.SaturationVaporPressureCore(airC) - vaporKPa;
        return Standardized(airC, deficitKPa, netRadiationMJ * (1.0 - heatShare), windMs, pressureKPa, numerator, denominator);
    }

    /// <summary>Net radiation of a day over the reference crop, MJ m-2 d-1. FAO-56 eq. 38 to 40.</summary>
    public static double NetRadiationDailyMJ(double tmaxC, double tminC, double vaporKPa, double solarMJ, double clearSkyMJ) =>
        ((1.0 - ReferenceAlbedo) * solarMJ) - Longwave.NetDailyMJ(tmaxC, tminC, vaporKPa, solarMJ, clearSkyMJ);

    /// <summary>Net radiation of an hour over the reference crop, MJ m-2 h-1; at night give the solar ratio of 2 to 3 h before sunset. FAO-56 eq. 38 to 40.</summary>
    public static double NetRadiationHourlyMJ(double airC, double vaporKPa, double solarMJ, double solarRatio) =>
        ((1.0 - ReferenceAlbedo) * solarMJ) - Longwave.NetHourlyMJ(airC, vaporKPa, solarRatio);

    /// <summary>Heat into the soil over a month from the mean temperatures of the months before and after, MJ m-2 d-1. FAO-56 eq. 43.</summary>
    public static double MonthlySoilHeatMJ(double previousMonthC, double nextMonthC) => 0.07 * (nextMonthC - previousMonthC);

    /// <summary>Heat into the soil over a month from its own and the previous month's mean temperature, MJ m-2 d-1. FAO-56 eq. 44.</summary>
    public static double MonthlySoilHeatFromPreviousMJ(double previousMonthC, double thisMonthC) => 0.14 * (thisMonthC - previousMonthC);

    /// <summary>Reference evapotranspiration from temperatures alone, never negative. Hargreaves and Samani 1985, FAO-56 eq. 52.</summary>
    public static Depth Hargreaves(Temperature tmax, Temperature tmin, double extraterrestrialMJ) =>
        Depth.FromMillimeters(HargreavesCore(tmax.Celsius, tmin.Celsius, extraterrestrialMJ));

    /// <summary>As <see cref="Hargreaves"/>, mm/d.</summary>
    public static double HargreavesCore(double tmaxC, double tminC, double extraterrestrialMJ) =>
        Math.Max(0.0, 0.0023 * ((0.5 * (tmaxC + tminC)) + 17.8) * Math.Sqrt(Math.Max(0.0, tmaxC - tminC)) * extraterrestrialMJ * MmPerMJ);

    private static double Standardized(
        double airC, double deficitKPa, double energyMJ, double windMs, double pressureKPa, double numerator, double denominator)
    {
        var slope = Humidity.SlopeKPaPerC(airC);
        var gamma = Humidity.PsychrometricConstantKPaPerC(pressureKPa);
        return ((MmPerMJ * slope * energyMJ) + (gamma * numerator / (airC + 273.0) * windMs * deficitKPa))
            / (slope + (gamma * (1.0 + (denominator * windMs))));
    }
}
