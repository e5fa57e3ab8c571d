using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Supply;

/// <summary>One step of a water bill.</summary>
/// <param name="UpTo">Use in the billing period up to which its price holds; null for the last step.</param>
/// <param name="PerThousandGallons">Price within it, sewer charge included where it is billed on the same meter.</param>
public sealed record MeterStep(Volume? UpTo, decimal PerThousandGallons);

/// <summary>A water bill in steps.</summary>
/// <param name="Steps">Steps in order of use; only the last is without an end.</param>
public sealed record MeterPrice(IReadOnlyList<MeterStep> Steps)
{
    private const double Thousand = 1000.0;

    /// <summary>
    /// What a volume costs on top of what the household uses in the same billing period: the bill with it less the bill without.
    /// </summary>
    /// <param name="household">The household's own use in the period.</param>
    /// <param name="lawn">Water for the lawn in the period.</param>
    public Figure CostOf(Volume household, Volume lawn)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(household.Liters, nameof(household));
        ArgumentOutOfRangeException.ThrowIfNegative(lawn.Liters, nameof(lawn));
        Check();
        return new Figure("water.meter.cost", "Cost of the lawn's water", QuantityKind.Money, Bill((household + lawn).Gallons) - Bill(household.Gallons), new Working(
            "C = bill(h + v) - bill(h)",
            [
                new("h", "household use in the period", household.Gallons, "gal"),
                new("v", "water for the lawn", lawn.Gallons, "gal"),
                .. Steps.Select((step, k) => new WorkingInput($"p{k + 1}", step.UpTo is { } end ? FormattableString.Invariant($"price per 1,000 gal up to {end.Gallons:0} gal") : "price per 1,000 gal beyond", (double)step.PerThousandGallons, "")),
            ],
            "price steps entered for this meter",
            Sureness.Computed));
    }

    private double Bill(double gallons)
    {
        var (sum, from) = (0.0, 0.0);
        foreach (var step in Steps)
        {
            var to = Math.Min(gallons, step.UpTo?.Gallons ?? double.PositiveInfinity);
            sum += Math.Max(0.0, to - from) / Thousand * (double)step.PerThousandGallons;
            from = Math.Max(from, to);
        }

        return sum;
    }

    private void Check()
    {
        var ends = Steps.Take(Steps.Count - 1).Select(step => step.UpTo?.Liters ?? double.NaN).ToArray();
        if (Steps.Count == 0 || Steps[^1].UpTo is not null || !ends.Zip(ends.Skip(1).Append(double.PositiveInfinity)).All(pair => pair.First > 0.0 && pair.First < pair.Second) || Steps.Any(step => step.PerThousandGallons < 0m))
        {
            throw new InvalidOperationException("price steps in order of use, the last without an end, none below zero, are needed");
        }
    }
}
