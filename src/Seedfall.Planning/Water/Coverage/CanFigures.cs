using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>Everything a set's catch cans say: rate, how evenly it falls, how sure that is, how many more to set out.</summary>
public static class CanFigures
{
    private const string Cans = "catch cans on this lawn";

    /// <summary>Rate, low quarter, low half, Christiansen's coefficient, scheduling coefficient, then how sure; fewer where the cans cannot say.</summary>
    /// <param name="test">The cans; at least one reading, none negative, at least one above zero, and minutes above zero.</param>
    public static IReadOnlyList<Figure> Of(CatchCanTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        var rate = PrecipitationRateOf.Cans(test);
        var precision = CanPrecision.Of(test.Readings);
        WorkingInput count = new("n", "cans", test.Readings.Count, "");
        List<Figure> figures =
        [
            new("water.cans.rate", "Precipitation rate", QuantityKind.PrecipitationRate, rate.MillimetersPerHour, new Working(
                "PR = mean depth * 60 / minutes", [new("d", "mean depth in the cans", test.Readings.Average(d => d.Inches), "in"), new("t", "minutes run", test.Minutes, "min"), count], Cans, Sureness.Measured)),
        ];
        Add("low-quarter", "Distribution uniformity, low quarter", QuantityKind.Share, WaterUniformity.LowQuarter(test.Readings), "mean of the driest quarter / mean of all", Cans + "; UC Davis CCUH");
        Add("low-half", "Distribution uniformity, low half", QuantityKind.Share, WaterUniformity.LowHalf(test.Readings), "mean of the drier half / mean of all", Cans + "; UC Davis CCUH");
        Add("christiansen", "Coefficient of uniformity", QuantityKind.Share, WaterUniformity.Christiansen(test.Readings), "1 - sum|x - mean| / (n mean)", Cans + "; Christiansen's coefficient, common practice, no source read");
        Add("scheduling", "Scheduling coefficient, driest can", QuantityKind.Number, WaterUniformity.SchedulingCoefficient(test.Readings), "mean / least", Cans + "; common practice, no source read");
        return [.. figures, .. precision.HalfWidth is { } width ? [width] : Array.Empty<Figure>(), .. precision.More is { } more ? [more] : Array.Empty<Figure>()];

        void Add(string id, string label, QuantityKind kind, double? value, string formula, string source)
        {
            // One can has no spread; its uniformity would be 1 by arithmetic alone.
            if (value is { } v && test.Readings.Count > 1)
            {
                figures.Add(new($"water.cans.{id}", label, kind, v, new Working(formula, [count], source, Sureness.Measured)));
            }
        }
    }
}
