using System.Globalization;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Timing;

/// <summary>What the field log taught, gathered with its figures.</summary>
internal static class LearnedFigures
{
    private const string Soil = "docs/science/simulator.md, corrections from the field: fading bias by Kalman filter (Kalman 1960), far-off readings held back (Huber 1964)";
    private const string Pace = "docs/science/simulator.md, corrections from the field: hydrothermal time and emergence lag times a factor, log-normal before with a spread of 0.3 (assumed)";
    private const string Cover = "docs/science/simulator.md, corrections from the field: members weighed by how well they agree";

    /// <summary>Everything taught; empty where the log holds nothing that could.</summary>
    internal static SeasonLearning Of(SeasonScene scene, PaceLearned pace, IReadOnlyList<CoverLearned> covers)
    {
        var corrected = scene.Season.Corrected;
        IReadOnlyList<ReadingLearned> readings = corrected is null ? [] :
            [.. corrected.Bias.Updates.Select(u => new ReadingLearned(u.Date, u.ReadC, u.ModelC, u.ModelC + u.BeforeC, u.Used))];
        return new SeasonLearning(
            readings,
            pace.Greens,
            covers,
            [.. SoilFigures(scene, corrected, readings), .. PaceFigures(pace), .. CoverFigures(covers)],
            [.. corrected?.Problems ?? [], .. pace.LeftOut]);
    }

    private static IEnumerable<Figure> SoilFigures(SeasonScene scene, CorrectedSoil? corrected, IReadOnlyList<ReadingLearned> readings)
    {
        if (corrected is null || readings.All(r => !r.Used))
        {
            yield break;
        }

        var last = readings[^1].Date;
        yield return new Figure("learned.soil.bias", "Your soil, against the computed", QuantityKind.TemperatureDifference, corrected.Bias.AtC(last), new Working(
            "b = e^(-d / 20) b, then b + K (read - computed - b) at each reading; K from the spreads of place, thermometer and reading",
            [
                new("n", "readings", readings.Count, ""),
                new("s", "what may be left of the place's own offset, standard deviation", corrected.Bias.DeviationC(last), "degC"),
            ],
            Soil,
            Sureness.Measured,
            string.Create(CultureInfo.InvariantCulture, $"As of {FigureText.DateText(last)}; it fades by two thirds in 20 days, because a place's offset changes with the season. Watering, shade and cover of the spot are allowed for where known.")));
        foreach (var figure in Skill("learned.soil", "readings", QuantityKind.TemperatureDifference, [.. readings.Where(r => r.Used).Select(r => (r.ReadC - r.ComputedC, r.ReadC - r.ExpectedC))], Soil))
        {
            yield return figure;
        }
    }

    private static IEnumerable<Figure> PaceFigures(PaceLearned learned)
    {
        if (learned.Pace is { } pace)
        {
            yield return new Figure("learned.pace", "Time this seed takes, over the usual", QuantityKind.Number, Math.Round(pace.Multiplier, 2), new Working(
                "theta = m theta_HT, lag = m lag; m from the day of the first green, noticed to 1.5 days",
                [new("n", "first greens seen", learned.Greens.Count, ""), new("s", "spread of ln m that is left", pace.LogDeviation, "")],
                Pace,
                Sureness.Assumed,
                "Emergence of the slower grasses and the cover forecast follow it."));
        }
    }

    private static IEnumerable<Figure> CoverFigures(IReadOnlyList<CoverLearned> covers) =>
        Skill("learned.cover", "covers seen", QuantityKind.Share, [.. covers.Select(c => (c.Seen - c.Computed, c.Seen - c.Expected))], Cover);

    /// <summary>Mean error before and after learning, over all but the first thing seen, of which nothing had been learned yet.</summary>
    private static IEnumerable<Figure> Skill(string id, string what, QuantityKind kind, IReadOnlyList<(double Computed, double Expected)> errors, string source)
    {
        if (errors.Count < 2)
        {
            yield break;
        }

        var later = errors.Skip(1).ToList();
        WorkingInput[] inputs = [new("n", $"{what} after the first", later.Count, "")];
        yield return new Figure($"{id}.before", "Off without learning, on average", kind, later.Average(e => Math.Abs(e.Computed)), new Working("mean |seen - computed|", inputs, source, Sureness.Measured));
        yield return new Figure($"{id}.after", "Off with what was seen before, on average", kind, later.Average(e => Math.Abs(e.Expected)), new Working("mean |seen - expected from the earlier ones|", inputs, source, Sureness.Measured));
    }
}
