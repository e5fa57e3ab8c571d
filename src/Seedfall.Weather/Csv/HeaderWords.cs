using System.Globalization;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>The spellings of column names and units that are understood.</summary>
internal static class HeaderWords
{
    private static readonly Dictionary<string, Element> Quantities = Lookup(
        (Element.TmaxC, "tmax tmx maxt tx tempmax maxtemp maximumtemp temperaturemax maxtemperature maximumtemperature airtempmax maxairtemp tempmaximum high hightemp temperature2mmax tasmax"),
        (Element.TminC, "tmin tmn mint tn tempmin mintemp minimumtemp temperaturemin mintemperature minimumtemperature airtempmin minairtemp tempminimum low lowtemp temperature2mmin tasmin"),
        (Element.MeanC, "tmean tavg tempmean tempavg meantemp avgtemp averagetemp temperaturemean meantemperature averagetemperature airtempmean temperature2mmean"),
        (Element.RainMm, "rain rainfall prcp precip precipitation precipitationtotal totalprecipitation precipitationsum preciptotal ppt pcp pcpn rainsum"),
        (Element.SolarMJ, "solar solarradiation globalradiation radiation srad solarad rs shortwaveradiation shortwaveradiationsum"),
        (Element.HumidityMaxPct, "rhmax maxrh humiditymax maxhumidity relativehumiditymax maxrelativehumidity"),
        (Element.HumidityMinPct, "rhmin minrh humiditymin minhumidity relativehumiditymin minrelativehumidity"),
        (Element.HumidityMeanPct, "rh rhmean rhavg meanrh humidity humiditymean meanhumidity relativehumidity relativehumiditymean"),
        (Element.WindMs, "wind windspeed windmean meanwind windspeedmean meanwindspeed awnd ws u2 u10"),
        (Element.Soil5CmC, "soil5cm soiltemp5cm soiltemperature5cm soiltemp5 soil5"),
        (Element.SoilMoisture5Cm, "soilmoisture5cm soilmoisture5 vwc5cm"));

    private static readonly Dictionary<string, ColumnRole> Roles = Lookup(
        (ColumnRole.Date, "date time datetime day lstdate obsdate observationdate yyyymmdd"),
        (ColumnRole.Year, "year yr"),
        (ColumnRole.Month, "month mo"),
        (ColumnRole.Day, "dayofmonth dy"),
        (ColumnRole.StationId, "station stationid id wban wbanno"),
        (ColumnRole.StationName, "name stationname"),
        (ColumnRole.Latitude, "latitude lat latitudedeg latdeg"),
        (ColumnRole.Longitude, "longitude lon long lng longitudedeg londeg"),
        (ColumnRole.Elevation, "elevation elev altitude"),
        (ColumnRole.Quality, "quality"),
        (ColumnRole.MultiDayRain, "mdpr"),
        (ColumnRole.MultiDayCount, "dapr"));

    /// <summary>Endings that name a unit, the longest first.</summary>
    private static readonly (string[] Words, ColumnUnit Unit)[] Units =
    [
        .. new (string Words, ColumnUnit Unit)[]
        {
            ("c", ColumnUnit.Celsius), ("degc", ColumnUnit.Celsius), ("deg c", ColumnUnit.Celsius), ("celsius", ColumnUnit.Celsius), ("degrees c", ColumnUnit.Celsius),
            ("f", ColumnUnit.Fahrenheit), ("degf", ColumnUnit.Fahrenheit), ("deg f", ColumnUnit.Fahrenheit), ("fahrenheit", ColumnUnit.Fahrenheit), ("degrees f", ColumnUnit.Fahrenheit),
            ("k", ColumnUnit.Kelvin), ("kelvin", ColumnUnit.Kelvin),
            ("mm", ColumnUnit.Millimeters), ("cm", ColumnUnit.Centimeters), ("in", ColumnUnit.Inches), ("inch", ColumnUnit.Inches), ("inches", ColumnUnit.Inches),
            ("mm d", ColumnUnit.Millimeters), ("mm day", ColumnUnit.Millimeters),
            ("mj", ColumnUnit.MegajoulesPerM2), ("mj m2", ColumnUnit.MegajoulesPerM2), ("mj m 2", ColumnUnit.MegajoulesPerM2), ("mj m2 d", ColumnUnit.MegajoulesPerM2),
            ("mj m2 day", ColumnUnit.MegajoulesPerM2), ("mj m 2 d 1", ColumnUnit.MegajoulesPerM2),
            ("kwh m2", ColumnUnit.KilowattHoursPerM2), ("kwh m2 d", ColumnUnit.KilowattHoursPerM2), ("kwh m2 day", ColumnUnit.KilowattHoursPerM2),
            ("w m2", ColumnUnit.WattsPerM2), ("w m 2", ColumnUnit.WattsPerM2),
            ("pct", ColumnUnit.Percent), ("percent", ColumnUnit.Percent),
            ("m s", ColumnUnit.MetersPerSecond), ("ms", ColumnUnit.MetersPerSecond), ("mps", ColumnUnit.MetersPerSecond), ("m s 1", ColumnUnit.MetersPerSecond),
            ("km h", ColumnUnit.KilometersPerHour), ("kmh", ColumnUnit.KilometersPerHour), ("kph", ColumnUnit.KilometersPerHour), ("mph", ColumnUnit.MilesPerHour),
            ("kt", ColumnUnit.Knots), ("kn", ColumnUnit.Knots), ("knots", ColumnUnit.Knots),
            ("m3 m3", ColumnUnit.VolumeFraction), ("m", ColumnUnit.Meters), ("ft", ColumnUnit.Feet), ("feet", ColumnUnit.Feet),
        }.Select(u => (u.Words.Split(' '), u.Unit)).OrderByDescending(u => u.Item1.Length),
    ];

    internal static Element? Quantity(string name) => Quantities.TryGetValue(name, out var e) ? e : null;

    internal static ColumnRole Role(string name) => Roles.GetValueOrDefault(name, ColumnRole.Unknown);

    /// <summary>Takes a unit off the end of the words, never the whole name.</summary>
    internal static ColumnUnit TakeUnit(List<string> words)
    {
        foreach (var (ending, unit) in Units)
        {
            if (words.Count > ending.Length && words.TakeLast(ending.Length).SequenceEqual(ending))
            {
                words.RemoveRange(words.Count - ending.Length, ending.Length);
                return unit;
            }
        }

        return ColumnUnit.None;
    }

    /// <summary>Takes a height such as <c>2m</c> or <c>10 m</c> off a wind column, m.</summary>
    internal static double? TakeWindHeight(List<string> words)
    {
        if (words.Count < 2 || !words[0].StartsWith('w'))
        {
            return null;
        }

        var last = words[^1].EndsWith('m') ? words[^1][..^1] : words[^1];
        if (!double.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out var height))
        {
            return null;
        }

        words.RemoveAt(words.Count - 1);
        return height;
    }

    private static Dictionary<string, T> Lookup<T>(params (T Value, string Names)[] rows) =>
        rows.SelectMany(r => r.Names.Split(' '), (r, name) => (name, r.Value)).ToDictionary(p => p.name, p => p.Value, StringComparer.Ordinal);
}
