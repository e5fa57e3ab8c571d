using System.Xml;
using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>
/// One layer of the US grid forecast: values over intervals such as <c>2026-09-01T03:00:00+00:00/PT4H</c>. A value holds for its whole
/// interval; precipitation is the interval's total and is divided.
/// </summary>
internal sealed class UsLayer(ForecastQuantity quantity, ForecastDraft draft)
{
    // A week and a half of hours is some 260 values.
    private const int MostValues = 2_000;

    private readonly List<(DateTimeOffset Start, int Hours, double Value)> _values = [];
    private string? _unit;

    internal static ForecastQuantity? QuantityOf(string layer) => layer switch
    {
        "temperature" => ForecastQuantity.AirC,
        "relativeHumidity" => ForecastQuantity.HumidityPct,
        "windSpeed" => ForecastQuantity.WindMs,
        "windGust" => ForecastQuantity.GustMs,
        "skyCover" => ForecastQuantity.CloudPct,
        "quantitativePrecipitation" => ForecastQuantity.RainMm,
        "probabilityOfPrecipitation" => ForecastQuantity.RainChancePct,
        _ => null,
    };

    internal void Read(ref JsonWalker walker)
    {
        JsonSteps.Members(ref walker, "a layer", (ref JsonWalker w, string name) =>
        {
            switch (name)
            {
                case "uom": _unit = JsonSteps.Words(ref w, name); break;
                case "values": JsonSteps.Items(ref w, name, ReadValue); break;
                default: w.Skip(); break;
            }
        });
        foreach (var (start, hours, value) in _values)
        {
            draft.Set(quantity, start, hours, ForecastUnits.Convert(quantity, value, _unit, ref walker));
        }
    }

    private void ReadValue(ref JsonWalker walker)
    {
        (DateTimeOffset Start, int Hours)? when = null;
        double? value = null;
        JsonSteps.Members(ref walker, "a value", (ref JsonWalker w, string name) =>
        {
            switch (name)
            {
                case "validTime": when = Interval(ref w); break;
                case "value": value = w.Number(name); break;
                default: w.Skip(); break;
            }
        });
        if (when is null)
        {
            throw walker.Refuse("validTime beside each value", "none");
        }

        if (_values.Count >= MostValues)
        {
            throw walker.Refuse(FormattableString.Invariant($"at most {MostValues} values in a layer"), "more");
        }

        if (value is { } v)
        {
            _values.Add((when.Value.Start, when.Value.Hours, v));
        }
    }

    private static (DateTimeOffset Start, int Hours) Interval(ref JsonWalker walker)
    {
        var text = JsonSteps.Words(ref walker, "validTime");
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash > 0)
        {
            var start = JsonSteps.ParseInstant(text[..slash], ref walker);
            if (Length(text[(slash + 1)..]) is { TotalHours: >= 1.0 and <= ForecastDraft.MostHours } length)
            {
                return (start, (int)Math.Round(length.TotalHours));
            }
        }

        throw walker.Refuse("an interval such as 2026-09-01T09:00:00+00:00/PT3H, of an hour or more", $"'{FieldText.Clean(text, 60)}'");
    }

    private static TimeSpan? Length(string text)
    {
        try
        {
            return XmlConvert.ToTimeSpan(text);
        }
        catch (Exception e) when (e is FormatException or OverflowException)
        {
            return null;
        }
    }
}
