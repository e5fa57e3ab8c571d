using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>
/// MET Norway's time series: values at instants, rain over the hours that follow. A step may carry rain for 1, 6 and 12 hours at once;
/// they overlap, so the hour's own is taken where it is there, else the six hours'.
/// </summary>
internal sealed class NorwaySeries(ForecastDraft draft)
{
    private const double LongestGapHours = 6.0;

    private static readonly Dictionary<string, (ForecastQuantity Quantity, string Unit)> Known = new(StringComparer.Ordinal)
    {
        ["air_temperature"] = (ForecastQuantity.AirC, "celsius"),
        ["relative_humidity"] = (ForecastQuantity.HumidityPct, "%"),
        ["wind_speed"] = (ForecastQuantity.WindMs, "m/s"),
        ["wind_speed_of_gust"] = (ForecastQuantity.GustMs, "m/s"),
        ["cloud_area_fraction"] = (ForecastQuantity.CloudPct, "%"),
        ["precipitation_amount"] = (ForecastQuantity.RainMm, "mm"),
        ["probability_of_precipitation"] = (ForecastQuantity.RainChancePct, "%"),
    };

    private readonly List<Step> _steps = [];

    internal void ReadUnit(ref JsonWalker walker, string name)
    {
        if (!Known.TryGetValue(name, out var known))
        {
            walker.Skip();
        }
        else if (JsonSteps.Words(ref walker, name) is var unit && unit != known.Unit)
        {
            throw walker.Refuse($"{name} in {known.Unit}", $"'{FieldText.Clean(unit, 40)}'");
        }
    }

    internal void ReadStep(ref JsonWalker walker)
    {
        var step = new Step();
        JsonSteps.Members(ref walker, "a step", (ref JsonWalker w, string name) =>
        {
            switch (name)
            {
                case "time": step.At = JsonSteps.Instant(ref w, name); break;
                case "data": JsonSteps.Members(ref w, name, (ref JsonWalker d, string part) => ReadPart(ref d, part, step)); break;
                default: w.Skip(); break;
            }
        });
        if (step.At == default || (_steps.Count > 0 && step.At <= _steps[^1].At))
        {
            throw walker.Refuse("steps with their time, in order of time", step.At == default ? "none" : FormattableString.Invariant($"{step.At:u}"));
        }

        _steps.Add(step);
    }

    /// <summary>Hours out of the steps, those between steps up to six hours apart drawn in a straight line.</summary>
    internal void Finish()
    {
        for (var i = 0; i < _steps.Count; i++)
        {
            var (step, next) = (_steps[i], i + 1 < _steps.Count ? _steps[i + 1] : null);
            var gapHours = next is null ? 1.0 : (next.At - step.At).TotalHours;
            var hours = gapHours <= LongestGapHours ? Math.Max(1, (int)Math.Round(gapHours)) : 1;
            for (var h = 0; h < hours; h++)
            {
                foreach (var (quantity, value) in step.Instant)
                {
                    var end = next is not null && next.Instant.TryGetValue(quantity, out var later) ? later : value;
                    draft.Set(quantity, step.At.AddHours(h), 1, value + ((end - value) * h / hours), drawn: hours > 1);
                }
            }

            foreach (var (quantity, value) in step.Hour.Count > 0 ? step.Hour : step.SixHours)
            {
                var covered = step.Hour.Count > 0 ? 1 : Math.Min(hours, (int)LongestGapHours);
                draft.Set(quantity, step.At, covered, quantity == ForecastQuantity.RainMm && step.Hour.Count == 0 ? value * covered / LongestGapHours : value);
            }
        }
    }

    private static void ReadPart(ref JsonWalker walker, string part, Step step)
    {
        var into = part switch { "instant" => step.Instant, "next_1_hours" => step.Hour, "next_6_hours" => step.SixHours, _ => null };
        if (into is null)
        {
            walker.Skip();
            return;
        }

        JsonSteps.Members(ref walker, part, (ref JsonWalker w, string name) =>
        {
            if (name == "details")
            {
                JsonSteps.Members(ref w, name, (ref JsonWalker d, string key) => ReadDetail(ref d, key, into));
            }
            else
            {
                w.Skip();
            }
        });
    }

    private static void ReadDetail(ref JsonWalker walker, string key, Dictionary<ForecastQuantity, double> into)
    {
        if (!Known.TryGetValue(key, out var known))
        {
            walker.Skip();
        }
        else if (walker.Number(key) is { } value)
        {
            into[known.Quantity] = ForecastUnits.Convert(known.Quantity, value, known.Unit, ref walker);
        }
    }

    private sealed class Step
    {
        internal DateTimeOffset At { get; set; }

        internal Dictionary<ForecastQuantity, double> Instant { get; } = [];

        internal Dictionary<ForecastQuantity, double> Hour { get; } = [];

        internal Dictionary<ForecastQuantity, double> SixHours { get; } = [];
    }
}
