using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>What was taken because it was not entered, each with what it changes.</summary>
public static class SprayAssumptions
{
    /// <summary>Of the label and the sprayer.</summary>
    /// <param name="label">What was entered of the label.</param>
    /// <param name="nozzleHeight">Null where the usual height was taken.</param>
    public static IReadOnlyList<Assumption> Of(SprayLabel label, Length? nozzleHeight)
    {
        ArgumentNullException.ThrowIfNull(label);
        return [.. OfLabel(label), .. nozzleHeight is null ? [Nozzle] : Array.Empty<Assumption>(), Profile];
    }

    private static Assumption Nozzle { get; } = new(
        "assumed.spray.nozzle",
        Invariant($"The nozzle is taken to be {SprayLimits.UsualNozzleHeight.Inches:0} in ({SprayLimits.UsualNozzleHeight.Meters * 100.0:0} cm) above the ground."),
        "The higher it is, the more wind it meets.",
        "Measure it while walking; never above what the label allows.");

    private static Assumption Profile { get; } = new(
        "assumed.spray.profile",
        "Wind is brought down to the nozzle as it falls off over open, short grass (FAO-56 eq. 47).",
        "Between houses it may be half of that, or blow in jets; at corners and over fences more.",
        "Read the wind at the nozzle before the first stroke, and again at every change of side.");

    private static IEnumerable<Assumption> OfLabel(SprayLabel label)
    {
        if (label.MaximumWind is null)
        {
            yield return new(
                "assumed.label.wind",
                Invariant($"The label’s highest wind was not entered: {SprayLimits.UsualMost.MilesPerHour:0} mph ({SprayLimits.UsualMost.MetersPerSecond:0.#} m/s) is taken, the most a consortium of universities advises where a label is silent."),
                "Above it every hour is a stop.",
                "Enter the highest wind from the label in hand.");
        }

        if (label.RainFreeHours is null)
        {
            yield return new(
                "assumed.label.rainfree",
                Invariant($"The hours without rain the label asks for were not entered: {SprayLimits.UsualRainFreeHours:0} h are taken (common practice, no source read)."),
                "Hours before rain become a wait instead of a stop.",
                "Enter the label’s hours; 0 where rain may follow at once.");
        }

        if (label.LowestAir is null || label.HighestAir is null)
        {
            var (low, high) = (label.LowestAir ?? SprayLimits.UsualLowest, label.HighestAir ?? SprayLimits.UsualHighest);
            yield return new(
                "assumed.label.air",
                Invariant($"The label’s temperatures were not both entered: {low.Fahrenheit:0} to {high.Fahrenheit:0} °F ({low.Celsius:0} to {high.Celsius:0} °C) is taken (common practice, no source read)."),
                "Outside them an hour is a wait.",
                "Enter what the label says.");
        }
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
