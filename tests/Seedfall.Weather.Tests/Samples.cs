namespace Seedfall.Weather.Tests;

/// <summary>
/// Lines in the exact layouts of the agencies, of an invented station. The layouts' columns were checked against NOAA's and
/// NASA's descriptions.
/// </summary>
internal static class Samples
{
    internal const string UscrnDailyLine =
        "99001 20260901  2.622  -84.12   42.31    24.6    11.2    17.9    17.4     3.2    18.45 C    33.1     9.8    18.6    97.4    41.0    74.2   0.214   0.231   0.260 -99.000 -99.000    19.3    19.0    18.7 -9999.0 -9999.0";

    internal const string UscrnHourlyLine =
        "99001 20260901 1400 20260901 0900  2.622  -84.12   42.31    18.8    18.1    18.9    17.2     0.0    412 0    455 0    360 0 C    21.4 0    22.6 0    19.8 0    68 0   0.216   0.232   0.261 -99.000 -99.000    17.9    18.2    18.6 -9999.0 -9999.0";

    internal const string GhcnRainLine =
        "USC00990001202609PRCP    0T 7   53  7    0  7  128 X7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7    0  7-9999   ";

    internal const string GhcnAccess =
        """
        "STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"
        "USC00990001","2026-09-01","42.31","-84.12","281.0","EXAMPLEVILLE, MI US","    0","T,,7,0700","  246",",,7,0700","  112",",,7,0700"
        "USC00990001","2026-09-02","42.31","-84.12","281.0","EXAMPLEVILLE, MI US","   53",",,7,0700","","","",""
        "USC00990001","2026-09-03","42.31","-84.12","281.0","EXAMPLEVILLE, MI US","   20",",,7,0700","  260",",,7,0700","  120",",,7,0700"

        """;

    internal const string PowerDaily =
        """
        { "type": "Feature",
          "geometry": { "type": "Point", "coordinates": [-84.12, 42.31, 281.44] },
          "properties": { "parameter": {
              "T2M":               { "20260801": 21.84, "20260802": 22.17, "20260803": -999.0 },
              "T2M_MAX":           { "20260801": 27.9,  "20260802": 28.42, "20260803": -999.0 },
              "T2M_MIN":           { "20260801": 15.1,  "20260802": 16.02, "20260803": -999.0 },
              "PRECTOTCORR":       { "20260801": 0.0,   "20260802": 6.31,  "20260803": -999.0 },
              "ALLSKY_SFC_SW_DWN": { "20260801": 24.5,  "20260802": 18.25, "20260803": -999.0 },
              "TSOIL1":            { "20260801": 22.6,  "20260802": 22.4,  "20260803": -999.0 } } },
          "header": { "title": "NASA/POWER Source Native Resolution Daily Data",
              "api": { "version": "v2.10.0", "name": "POWER Daily API" },
              "sources": ["MERRA2", "POWER"], "fill_value": -999.0, "time_standard": "LST",
              "start": "20260801", "end": "20260803" },
          "messages": [],
          "parameters": { "T2M": { "units": "C", "longname": "Temperature at 2 Meters" },
              "T2M_MAX": { "units": "C", "longname": "Temperature at 2 Meters Maximum" },
              "T2M_MIN": { "units": "C", "longname": "Temperature at 2 Meters Minimum" },
              "PRECTOTCORR": { "units": "mm/day", "longname": "Precipitation Corrected" },
              "ALLSKY_SFC_SW_DWN": { "units": "MJ/m^2/day", "longname": "All Sky Surface Shortwave Downward Irradiance" },
              "TSOIL1": { "units": "C", "longname": "Soil Temperatures Layer 1" } },
          "times": { "data": 0.61, "process": 0.03 } }
        """;

    /// <summary>The daily line with another day and other temperatures.</summary>
    internal static string UscrnDay(string date, double max, double min, double rain) => UscrnDailyLine
        .Replace("20260901", date, StringComparison.Ordinal)
        .Replace("    24.6    11.2", FormattableString.Invariant($"{max,8:0.0}{min,8:0.0}"), StringComparison.Ordinal)
        .Replace("    17.4     3.2", FormattableString.Invariant($"{0.5 * (max + min),8:0.0}{rain,8:0.0}"), StringComparison.Ordinal);

    /// <summary>A daily line without any value.</summary>
    internal static string UscrnEmptyDay(string date) =>
        $"99001 {date}  2.622  -84.12   42.31 -9999.0 -9999.0 -9999.0 -9999.0 -9999.0 -9999.00 U -9999.0 -9999.0 -9999.0 -9999.0 -9999.0 -9999.0 -99.000 -99.000 -99.000 -99.000 -99.000 -9999.0 -9999.0 -9999.0 -9999.0 -9999.0";

    /// <summary>An hourly line for a stamp of local time, mean temperature, extremes 0.5 degC around it.</summary>
    internal static string UscrnHour(string date, string time, double mean, double rain, double solar, string solarFlag = "0") =>
        FormattableString.Invariant($"99001 {date} {time} {date} {time}  2.622  -84.12   42.31 {mean,7:0.0} {mean,7:0.0} {mean + 0.5,7:0.0} {mean - 0.5,7:0.0} {rain,7:0.0} {solar,6:0} {solarFlag} {solar,6:0} 0 {solar,6:0} 0 C    21.4 0    22.6 0    19.8 0    68 0   0.216   0.232   0.261 -99.000 -99.000    17.9    18.2    18.6 -9999.0 -9999.0");

    /// <summary>The 24 lines of one local day, hour-ending 0100 to 0000 of the next date.</summary>
    internal static IEnumerable<string> UscrnHoursOf(DateOnly day, Func<int, double> mean, Func<int, double> rain, Func<int, double> solar)
    {
        for (var hour = 0; hour < 24; hour++)
        {
            var (date, time) = hour == 23 ? (day.AddDays(1), "0000") : (day, FormattableString.Invariant($"{hour + 1:00}00"));
            yield return UscrnHour(FormattableString.Invariant($"{date:yyyyMMdd}"), time, mean(hour), rain(hour), solar(hour));
        }
    }
}
