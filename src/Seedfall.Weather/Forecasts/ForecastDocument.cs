using System.Text.Json;
using Seedfall.Engine.Weather;
using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>A saved answer, whichever of the three it is, put into hours.</summary>
internal sealed class ForecastDocument
{
    /// <summary>Both services give the wind at 10 m (from memory of their documentation).</summary>
    private const double WindHeightM = 10.0;

    private readonly ForecastDraft _draft = new();
    private readonly NorwaySeries _norway;
    private readonly List<double> _corners = [];
    private string? _source;
    private string? _message;
    private bool _isPlacePage;
    private DateTimeOffset? _issued;

    internal ForecastDocument() => _norway = new NorwaySeries(_draft);

    internal void ReadRoot(ref JsonWalker walker) => JsonSteps.Members(ref walker, "a forecast", (ref JsonWalker w, string name) =>
    {
        switch (name)
        {
            case "properties": JsonSteps.Members(ref w, name, ReadProperty); break;
            case "geometry" when w.Token == JsonTokenType.StartObject: JsonSteps.Members(ref w, name, ReadGeometry); break;
            case "detail" or "title" when w.Token == JsonTokenType.String: _message = FieldText.Clean(w.Text(), 200); break;
            default: w.Skip(); break;
        }
    });

    internal HourlyForecast Build()
    {
        _norway.Finish();
        var hours = _draft.Hours();
        if (_source is null || hours.Count == 0)
        {
            throw new RefusedException(0, 0, "hours of a forecast: raw grid layers or hourly periods of the US National Weather Service, or a time series of MET Norway", Found());
        }

        return new HourlyForecast(hours, WindHeightM, _source)
        {
            Issued = _issued,
            Place = Where(),
            Notes =
            [
                .. _draft.Has(ForecastQuantity.WindMs) ? Array.Empty<string>() : ["The file holds no wind."],
                .. hours.Any(h => h.Drawn) ? ["Where the file gives only every sixth hour, the hours between are drawn in a straight line and the rain is divided evenly."] : Array.Empty<string>(),
            ],
        };
    }

    private string Found() => _isPlacePage ? "the page of a place: open the address it gives under forecastGridData, and save that" : _message is { } message ? $"the message {message}" : "none";

    private void ReadProperty(ref JsonWalker walker, string name)
    {
        switch (name)
        {
            case "timeseries":
                _source = "MET Norway location forecast";
                JsonSteps.Items(ref walker, name, _norway.ReadStep);
                break;
            case "meta": JsonSteps.Members(ref walker, name, ReadMeta); break;
            case "periods":
                _source = "US National Weather Service, hourly forecast";
                JsonSteps.Items(ref walker, name, (ref JsonWalker w) => new UsPeriod(_draft).Read(ref w));
                break;
            case "updateTime" when walker.Token == JsonTokenType.String: _issued = JsonSteps.Instant(ref walker, name); break;
            case "forecastGridData" when walker.Token == JsonTokenType.String: _isPlacePage = true; break;
            default:
                if (UsLayer.QuantityOf(name) is { } quantity && walker.Token == JsonTokenType.StartObject)
                {
                    _source ??= "US National Weather Service, grid forecast";
                    new UsLayer(quantity, _draft).Read(ref walker);
                }
                else
                {
                    walker.Skip();
                }

                break;
        }
    }

    private void ReadMeta(ref JsonWalker walker, string name)
    {
        switch (name)
        {
            case "updated_at" when walker.Token == JsonTokenType.String: _issued = JsonSteps.Instant(ref walker, name); break;
            case "units": JsonSteps.Members(ref walker, name, _norway.ReadUnit); break;
            default: walker.Skip(); break;
        }
    }

    private void ReadGeometry(ref JsonWalker walker, string name)
    {
        if (name == "coordinates")
        {
            ReadCoordinates(ref walker);
        }
        else
        {
            walker.Skip();
        }
    }

    /// <summary>A point, or a ring of them; a ring's point is its middle.</summary>
    private void ReadCoordinates(ref JsonWalker walker)
    {
        var numbers = new List<double>();
        JsonSteps.Items(ref walker, "coordinates", (ref JsonWalker w) =>
        {
            if (w.Token == JsonTokenType.StartArray)
            {
                ReadCoordinates(ref w);
            }
            else if (w.Number("a coordinate") is { } number)
            {
                numbers.Add(number);
            }
        });
        if (numbers.Count >= 2)
        {
            if (Math.Abs(numbers[0]) > 180.0 || Math.Abs(numbers[1]) > 90.0)
            {
                throw walker.Refuse("coordinates as longitude, latitude", FormattableString.Invariant($"{numbers[0]}, {numbers[1]}"));
            }

            _corners.AddRange([numbers[0], numbers[1]]);
        }
    }

    private Place? Where() => _corners.Count == 0 ? null : new Place(
        0.5 * (_corners.Where((_, i) => i % 2 == 1).Min() + _corners.Where((_, i) => i % 2 == 1).Max()),
        0.5 * (_corners.Where((_, i) => i % 2 == 0).Min() + _corners.Where((_, i) => i % 2 == 0).Max()),
        0.0);
}
