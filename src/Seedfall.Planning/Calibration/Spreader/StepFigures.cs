using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>The figures of a step.</summary>
internal static class StepFigures
{
    internal const string FitSource = "Seedfall's own fit of flow against opening; its prior numbers are assumptions";

    internal static string Percent(double share) => (share * 100.0).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    internal static Figure Total(SpreadJob job, JobProgress progress) => Worked.Computed(
        "spread.total", "Put on so far", QuantityKind.Mass, progress.Used.Kilograms, "sum over the runs of put in - left", null,
        [.. progress.Runs.Select((r, i) => new WorkingInput(FormattableString.Invariant($"u{i + 1}"), FormattableString.Invariant($"run {i + 1}"), r.Used.Pounds, "lb")), new WorkingInput("W", "wanted in all", job.Whole.Pounds, "lb")]);

    internal static IReadOnlyList<Figure> SoFar(KeptSpreader spreader, SpreadJob job, JobProgress progress)
    {
        if (progress.Runs.Count == 0)
        {
            return [];
        }

        var last = progress.Runs[^1];
        var finely = (last.WeighedTo ?? FlowPriors.UsualWeighing).Kilograms / last.Covered.SquareMeters;
        var range = Range(Math.Max(0.0, last.Rate.KilogramsPerSquareMeter - 1.64 * finely), last.Rate.KilogramsPerSquareMeter + 1.64 * finely);
        return
        [
            Total(job, progress),
            Worked.Sourced(
                "spread.last", "Rate of the last run", QuantityKind.MassPerArea, last.Rate.KilogramsPerSquareMeter, "r = u / A", Worked.Arithmetic, Sureness.Measured,
                $"{range}, by how finely it was weighed.",
                new WorkingInput("o", $"opening {spreader.Scale.Show(last.Opening)}", last.Opening, ""),
                new WorkingInput("u", "put in less what was left", last.Used.Pounds, "lb"),
                new WorkingInput("A", "ground covered", last.Covered.ThousandSquareFeet, "1,000 sq ft")),
        ];
    }

    internal static IEnumerable<Figure> Ahead(KeptSpreader spreader, SpreadJob job, MassPerArea aim, Mass putIn, OpeningChoice.Found found, JobProgress progress)
    {
        yield return Worked.Computed(
            "spread.put-in", "Put in", QuantityKind.Mass, putIn.Kilograms, "m = r A", null,
            new WorkingInput("r", "rate aimed at with this run", aim.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"),
            new WorkingInput("A", "ground to cover", progress.Open.ThousandSquareFeet - progress.PassCovered.ThousandSquareFeet, "1,000 sq ft"));
        if (found.Forecast.Vague)
        {
            yield break;
        }

        var (low, median, high) = (found.Forecast.Low, found.Forecast.Median, found.Forecast.High);
        yield return Worked.Sourced(
            "spread.expected", $"Rate to expect at {spreader.Scale.Show(found.Opening)}", QuantityKind.MassPerArea, median.KilogramsPerSquareMeter,
            "ln(flow) = a + b ln((p - d)/(1 - d)) + m + l", FitSource, Sureness.Computed,
            $"{Range(low.KilogramsPerSquareMeter, high.KilogramsPerSquareMeter)}, nine times of ten.",
            new WorkingInput("p", "place of the opening on the scale", spreader.Scale.Place(found.Opening), ""),
            new WorkingInput("n", "runs this spreader has been weighed in", spreader.Runs.Count, ""),
            new WorkingInput("w", "distance between passes", Length.FromMeters(spreader.SwathM(job.Ahead.Swath)).Feet, "ft"),
            new WorkingInput("v", "walking speed", Speed.FromMetersPerSecond(spreader.WalkMs(job.Ahead.Walk)).MilesPerHour, "mph"));
    }

    /// <summary>By how much finishing the pass goes beyond the planned amount; null where it does not by 0.5 % of it.</summary>
    internal static Figure? More(SpreadJob job, JobProgress progress, Mass putIn)
    {
        var moreKg = progress.Used.Kilograms + putIn.Kilograms - job.Whole.Kilograms;
        return moreKg < 0.005 * job.Whole.Kilograms ? null : Worked.Computed(
            "spread.more", "More than planned once the pass is finished", QuantityKind.Mass, moreKg, "x = U + m - W", null,
            new WorkingInput("U", "put on so far", progress.Used.Pounds, "lb"),
            new WorkingInput("m", "put in to finish", putIn.Pounds, "lb"),
            new WorkingInput("W", "planned in all", job.Whole.Pounds, "lb"));
    }

    private static string Range(double lowKg, double highKg)
    {
        var (low, high) = (MassPerArea.FromKilogramsPerSquareMeter(lowKg), MassPerArea.FromKilogramsPerSquareMeter(highKg));
        return FormattableString.Invariant($"Between {low.PoundsPerThousandSquareFeet:0.##} and {high.PoundsPerThousandSquareFeet:0.##} lb per 1,000 sq ft ({lowKg * 100.0:0.##} to {highKg * 100.0:0.##} kg per 100 m2)");
    }
}
