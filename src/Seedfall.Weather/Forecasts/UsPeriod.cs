using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>
/// One period of the US hourly forecast. Temperature and wind come as a number and a text (<c>5 to 10 mph</c>), or as a value with its
/// unit; both are read, and of a range the higher end.
/// </summary>
internal sealed partial class UsPeriod(ForecastDraft draft)
{
    private readonly Dictionary<ForecastQuantity, double> _values = [];
    private DateTimeOffset? _start;
    private DateTimeOffset? _end;
    private double? _degrees;
    private string? _degreeUnit;

    internal void Read(ref JsonWalker walker)
    {
        JsonSteps.Members(ref walker, "a period", ReadMember);
        if (_start is not { } start || _end is not { } end)
        {
            throw walker.Refuse("startTime and endTime in each period", "none");
        }

        if ((end - start).TotalHours is not (> 0.5 and < 1.5))
        {
            throw walker.Refuse("periods of an hour: save the answer of forecastGridData or of forecastHourly", FormattableString.Invariant($"one of {(end - start).TotalHours:0.#} h"));
        }

        if (_degrees is { } degrees)
        {
            _values[ForecastQuantity.AirC] = ForecastUnits.Convert(ForecastQuantity.AirC, degrees, _degreeUnit, ref walker);
        }

        foreach (var (quantity, value) in _values)
        {
            draft.Set(quantity, start, 1, value);
        }
    }

    private void ReadMember(ref JsonWalker walker, string name)
    {
        switch (name)
        {
            case "startTime": _start = JsonSteps.Instant(ref walker, name); break;
            case "endTime": _end = JsonSteps.Instant(ref walker, name); break;
            case "temperatureUnit" when walker.Token == JsonTokenType.String: _degreeUnit = walker.Text(); break;
            case "temperature" when walker.Token == JsonTokenType.Number: _degrees = walker.Number(name); break;
            case "temperature": Take(ForecastQuantity.AirC, ref walker); break;
            case "relativeHumidity": Take(ForecastQuantity.HumidityPct, ref walker); break;
            case "probabilityOfPrecipitation": Take(ForecastQuantity.RainChancePct, ref walker); break;
            case "windSpeed": TakeWind(ForecastQuantity.WindMs, ref walker); break;
            case "windGust": TakeWind(ForecastQuantity.GustMs, ref walker); break;
            default: walker.Skip(); break;
        }
    }

    private void TakeWind(ForecastQuantity quantity, ref JsonWalker walker)
    {
        if (walker.Token != JsonTokenType.String)
        {
            Take(quantity, ref walker);
            return;
        }

        var text = walker.Text();
        if (text.Length == 0)
        {
            return;
        }

        if (WindText().Match(text) is not { Success: true } match)
        {
            throw walker.Refuse("wind such as 9 km/h or 5 to 10 mph", $"'{FieldText.Clean(text, 40)}'");
        }

        var most = double.Parse(match.Groups["most"].Value, CultureInfo.InvariantCulture);
        _values[quantity] = ForecastUnits.Convert(quantity, most, match.Groups["unit"].Value, ref walker);
    }

    /// <summary>A value with its unit; of least and most the most; null says nothing.</summary>
    private void Take(ForecastQuantity quantity, ref JsonWalker walker)
    {
        if (walker.Token == JsonTokenType.Null)
        {
            return;
        }

        string? unit = null;
        double? value = null;
        double? most = null;
        JsonSteps.Members(ref walker, "a value with its unit", (ref JsonWalker w, string name) =>
        {
            switch (name)
            {
                case "unitCode": unit = JsonSteps.Words(ref w, name); break;
                case "value": value = w.Number(name); break;
                case "maxValue": most = w.Number(name); break;
                default: w.Skip(); break;
            }
        });
        if ((most ?? value) is { } taken)
        {
            _values[quantity] = ForecastUnits.Convert(quantity, taken, unit, ref walker);
        }
    }

    [GeneratedRegex(@"^(?:[0-9]{1,3}(?:\.[0-9]+)? to )?(?<most>[0-9]{1,3}(?:\.[0-9]+)?) (?<unit>mph|km/h)$", RegexOptions.ExplicitCapture)]
    private static partial Regex WindText();
}
