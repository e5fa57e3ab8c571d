using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>The year's use of the pre-emergent as figures.</summary>
internal static class YearFigures
{
    internal static IReadOnlyList<Figure> Of(HerbicideLabel label, YearUse use, bool repeatFits)
    {
        var applied = use.Applied.LitersPerSquareMeter;
        var now = label.Rate.LitersPerSquareMeter;
        var repeat = repeatFits && label.RepeatAfterEmergenceDays is not null ? now : 0.0;
        List<Figure> figures =
        [
            new("spray.year.applied", $"{label.ActiveIngredient} already applied this year", QuantityKind.LabelRate, applied, new Working("in the notes + in the record", [new("n", "in the notes", use.Entered.FluidOuncesPerAcre, "fl oz per acre"), new("r", "in the record, where most came together", use.Recorded.Applied.FluidOuncesPerAcre, "fl oz per acre")], "record of applications, as entered", Sureness.Measured)),
            Worked.Computed("spray.year.after", $"{label.ActiveIngredient} this year after this plan", QuantityKind.LabelRate, applied + now + repeat, "applied + this application + repeat", null),
        ];
        if (YearlyUse.Maximum(label) is { } most)
        {
            figures.Add(new("spray.year.maximum", $"{label.ActiveIngredient}: most in one year", QuantityKind.LabelRate, most.LitersPerSquareMeter, label.MaximumPerYear is null
                ? new Working("rate = ai / strength", [new("ai", "highest yearly use", YearlyUse.MesotrioneGramsPerHectare, "g/ha")], "HortScience 53(11):1689", Sureness.Published, "Check your label: it binds.")
                : new Working("as entered", [], "label, as entered", Sureness.Measured)));
        }

        return figures;
    }
}
