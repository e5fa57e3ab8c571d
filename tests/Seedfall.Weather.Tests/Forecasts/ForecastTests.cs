using System.Text;
using CsCheck;
using Seedfall.Engine.Weather;
using Seedfall.Weather.Forecasts;

namespace Seedfall.Weather.Tests.Forecasts;

/// <summary>Saved forecasts in the true shape of the two services, with invented numbers.</summary>
public sealed class ForecastTests
{
    internal const string Grid = """
        { "id": "https://example.invalid/gridpoints/DTX/31,22", "type": "Feature",
          "geometry": { "type": "Polygon", "coordinates": [[[-84.13,42.32],[-84.13,42.30],[-84.10,42.30],[-84.10,42.32],[-84.13,42.32]]] },
          "properties": { "@type": "wx:Gridpoint", "updateTime": "2026-09-01T08:12:41+00:00", "validTimes": "2026-09-01T02:00:00+00:00/P7DT17H",
            "elevation": { "unitCode": "wmoUnit:m", "value": 281.03 }, "gridX": "31",
            "temperature": { "uom": "wmoUnit:degC", "values": [
              { "validTime": "2026-09-01T02:00:00+00:00/PT1H", "value": 16.5 }, { "validTime": "2026-09-01T03:00:00+00:00/PT4H", "value": 15 },
              { "validTime": "2026-09-01T07:00:00+00:00/P1DT1H", "value": 20 } ] },
            "relativeHumidity": { "values": [ { "validTime": "2026-09-01T02:00:00+00:00/PT2H", "value": 84 } ], "uom": "wmoUnit:percent" },
            "windSpeed": { "uom": "wmoUnit:km_h-1", "values": [ { "validTime": "2026-09-01T02:00:00+00:00/PT3H", "value": 9.0 }, { "validTime": "2026-09-01T05:00:00+00:00/PT1H", "value": null } ] },
            "windGust": { "uom": "unit:km_h-1", "values": [ { "validTime": "2026-09-01T02:00:00+00:00/PT1H", "value": 18.0 } ] },
            "skyCover": { "uom": "wmoUnit:percent", "values": [ { "validTime": "2026-09-01T02:00:00+00:00/PT6H", "value": 41 } ] },
            "quantitativePrecipitation": { "uom": "wmoUnit:mm", "values": [ { "validTime": "2026-09-01T00:00:00+00:00/PT6H", "value": 0 }, { "validTime": "2026-09-01T06:00:00+00:00/PT6H", "value": 4.8 } ] },
            "probabilityOfPrecipitation": { "uom": "wmoUnit:percent", "values": [ { "validTime": "2026-09-01T06:00:00+00:00/PT6H", "value": 71 } ] },
            "hazards": { "values": [] } } }
        """;

    internal const string Hourly = """
        { "type": "Feature", "properties": { "units": "us", "updateTime": "2026-09-01T08:12:41+00:00",
            "periods": [
              { "number": 1, "startTime": "2026-09-01T05:00:00-04:00", "endTime": "2026-09-01T06:00:00-04:00", "isDaytime": false, "temperature": 59, "temperatureUnit": "F", "temperatureTrend": null,
                "probabilityOfPrecipitation": { "unitCode": "wmoUnit:percent", "value": 20 }, "dewpoint": { "unitCode": "wmoUnit:degC", "value": 12.2 },
                "relativeHumidity": { "unitCode": "wmoUnit:percent", "value": 84 }, "windSpeed": "5 to 10 mph", "windDirection": "SW", "icon": "x", "shortForecast": "Slight Chance Light Rain" },
              { "number": 2, "startTime": "2026-09-01T06:00:00-04:00", "endTime": "2026-09-01T07:00:00-04:00", "temperature": { "unitCode": "wmoUnit:degC", "value": 15.5 },
                "windSpeed": { "unitCode": "wmoUnit:km_h-1", "minValue": 7.2, "maxValue": 10.8, "value": null }, "windGust": null, "relativeHumidity": { "unitCode": "wmoUnit:percent", "value": null } } ] } }
        """;

    internal const string Norway = """
        { "type": "Feature", "geometry": { "type": "Point", "coordinates": [-84.12, 42.31, 281] },
          "properties": { "meta": { "updated_at": "2026-09-01T06:32:11Z", "units": { "air_pressure_at_sea_level": "hPa", "air_temperature": "celsius", "precipitation_amount": "mm", "relative_humidity": "%", "wind_speed": "m/s" } },
            "timeseries": [
              { "time": "2026-09-01T07:00:00Z", "data": {
                  "instant": { "details": { "air_pressure_at_sea_level": 1014.2, "air_temperature": 15.1, "cloud_area_fraction": 63.3, "relative_humidity": 83.9, "wind_from_direction": 214.0, "wind_speed": 2.6 } },
                  "next_12_hours": { "summary": { "symbol_code": "rain" }, "details": {} },
                  "next_1_hours": { "summary": { "symbol_code": "lightrain" }, "details": { "precipitation_amount": 0.3 } },
                  "next_6_hours": { "summary": { "symbol_code": "rain" }, "details": { "precipitation_amount": 4.1 } } } },
              { "time": "2026-09-01T08:00:00Z", "data": {
                  "instant": { "details": { "air_temperature": 16.0, "wind_speed": 3.0 } },
                  "next_6_hours": { "details": { "precipitation_amount": 6.0 } } } },
              { "time": "2026-09-01T14:00:00Z", "data": { "instant": { "details": { "air_temperature": 22.0, "wind_speed": 6.0 } } } } ] } }
        """;

    [Fact]
    public void Grid_layers_hold_for_their_interval_and_rain_is_divided()
    {
        var forecast = Read(Grid);
        Assert.Equal(30, forecast.Hours.Count);
        Assert.Equal(new DateTimeOffset(2026, 9, 1, 2, 0, 0, TimeSpan.Zero), forecast.Hours[0].Start);
        Assert.Equal([16.5, 15, 15, 15, 15, 20], forecast.Hours.Take(6).Select(h => h.AirC!.Value));
        Assert.Equal([2.5, 2.5, 2.5, null], forecast.Hours.Take(4).Select(h => h.WindMs));
        Assert.Equal(5.0, forecast.Hours[0].GustMs!.Value, 1e-12);
        Assert.Equal([84.0, 84.0, null], forecast.Hours.Take(3).Select(h => h.HumidityPct));
        Assert.Equal(41.0, forecast.Hours[5].CloudPct);
        Assert.Equal(0.8, forecast.Hours[4].RainMm!.Value, 1e-12);
        Assert.Equal(4.8, forecast.Hours.Sum(h => h.RainMm ?? 0.0), 1e-9);
        Assert.Equal(71.0, forecast.Hours[4].RainChancePct);
        Assert.Equal(new DateTimeOffset(2026, 9, 1, 8, 12, 41, TimeSpan.Zero), forecast.Issued);
        Assert.Equal((42.31, -84.115), (forecast.Place!.LatitudeDeg, forecast.Place.LongitudeDeg));
        Assert.Equal(10.0, forecast.WindHeightM);
    }

    [Fact]
    public void Hourly_periods_come_as_text_or_as_values_and_the_higher_wind_is_taken()
    {
        var forecast = Read(Hourly);
        Assert.Equal(2, forecast.Hours.Count);
        Assert.Equal(15.0, forecast.Hours[0].AirC!.Value, 1e-12);
        Assert.Equal(4.4704, forecast.Hours[0].WindMs!.Value, 1e-12);
        Assert.Equal(20.0, forecast.Hours[0].RainChancePct);
        Assert.Equal(15.5, forecast.Hours[1].AirC);
        Assert.Equal(3.0, forecast.Hours[1].WindMs!.Value, 1e-12);
        Assert.Null(forecast.Hours[1].HumidityPct);
        Assert.Equal(new DateTimeOffset(2026, 9, 1, 9, 0, 0, TimeSpan.Zero), forecast.Hours[0].Start);
    }

    [Fact]
    public void Steps_six_hours_apart_are_drawn_between_and_overlapping_rain_is_taken_once()
    {
        var forecast = Read(Norway);
        Assert.Equal(8, forecast.Hours.Count);
        Assert.Equal(0.3, forecast.Hours[0].RainMm);
        Assert.False(forecast.Hours[0].Drawn);
        Assert.All(forecast.Hours.Skip(1).Take(6), h => Assert.True(h.Drawn && Math.Abs(h.RainMm!.Value - 1.0) < 1e-12));
        Assert.Equal([16, 17, 18, 19, 20, 21, 22], forecast.Hours.Skip(1).Select(h => h.AirC!.Value));
        Assert.Equal(4.5, forecast.Hours[4].WindMs!.Value, 1e-12);
        Assert.Null(forecast.Hours[7].RainMm);
        Assert.Contains(forecast.Notes, n => n.Contains("drawn", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "an empty file")]
    [InlineData("DATE,TMAX", "saved forecast")]
    [InlineData("{", "JSON")]
    [InlineData("{}", "hours of a forecast")]
    [InlineData("""{"title":"Forecast Grid Expired","status":503,"detail":"The requested forecast grid has expired."}""", "has expired")]
    [InlineData("""{"properties":{"forecastGridData":"https://example.invalid/gridpoints/DTX/31,22"}}""", "open the address it gives under forecastGridData")]
    [InlineData("""{"properties":{"temperature":{"values":[{"validTime":"2026-09-01T02:00:00+00:00/PT1H","value":16}]}}}""", "a known unit of air temperature")]
    [InlineData("""{"properties":{"temperature":{"uom":"wmoUnit:degC","values":[{"validTime":"2026-09-01T02:00:00+00:00/PT1H","value":160}]}}}""", "air temperature from -75 to 57 degC")]
    [InlineData("""{"properties":{"temperature":{"uom":"wmoUnit:degC","values":[{"validTime":"yesterday","value":16}]}}}""", "an interval such as")]
    [InlineData("""{"properties":{"temperature":{"uom":"wmoUnit:degC","values":[{"validTime":"2026-09-01T02:00:00+00:00/P9Y","value":16}]}}}""", "an interval such as")]
    [InlineData("""{"properties":{"periods":[{"startTime":"2026-09-01T06:00:00-04:00","endTime":"2026-09-01T18:00:00-04:00","temperature":60,"temperatureUnit":"F"}]}}""", "periods of an hour")]
    [InlineData("""{"properties":{"periods":[{"startTime":"2026-09-01T06:00:00-04:00","endTime":"2026-09-01T07:00:00-04:00","windSpeed":"a breeze"}]}}""", "wind such as 9 km/h")]
    [InlineData("""{"properties":{"meta":{"units":{"wind_speed":"knots"}},"timeseries":[]}}""", "wind_speed in m/s")]
    [InlineData("""{"properties":{"timeseries":[{"time":"2026-09-01T07:00:00Z","data":{}},{"time":"2026-09-01T07:00:00Z","data":{}}]}}""", "in order of time")]
    public void Anything_else_is_refused_by_name(string json, string expected)
    {
        var read = ForecastFiles.Read("saved.json", Encoding.UTF8.GetBytes(json));
        Assert.False(read.IsRead);
        Assert.Contains(expected, read.Problem.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("saved.json", read.Problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_refusal_names_line_and_column()
    {
        var problem = ForecastFiles.Read("f.json", Encoding.UTF8.GetBytes(Norway.Replace("\"wind_speed\": 3.0", "\"wind_speed\": \"calm\"", StringComparison.Ordinal))).Problem!;
        Assert.Equal(10, problem.Line);
        Assert.True(problem.Column > 1);
    }

    [Fact]
    public void Whatever_bytes_come_it_answers_and_holds_memory() => Gen.Select(Gen.OneOfConst(Grid, Hourly, Norway), Gen.Int[0, 4000], Gen.Byte.Array[0, 12]).Sample((json, at, noise) =>
    {
        var bytes = Encoding.UTF8.GetBytes(json);
        noise.AsSpan(0, Math.Min(noise.Length, bytes.Length - (at % bytes.Length))).CopyTo(bytes.AsSpan(at % bytes.Length));
        var read = ForecastFiles.Read("f.json", bytes);
        Assert.True(read.IsRead ? read.Forecast.Hours.Count > 0 : read.Problem.Expected.Length > 0);
    });

    [Fact]
    public void A_flood_of_values_is_refused()
    {
        var values = string.Join(',', Enumerable.Range(0, 2_100).Select(i => $$"""{"validTime":"{{new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(i):yyyy-MM-ddTHH:mm:ss}}+00:00/PT1H","value":16}"""));
        Assert.Contains("at most", ForecastFiles.Read("f.json", Encoding.UTF8.GetBytes("""{"properties":{"temperature":{"uom":"degC","values":[""" + values + "]}}}")).Problem!.Expected, StringComparison.Ordinal);
    }

    private static HourlyForecast Read(string json)
    {
        var read = ForecastFiles.Read("saved.json", Encoding.UTF8.GetBytes(json));
        Assert.True(read.IsRead, read.Problem?.ToString());
        return read.Forecast;
    }
}
