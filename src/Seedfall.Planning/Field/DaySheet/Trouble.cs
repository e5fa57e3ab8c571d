using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Field;

/// <summary>Rain at noon, an empty bag, rising wind. Common practice, no source read; the label stands above it.</summary>
internal static class Trouble
{
    internal static IReadOnlyList<DayTrouble> Seeding(Figure halfRate) =>
    [
        new("Rain begins", "Light rain: go on, it helps. Stop when the soil smears or water runs; what lies, lies. Go on where you stopped once a boot no longer smears. Do not spray in between."),
        new("The bag runs out", $"Flag where it ran out. This half should have put down {FigureText.Both(halfRate)}; turn the opening down, give the rest of this half from the second one, and never from the thin spots' part. Write down what went on."),
        new("The wind rises", "Above 8 mph light seed drifts: hold the spreader low and walk slower, or wait for the evening's calm. Finish the windward side last."),
    ];

    internal static IReadOnlyList<DayTrouble> Feeding(Figure rate) =>
    [
        new("Rain begins", "A light rain waters it in. Stop before a heavy one: it carries feed off the lawn and into drains."),
        new("The bag runs out", $"Flag the place. It should reach at {FigureText.Both(rate)}: if it ran out early, the opening was too wide. Do not make up by more than the plan's total; give the missing strip its part from a new bag."),
        new("The wind rises", "Lower the throw, keep well off beds, paving and water, or wait."),
    ];

    internal static IReadOnlyList<DayTrouble> Spraying(Speed? labelWind) =>
    [
        new("The wind rises", $"Above 5 mph at the nozzle stop and wait{(labelWind is { } most ? FormattableString.Invariant($"; never above the label's {most.MilesPerHour:0.#} mph") : "; never above the label's wind")}. Keep the tank agitated and out of the sun, and use it today as the label says."),
        new("Rain comes", "Stop and flag where you are. What rain washes off is not sprayed again: it counts against the year's maximum all the same. Write down when the rain began."),
        new("The tank runs out early", "You walked too slowly or a nozzle is worn. Flag the place, note it, and do not mix more than the label's rate for the ground that is left."),
    ];

    internal static IReadOnlyList<DayTrouble> Watering { get; } =
    [
        new("Rain has just done it", "Read the gauge, write it down, and leave the round out."),
        new("Water puddles or runs", "Shut off, let it sink in for half an hour, and give the rest then."),
        new("The wind rises", "Sprinklers miss in wind: water earlier, and look which side stayed dry."),
    ];
}
