using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment.Survey;

/// <summary>The figures of a walk-over, each with its range in the working.</summary>
public static class SurveyFigures
{
    /// <summary>Living cover, weeds, grubs, screwdriver and thatch, as far as they were measured.</summary>
    public static IReadOnlyList<Figure> Of(Patch patch)
    {
        ArgumentNullException.ThrowIfNull(patch);
        if (patch.Survey is not { } survey)
        {
            return [];
        }

        List<Figure> figures = [];
        if (CoverEstimate.Living(survey.Quadrats) is { } living)
        {
            figures.Add(new(Id(patch, "cover"), "Living cover", QuantityKind.Share, living.Share, living.Working("living cover")));
        }

        if (CoverEstimate.Weeds(survey.Quadrats) is { } weeds)
        {
            figures.Add(new(Id(patch, "weeds"), "Weeds", QuantityKind.Share, weeds.Share, weeds.Working("weeds")));
        }

        if (GrubEstimate.Of(survey.Lifts) is { } grubs)
        {
            figures.Add(new(Id(patch, "grubs"), "Grubs per sq ft", QuantityKind.Number, grubs.PerSquareFoot, grubs.Working));
        }

        figures.AddRange(Depths(patch, "push", "Screwdriver goes in", survey.Pushes, "a 6 in (15 cm) screwdriver goes in to the handle when the soil is moist: common practice"));
        figures.AddRange(Depths(patch, "thatch", "Thatch", survey.Thatch, Thresholds.ThatchSource));
        return figures;
    }

    private static IEnumerable<Figure> Depths(Patch patch, string id, string label, IReadOnlyList<Depth> depths, string source)
    {
        if (SurveyedPatch.MeanDepth(depths) is { } mean)
        {
            yield return new(Id(patch, id), label, QuantityKind.Depth, mean.Millimeters, new Working(
                "mean over the spots",
                [new("n", "spots", depths.Count, ""), new("least", "least", depths.Min().Millimeters, "mm"), new("most", "most", depths.Max().Millimeters, "mm")],
                $"measured on the walk-over; {source}",
                Sureness.Measured));
        }
    }

    private static string Id(Patch patch, string what) => $"survey.{patch.Id}.{what}";
}
