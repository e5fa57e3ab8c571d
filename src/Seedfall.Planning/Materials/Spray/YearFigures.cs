using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>The year's use of the pre-emergent as figures.</summary>
internal static class YearFigures
{
    internal static IReadOnlyList<Figure> Of(HerbicideLabel label, YearUse use, bool repeatFits)
    {
        var kind = label.Rate.Measure.RateKind();
        var repeat = repeatFits && label.RepeatAfterEmergenceDays is not null ? label.Rate : label.Rate * 0.0;
        List<Figure> figures =
        [
            new("spray.year.applied", $"{label.ActiveIngredient} already applied this year", kind, use.Applied.PerSquareMeter, new Working("in the notes + in the record", [use.Entered.Input("n", "in the notes"), use.Recorded.Applied.Input("r", "in the record, where most came together")], "record of applications, as entered", Sureness.Measured)),
            Worked.Computed("spray.year.after", $"{label.ActiveIngredient} this year after this plan", kind, (use.Applied + label.Rate + repeat).PerSquareMeter, "applied + this application + repeat", null),
        ];
        if (YearlyUse.Maximum(label) is { } most)
        {
            figures.Add(new("spray.year.maximum", $"{label.ActiveIngredient}: most in one year", kind, most.PerSquareMeter, label.MaximumPerYear is null
                ? new Working("rate = ai / strength", [new("ai", "highest yearly use", YearlyUse.MesotrioneGramsPerHectare, "g/ha")], "HortScience 53(11):1689", Sureness.Published, "Check your label: it binds.")
                : new Working("as entered", [], "label, as entered", Sureness.Measured)));
        }

        return figures;
    }
}
