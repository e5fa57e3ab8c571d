using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Ground.Door;

/// <summary>The steps of a water bill.</summary>
internal static class MeterRules
{
    private const double MostStepLiters = 10_000_000.0;

    internal static void Check(MeterPrice? meter, Findings found)
    {
        if (meter is null)
        {
            return;
        }

        if (meter.Steps.Count == 0)
        {
            found.Add("water.meter", "no step", "at least one step with its price");
            return;
        }

        var before = 0.0;
        for (var i = 0; i < meter.Steps.Count; i++)
        {
            var (step, path) = (meter.Steps[i], $"water.meter[{i}]");
            End(step, i == meter.Steps.Count - 1, before, $"{path}.upTo", found);
            before = step.UpTo?.Liters ?? before;
            if (step.PerThousandGallons < 0m)
            {
                found.Add($"{path}.perThousandGallons", Findings.Text((double)step.PerThousandGallons, ""), "0 or more");
            }
        }
    }

    private static void End(MeterStep step, bool last, double beforeLiters, string path, Findings found)
    {
        if (step.UpTo is not { } end)
        {
            if (!last)
            {
                found.Add(path, "no end", "the use up to which the price holds; only the last step has no end");
            }
        }
        else if (last)
        {
            found.Add(path, Findings.Text(end.Gallons, "gal"), "no end in the last step: its price holds for all use beyond");
        }
        else if (!(end.Liters > beforeLiters && end.Liters <= MostStepLiters))
        {
            found.Add(path, Findings.Text(end.Gallons, "gal"), $"more than {Findings.Text(beforeLiters / 3.785411784, "gal")}: steps in the order of use");
        }
    }
}
