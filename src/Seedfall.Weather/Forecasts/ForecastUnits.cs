using Seedfall.Engine.Units;
using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>Units of a forecast by their names, whatever stands before a colon.</summary>
internal static class ForecastUnits
{
    /// <summary>A value in the unit of the quantity's name; refused where the unit is unknown or the value unbelievable.</summary>
    internal static double Convert(ForecastQuantity quantity, double value, string? unit, ref JsonWalker walker)
    {
        var name = unit is null ? "" : unit[(unit.IndexOf(':', StringComparison.Ordinal) + 1)..];
        var converted = (quantity, name) switch
        {
            (ForecastQuantity.AirC, "degC" or "C" or "celsius") => value,
            (ForecastQuantity.AirC, "degF" or "F") => (value - 32.0) / 1.8,
            (ForecastQuantity.AirC, "K") => value - 273.15,
            (ForecastQuantity.WindMs or ForecastQuantity.GustMs, "m_s-1" or "m/s") => value,
            (ForecastQuantity.WindMs or ForecastQuantity.GustMs, "km_h-1" or "km/h") => Speed.FromKilometersPerHour(value).MetersPerSecond,
            (ForecastQuantity.WindMs or ForecastQuantity.GustMs, "mph") => Speed.FromMilesPerHour(value).MetersPerSecond,
            (ForecastQuantity.HumidityPct or ForecastQuantity.CloudPct or ForecastQuantity.RainChancePct, "percent" or "%") => value,
            (ForecastQuantity.RainMm, "mm") => value,
            _ => throw walker.Refuse($"a known unit of {Words(quantity)}", unit is null ? "none" : $"'{FieldText.Clean(unit, 40)}'"),
        };
        var (low, high) = ForecastDraft.Range(quantity);
        return converted >= low && converted <= high
            ? converted
            : throw walker.Refuse(FormattableString.Invariant($"{Words(quantity)} from {low:0} to {high:0} {Unit(quantity)}"), FormattableString.Invariant($"{converted:0.##}"));
    }

    private static string Words(ForecastQuantity quantity) => quantity switch
    {
        ForecastQuantity.AirC => "air temperature",
        ForecastQuantity.HumidityPct => "humidity",
        ForecastQuantity.WindMs => "wind",
        ForecastQuantity.GustMs => "gusts",
        ForecastQuantity.CloudPct => "cloud",
        ForecastQuantity.RainMm => "rain",
        _ => "chance of rain",
    };

    private static string Unit(ForecastQuantity quantity) => quantity switch
    {
        ForecastQuantity.AirC => "degC",
        ForecastQuantity.WindMs or ForecastQuantity.GustMs => "m/s",
        ForecastQuantity.RainMm => "mm",
        _ => "%",
    };
}
