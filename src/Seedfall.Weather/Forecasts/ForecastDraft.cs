using Seedfall.Engine.Weather;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>What an hour of a forecast can hold.</summary>
internal enum ForecastQuantity
{
    AirC,
    HumidityPct,
    WindMs,
    GustMs,
    CloudPct,
    RainMm,
    RainChancePct,
}

/// <summary>Hours as they are filled from a file's series.</summary>
internal sealed class ForecastDraft
{
    /// <summary>Most hours one value or one file may cover: 31 days.</summary>
    internal const int MostHours = 31 * 24;

    private static readonly int Quantities = Enum.GetValues<ForecastQuantity>().Length;

    private readonly SortedDictionary<long, Slot> _hours = [];

    /// <summary>Lowest and highest value believed, in the unit of the name.</summary>
    internal static (double Low, double High) Range(ForecastQuantity quantity) => quantity switch
    {
        ForecastQuantity.AirC => (-75.0, 57.0),
        ForecastQuantity.HumidityPct => (0.0, 105.0),
        ForecastQuantity.WindMs => (0.0, 75.0),
        ForecastQuantity.GustMs => (0.0, 115.0),
        ForecastQuantity.CloudPct or ForecastQuantity.RainChancePct => (0.0, 100.0),
        ForecastQuantity.RainMm => (0.0, 1000.0),
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "is no quantity of a forecast"),
    };

    /// <summary>Puts a value on every hour it holds for; rain is a total and is divided among them.</summary>
    internal void Set(ForecastQuantity quantity, DateTimeOffset start, int hours, double value, bool drawn = false)
    {
        var first = start.UtcTicks / TimeSpan.TicksPerHour;
        for (var i = 0; i < hours; i++)
        {
            if (!_hours.TryGetValue(first + i, out var slot))
            {
                if (_hours.Count >= MostHours)
                {
                    throw new RefusedException(0, 0, FormattableString.Invariant($"at most {MostHours} hours"), "more");
                }

                _hours[first + i] = slot = new Slot(new double?[Quantities]);
            }

            slot.Values[(int)quantity] = quantity == ForecastQuantity.RainMm ? value / hours : value;
            slot.Drawn |= drawn;
        }
    }

    internal bool Has(ForecastQuantity quantity) => _hours.Values.Any(slot => slot.Values[(int)quantity] is not null);

    /// <summary>Hours of UTC, ascending, those without air temperature left out.</summary>
    internal IReadOnlyList<ForecastHour> Hours() => [.. _hours.Where(h => h.Value.Values[(int)ForecastQuantity.AirC] is not null).Select(h => Hour(h.Key, h.Value))];

    private static ForecastHour Hour(long hour, Slot slot) => new(new DateTimeOffset(hour * TimeSpan.TicksPerHour, TimeSpan.Zero))
    {
        AirC = slot.Values[(int)ForecastQuantity.AirC],
        HumidityPct = slot.Values[(int)ForecastQuantity.HumidityPct] is { } humidity ? Math.Min(100.0, humidity) : null,
        WindMs = slot.Values[(int)ForecastQuantity.WindMs],
        GustMs = slot.Values[(int)ForecastQuantity.GustMs],
        CloudPct = slot.Values[(int)ForecastQuantity.CloudPct],
        RainMm = slot.Values[(int)ForecastQuantity.RainMm],
        RainChancePct = slot.Values[(int)ForecastQuantity.RainChancePct],
        Drawn = slot.Drawn,
    };

    private sealed class Slot(double?[] values)
    {
        internal double?[] Values { get; } = values;

        internal bool Drawn { get; set; }
    }
}
