using System.Globalization;
using System.Text;
using Seedfall.Engine.Weather;

namespace Seedfall.Weather;

/// <summary>Our own weather file: a CSV whose column names carry their units. See docs/using/weather-files.md.</summary>
public static class WeatherCsv
{
    private static readonly (string Header, Func<WeatherDay, double?> Value)[] Optional =
    [
        ("tmean_c", d => d.MeanC),
        ("solar_mj_m2", d => d.SolarMJ),
        ("rh_max_pct", d => d.HumidityMaxPct),
        ("rh_min_pct", d => d.HumidityMinPct),
        ("rh_mean_pct", d => d.HumidityMeanPct),
        ("wind_2m_m_s", d => d.WindMs),
        ("soil_5cm_c", d => d.Soil5CmC),
        ("soil_moisture_5cm_m3_m3", d => d.SoilMoisture5Cm),
    ];

    /// <summary>
    /// Writes the history so that reading it gives the same days, bit for bit. Columns no day has are left out. The station's
    /// name must have at most 200 characters and no control characters; it throws otherwise.
    /// </summary>
    /// <param name="history">What to write.</param>
    /// <param name="writer">UTF-8 is expected; lines end in CR LF (RFC 4180).</param>
    public static void Write(WeatherHistory history, TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(writer);
        if (history.StationName.Length > Input.FieldText.LongestLabel || history.StationName.Any(char.IsControl))
        {
            throw new ArgumentException(
                FormattableString.Invariant($"the station's name must have at most {Input.FieldText.LongestLabel} characters and no control characters"), nameof(history));
        }

        WriteStation(history, writer);
        var columns = Optional.Where(c => history.Days.Any(d => c.Value(d) is not null)).ToArray();
        var hasFilled = history.Days.Any(d => d.Quality == DayQuality.Interpolated);
        writer.Write("date,tmax_c,tmin_c,rain_mm");
        writer.Write(string.Concat(columns.Select(c => "," + c.Header)));
        writer.Write(hasFilled ? ",quality\r\n" : "\r\n");
        var line = new StringBuilder();
        foreach (var day in history.Days)
        {
            WriteDay(day, columns, hasFilled, line);
            writer.Write(line);
            line.Clear();
        }
    }

    private static void WriteStation(WeatherHistory history, TextWriter writer)
    {
        Comment(writer, "station", history.StationName);
        if (history.Station is { } place)
        {
            Comment(writer, "latitude_deg", Number(place.LatitudeDeg));
            Comment(writer, "longitude_deg", Number(place.LongitudeDeg));
            Comment(writer, "elevation_m", Number(place.ElevationM));
        }
    }

    private static void Comment(TextWriter writer, string key, string value) => writer.Write($"# {key}: {value}\r\n");

    private static void WriteDay(WeatherDay day, (string Header, Func<WeatherDay, double?> Value)[] columns, bool hasFilled, StringBuilder line)
    {
        line.Append(day.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
            .Append(',').Append(Number(day.TmaxC))
            .Append(',').Append(Number(day.TminC))
            .Append(',').Append(Number(day.RainMm));
        foreach (var (_, value) in columns)
        {
            line.Append(',').Append(value(day) is { } v ? Number(v) : string.Empty);
        }

        if (hasFilled)
        {
            line.Append(day.Quality == DayQuality.Interpolated ? ",filled" : ",");
        }

        line.Append("\r\n");
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
