using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;

namespace Seedfall.Engine.Atmosphere;

/// <summary>How a day's reference evapotranspiration was had.</summary>
public enum EvapotranspirationMethod
{
    /// <summary>ASCE standardized short reference from measured sun, humidity and wind.</summary>
    AsceDaily,

    /// <summary>The same equation with what is missing estimated as FAO-56 chapter 3 and 4 advise.</summary>
    FaoMissingData,

    /// <summary>From temperatures alone, Hargreaves and Samani.</summary>
    Hargreaves,
}

/// <summary>Reference evapotranspiration of a day and how it was had.</summary>
/// <param name="Eto">Depth of water over short grass; never negative.</param>
/// <param name="Method">The equation used.</param>
public readonly record struct DailyReference(Depth Eto, EvapotranspirationMethod Method);

/// <summary>Reference evapotranspiration of a day by the best method its values allow.</summary>
public static class DailyEvapotranspiration
{
    /// <summary>The method <see cref="For"/> uses for a day.</summary>
    public static EvapotranspirationMethod MethodFor(WeatherDay day)
    {
        var humidity = ActualVapor.RouteFor(day) != VaporRoute.LowestTemperature;
        return (day.SolarMJ is not null, humidity, day.WindMs is not null) switch
        {
            (true, true, true) => EvapotranspirationMethod.AsceDaily,
            (false, false, false) => EvapotranspirationMethod.Hargreaves,
            _ => EvapotranspirationMethod.FaoMissingData,
        };
    }

    /// <summary>The day's reference evapotranspiration over short grass.</summary>
    public static DailyReference For(WeatherDay day, Place place)
    {
        var method = MethodFor(day);
        var extraterrestrialMJ = SolarGeometry.ExtraterrestrialDailyMJ(place.LatitudeDeg, day.Date.DayOfYear);
        var etoMm = method == EvapotranspirationMethod.Hargreaves
            ? ReferenceEvapotranspiration.HargreavesCore(day.TmaxC, day.TminC, extraterrestrialMJ)
            : CombinationMm(day, place.ElevationM, extraterrestrialMJ);
        return new DailyReference(new Depth(Math.Max(0.0, etoMm)), method);
    }

    /// <summary>The working behind a day's value, for a page.</summary>
    public static Working WorkingFor(WeatherDay day, Place place) => MethodFor(day) switch
    {
        EvapotranspirationMethod.Hargreaves => new Working(
            "ETo = 0.0023 (Tmean + 17.8) sqrt(Tmax - Tmin) Ra * 0.408",
            [.. Temperatures(day), Extraterrestrial(day, place)],
            "Hargreaves and Samani 1985; FAO Irrigation and Drainage Paper 56 eq. 52",
            Sureness.Published,
            "Only temperatures are known; expect errors of about 1 mm on a single day."),
        var method => new Working(
            "ETo = [0.408 s Rn + g 900 / (T + 273) u2 (es - ea)] / [s + g (1 + 0.34 u2)]",
            [
                .. Temperatures(day),
                Extraterrestrial(day, place),
                new WorkingInput("Rs", day.SolarMJ is null ? "solar radiation, from the temperature range" : "solar radiation, measured", SolarMJ(day, Extraterrestrial(day, place).Value), "MJ/m2/d"),
                new WorkingInput("ea", ActualVapor.RouteFor(day) == VaporRoute.LowestTemperature ? "vapor pressure, dew point taken as Tmin" : "vapor pressure, from measured humidity", ActualVapor.ForDayKPa(day), "kPa"),
                new WorkingInput("u2", day.WindMs is null ? "wind at 2 m, FAO-56 value where unknown" : "wind at 2 m, measured", day.WindMs ?? Wind.UnknownMs, "m/s"),
            ],
            "ASCE standardized reference evapotranspiration equation 2005, short; FAO Irrigation and Drainage Paper 56 eq. 6",
            Sureness.Published,
            method == EvapotranspirationMethod.FaoMissingData ? "What was not measured is estimated as FAO-56 advises for missing data." : null),
    };

    private static double CombinationMm(WeatherDay day, double elevationM, double extraterrestrialMJ)
    {
        var vaporKPa = ActualVapor.ForDayKPa(day);
        var solarMJ = SolarMJ(day, extraterrestrialMJ);
        var clearMJ = ClearSky.RsoMJ(extraterrestrialMJ, elevationM);
        var netMJ = ReferenceEvapotranspiration.NetRadiationDailyMJ(day.TmaxC, day.TminC, vaporKPa, solarMJ, clearMJ);
        return ReferenceEvapotranspiration.DailyCore(
            day.TmaxC, day.TminC, vaporKPa, netMJ, day.WindMs ?? Wind.UnknownMs, Humidity.AtmosphericPressureCore(elevationM));
    }

    private static double SolarMJ(WeatherDay day, double extraterrestrialMJ) =>
        day.SolarMJ ?? EstimatedSolar.HargreavesSamaniMJ(day.TmaxC, day.TminC, extraterrestrialMJ);

    private static WorkingInput[] Temperatures(WeatherDay day) =>
    [
        new WorkingInput("Tmax", "highest air temperature", day.TmaxC, "degC"),
        new WorkingInput("Tmin", "lowest air temperature", day.TminC, "degC"),
    ];

    private static WorkingInput Extraterrestrial(WeatherDay day, Place place) =>
        new("Ra", "extraterrestrial radiation", SolarGeometry.ExtraterrestrialDailyMJ(place.LatitudeDeg, day.Date.DayOfYear), "MJ/m2/d");
}
