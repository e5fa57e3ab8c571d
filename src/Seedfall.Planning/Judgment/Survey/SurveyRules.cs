using Seedfall.Engine.Units;
using Seedfall.Planning.Ground.Door;

namespace Seedfall.Planning.Judgment.Survey;

/// <summary>The door check of a walk-over.</summary>
internal static class SurveyRules
{
    internal const int MostQuadrats = 60;
    internal const int MostPoints = 400;
    internal const int MostLifts = 40;
    internal const int MostGrubs = 300;
    internal const int MostTufts = 100;
    internal const int MostDepths = 40;

    /// <summary>24 in, a soil probe's length.</summary>
    internal const double MostPushMm = 609.6;

    /// <summary>6 in.</summary>
    internal const double MostThatchMm = 152.4;

    /// <summary>1/10 in and 12 in.</summary>
    internal const double LeastCutMm = 2.54, MostCutMm = 304.8;

    internal static void Check(PatchSurvey survey, string path, Findings found)
    {
        found.Date($"{path}.walked", survey.Walked);
        found.Range($"{path}.mown", survey.Mown?.Millimeters, LeastCutMm, MostCutMm, "mm");
        found.Range($"{path}.sun", survey.SunHours, 0.0, 16.0, "h");
        found.Range($"{path}.moistureDepth", survey.MoistureDepth?.Millimeters, 0.0, MostPushMm, "mm");
        found.Once([.. survey.Signs.Select(s => s.ToString())], i => $"{path}.signs[{i}]", "sign");
        if (survey.Notes is { } notes)
        {
            found.Words($"{path}.notes", notes, 2000);
        }

        Quadrats(survey, path, found);
        Tugs(survey, path, found);
        Lifts(survey, path, found);
        Depths(survey.Pushes, $"{path}.pushes", MostPushMm, found);
        Depths(survey.Thatch, $"{path}.thatch", MostThatchMm, found);
        Weeds(survey, path, found);
    }

    private static void Quadrats(PatchSurvey survey, string path, Findings found)
    {
        AtMost($"{path}.quadrats", survey.Quadrats.Count, MostQuadrats, "throws", found);
        for (var i = 0; i < survey.Quadrats.Count; i++)
        {
            Quadrat(survey.Quadrats[i], $"{path}.quadrats[{i}]", found);
        }
    }

    private static void Quadrat(Quadrat quadrat, string path, Findings found)
    {
        found.Share($"{path}.photo", quadrat.Photo);
        if ((quadrat.Photo is null) == (quadrat.Points is null))
        {
            found.Add(path, quadrat.Photo is null ? "neither points nor a photograph" : "both points and a photograph", "either points with their hits, or the cover of a photograph");
            return;
        }

        if (quadrat.Photo is null && quadrat.Living is null)
        {
            found.Add($"{path}.living", "nothing", "how many of the points hit living turf");
        }

        found.Range($"{path}.points", quadrat.Points, 1.0, MostPoints, "points");
        var points = quadrat.Points ?? 0;
        if (quadrat.Living is { } living && !(living >= 0 && living <= points))
        {
            found.Add($"{path}.living", $"{living} of {points} points", $"0 to {points}: no more hits than points");
        }
        else if (quadrat.Weeds is { } weeds && !(weeds >= 0 && weeds + (quadrat.Living ?? 0) <= points))
        {
            found.Add($"{path}.weeds", $"{weeds} weeds beside {quadrat.Living ?? 0} living of {points} points", "together no more hits than points");
        }
    }

    private static void Tugs(PatchSurvey survey, string path, Findings found)
    {
        found.Range($"{path}.tugs.held", survey.Tugs?.Held, 0.0, MostTufts, "tufts");
        found.Range($"{path}.tugs.lifted", survey.Tugs?.Lifted, 0.0, MostTufts, "tufts");
        found.Range($"{path}.tugs.pulledOut", survey.Tugs?.PulledOut, 0.0, MostTufts, "tufts");
    }

    private static void Lifts(PatchSurvey survey, string path, Findings found)
    {
        if (survey.Lifts is not { } lifts)
        {
            return;
        }

        found.Range($"{path}.lifts.ground", lifts.Ground.SquareFeet, 0.01, 20.0, "sq ft");
        AtMost($"{path}.lifts.counts", lifts.Counts.Count, MostLifts, "lifts", found);
        for (var i = 0; i < lifts.Counts.Count; i++)
        {
            found.Range($"{path}.lifts.counts[{i}]", lifts.Counts[i], 0.0, MostGrubs, "grubs");
        }
    }

    private static void Depths(IReadOnlyList<Depth> depths, string path, double mostMm, Findings found)
    {
        AtMost(path, depths.Count, MostDepths, "spots", found);
        for (var i = 0; i < depths.Count; i++)
        {
            found.Range($"{path}[{i}]", depths[i].Millimeters, 0.0, mostMm, "mm");
        }
    }

    private static void Weeds(PatchSurvey survey, string path, Findings found)
    {
        found.Once([.. survey.Weeds.Select(w => w.Kind.ToString())], i => $"{path}.weeds[{i}].kind", "kind of weed");
        for (var i = 0; i < survey.Weeds.Count; i++)
        {
            found.Share($"{path}.weeds[{i}].cover", survey.Weeds[i].Cover);
        }

        var sum = survey.Weeds.Sum(w => w.Cover?.Value ?? 0.0);
        if (sum > 1.0 + 1e-9)
        {
            found.Add($"{path}.weeds", Findings.Text(sum * 100.0, "% in all"), "together no more than 100 % of the ground");
        }
    }

    private static void AtMost(string path, int count, int most, string what, Findings found)
    {
        if (count > most)
        {
            found.Add(path, $"{count} {what}", $"at most {most} {what}");
        }
    }
}
