using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>How one reason is said.</summary>
/// <param name="Kind">What <c>{value}</c> and <c>{limit}</c> measure: speed, temperature, temperature difference or minutes.</param>
/// <param name="Short">Two or three words for a strip.</param>
/// <param name="Statement">One sentence with <c>{value}</c> and <c>{limit}</c> in it.</param>
/// <param name="Instead">What would change it.</param>
public sealed record SprayText(QuantityKind Kind, string Short, string Statement, string Instead)
{
    /// <summary>The statement with its numbers, US units first.</summary>
    public string Say(double? value, double? limit) => Statement
        .Replace("{value}", value is { } v ? Number(v) : "not known", StringComparison.Ordinal)
        .Replace("{limit}", limit is { } l ? Number(l) : "not known", StringComparison.Ordinal);

    private string Number(double value) => Kind switch
    {
        QuantityKind.Speed => Invariant($"{new Speed(value).MilesPerHour:0.#} mph ({value:0.#} m/s)"),
        QuantityKind.Temperature => Invariant($"{new Temperature(value).Fahrenheit:0} °F ({value:0} °C)"),
        QuantityKind.TemperatureDifference => Invariant($"{value * 1.8:0.#} °F ({value:0.#} °C)"),
        _ => value < 60.0 ? Invariant($"{value:0} min") : Invariant($"{value / 60.0:0.#} h"),
    };

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Every reason's words, by its id; the phone gets the same ones.</summary>
public static class SprayTexts
{
    private const string Steadier = "Wait for less wind: it is mostly least in the forenoon, once the air mixes, and again before evening.";
    private const string Label = "The label is the law: no shield, pressure or nozzle changes it.";

    /// <summary>By id.</summary>
    public static IReadOnlyDictionary<string, SprayText> All { get; } = new Dictionary<string, SprayText>(StringComparer.Ordinal)
    {
        ["wind.unknown"] = new(QuantityKind.Speed, "wind not known", "The wind is not known.", "Read it on the spot, or judge it by leaves and flag."),
        ["wind.label"] = new(QuantityKind.Speed, "wind over the label", "Wind {value} is over the label’s {limit}.", Label),
        ["wind.usual"] = new(QuantityKind.Speed, "too windy", "Wind {value} is over {limit}, the most advised where a label is silent; the label’s own limit was not entered.", "Enter the label’s highest wind: it decides. " + Steadier),
        ["wind.brisk"] = new(QuantityKind.Speed, "wind at the nozzle", "Wind {value} at the nozzle; {limit} or less is wanted.", Steadier),
        ["gust.label"] = new(QuantityKind.Speed, "gusts over the label", "Gusts of {value} are over the label’s {limit}.", Label),
        ["gust.usual"] = new(QuantityKind.Speed, "gusts", "Gusts of {value} are over {limit}, the most advised where a label is silent.", Steadier),
        ["gust.brisk"] = new(QuantityKind.Speed, "gusts", "Gusts of {value} at the nozzle; above {limit} they carry spray off the lawn.", Steadier),
        ["wind.least"] = new(QuantityKind.Speed, "wind under the label", "Wind {value} is under the least the label asks, {limit}.", "Wait until the air moves."),
        ["layers.seen"] = new(QuantityKind.Speed, "smoke or fog hangs", "Smoke, dust or fog hangs in a layer: the air is shut in near the ground and fine drops travel far in it.", "Wait until it has lifted."),
        ["layers.likely"] = new(QuantityKind.Speed, "still air in layers", "Still, clear air with the sun low: wind {value}, and up to {limit} air lies in layers (an inversion) and fine drops travel far.", "Wait for wind above 3 mph, and for the air to be 3 °F above the morning’s low, an hour after sunrise or later."),
        ["wind.light"] = new(QuantityKind.Speed, "light air", "Light air, {value}: it may turn at any moment.", "Watch where the first spray goes, and keep away from beds and people on every side."),
        ["dark"] = new(QuantityKind.Speed, "dark", "The sun is down: nobody sees where the spray goes.", "Wait for daylight."),
        ["rain.now"] = new(QuantityKind.Minutes, "rain", "It rains.", "Wait until it is over and the leaves are dry."),
        ["rain.label"] = new(QuantityKind.Minutes, "rain too soon for the label", "Rain in {value}; the label asks for {limit} without.", Label),
        ["rain.usual"] = new(QuantityKind.Minutes, "rain soon", "Rain in {value}; {limit} without are assumed, since the label’s hours were not entered.", "Enter the label’s rain-free hours, or wait until the rain has passed."),
        ["rain.unknown"] = new(QuantityKind.Minutes, "rain not known", "Whether it will rain in the hours after is not known.", "Look at a forecast that reaches that far."),
        ["leaves.wet"] = new(QuantityKind.Minutes, "wet leaves", "The leaves are wet: spray runs off and is thinned.", "Wait until they are dry, or drag a hose over the dew and let the sun finish. Some soil-acting products may go on wet grass: the label says."),
        ["cold.label"] = new(QuantityKind.Temperature, "under the label’s degrees", "Air {value} is under the label’s {limit}.", Label),
        ["cold.usual"] = new(QuantityKind.Temperature, "cold", "Air {value}; {limit} or more is usual, and the label’s own limit was not entered.", "Wait for a warmer hour, or enter what the label says."),
        ["hot.label"] = new(QuantityKind.Temperature, "over the label’s degrees", "Air {value} is over the label’s {limit}.", Label),
        ["hot.usual"] = new(QuantityKind.Temperature, "hot", "Air {value}; {limit} or less is usual, and the label’s own limit was not entered.", "Wait for a cooler hour, or enter what the label says."),
        ["delta.dry"] = new(QuantityKind.TemperatureDifference, "drops dry up", "Delta-T {value}: above {limit} drops shrink in the air and drift. Not standard practice in the United States; the label decides.", "Wait for a cooler or damper hour."),
        ["delta.drying"] = new(QuantityKind.TemperatureDifference, "drops dry fast", "Delta-T {value}: above {limit} drops begin to shrink. Not standard practice in the United States.", "Use coarse drops and more carrier."),
        ["delta.damp"] = new(QuantityKind.TemperatureDifference, "damp air", "Delta-T {value}: below {limit} fine drops live long. Not standard practice in the United States.", "Use coarse drops."),
    };

    /// <summary>The words of one reason; throws where there is none of this id.</summary>
    public static SprayText Of(string id) => All.TryGetValue(id, out var text) ? text : throw new ArgumentOutOfRangeException(nameof(id), id, "is no reason known here");
}
