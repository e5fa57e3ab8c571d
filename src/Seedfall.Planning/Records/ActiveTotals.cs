using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>One active ingredient or nutrient over a year against the most that is allowed.</summary>
/// <param name="Name">As written.</param>
/// <param name="Applications">How many applications brought it.</param>
/// <param name="Total">Its mass over all ground.</param>
/// <param name="Heaviest">The most that came together on any one piece of ground.</param>
/// <param name="Most">The most allowed there in one year; null where none is known.</param>
/// <param name="Sentence">How the two stand to each other.</param>
public sealed record ActiveTotal(string Name, int Applications, Figure Total, Figure Heaviest, Figure? Most, string Sentence)
{
    /// <summary>True where more went on than is allowed, by more than a part in a million.</summary>
    public bool IsOver => Most is { } most && Heaviest.Value > most.Value * (1.0 + 1.0e-6);

    /// <summary>True where a record of it is against a rule that knows no yearly amount.</summary>
    public bool BreaksRule { get; init; }
}

/// <summary>A year's record against label and law.</summary>
internal static class ActiveTotals
{
    private const string Record = "record of applications: what is neither struck nor corrected by a later record";

    internal static IReadOnlyList<ActiveTotal> Of(Lawn lawn, FieldLog log, RulePack pack, int year) => [.. YearTotals.Of(log, year).Select(total => Against(lawn, pack, total)).Select(total => Nutrients.IsPhosphate(total.Name) ? Phosphate(lawn, log, pack, year, total) : total)];

    private static ActiveTotal Against(Lawn lawn, RulePack pack, YearTotal total)
    {
        var id = FormattableString.Invariant($"record.{total.Year}.{Slug(total.Name)}");
        var where = total.PatchId is { } patch ? $"On {lawn.Patches.FirstOrDefault(p => p.Id == patch)?.Name ?? patch}, with what the whole lawn got." : "On the whole lawn.";
        var mass = Worked.Sourced($"{id}.total", $"{total.Name}, in all", QuantityKind.Mass, total.Amount.Kilograms, "sum of the applications", Record, Sureness.Measured, null, new WorkingInput("n", "applications", total.Applications, ""));
        var heaviest = Worked.Sourced($"{id}.heaviest", $"{total.Name}, most on one piece of ground", QuantityKind.MassPerArea, total.Heaviest.KilogramsPerSquareMeter, "sum of mass / area of what came together", Record, Sureness.Measured, where);
        var most = Most(lawn, pack, total.Name, id);
        var closed = new ActiveTotal(total.Name, total.Applications, mass, heaviest, most, "");
        return closed with { Sentence = Sentence(closed) };
    }

    /// <summary>Phosphorus rules know no yearly amount: each record is held against them, and the year says how they stand.</summary>
    private static ActiveTotal Phosphate(Lawn lawn, FieldLog log, RulePack pack, int year, ActiveTotal total)
    {
        List<LawFinding> found = [.. YearTotals.Counting(log, year).Select(entry => PhosphorusFindings.Of(lawn, log, pack, entry)).OfType<LawFinding>()];
        return total with { Sentence = PhosphorusFindings.Sentence(pack, found), BreaksRule = found.Any(f => f.Standing is LawStanding.Breaks) };
    }

    private static string Sentence(ActiveTotal total)
    {
        if (total.Most is not { } most)
        {
            return Nutrients.Is(total.Name) ? "No yearly limit stands in the rules chosen." : "No yearly maximum is known here: look at the label.";
        }

        var (left, all) = (RecordText.Rate(Math.Max(0.0, most.Value - total.Heaviest.Value)), RecordText.Rate(most.Value));
        return total.IsOver
            ? $"Over the year\u2019s maximum of {all}: nothing more this year, and ask the state\u2019s pesticide or fertilizer office what to do."
            : FormattableString.Invariant($"{100.0 * (1.0 - total.Heaviest.Value / most.Value):0} % of the year\u2019s maximum is left, {left} of {all}.");
    }

    private static Figure? Most(Lawn lawn, RulePack pack, string name, string id)
    {
        if (Nutrients.IsNitrogen(name))
        {
            return pack.Nitrogen.MaxPerYear is { } pounds
                ? Worked.Sourced($"{id}.most", "Nitrogen, most in one year", QuantityKind.MassPerArea, MassPerArea.FromPoundsPerThousandSquareFeet(pounds).KilogramsPerSquareMeter, "as the rules say", pack.Nitrogen.Source, pack.Nitrogen.Sureness)
                : null;
        }

        return lawn.PreEmergent is { } label && Actives.Is(name, label.ActiveIngredient) && YearlyUse.Maximum(label) is { } most && YearlyUse.Strength(label) is { } strength
            ? Worked.Sourced(
                $"{id}.most", $"{name}, most in one year", QuantityKind.MassPerArea, LabelRate.ActiveIngredient(most, strength).KilogramsPerSquareMeter, "most = product a year x strength",
                label.MaximumPerYear is null ? "HortScience 53(11):1689, maximum annual use rate" : "label, as entered", label.MaximumPerYear is null ? Sureness.Published : Sureness.Measured, label.MaximumPerYear is null ? "Check your label: it binds." : null,
                most.Input("p", "product a year"), new WorkingInput("s", "strength", strength.Active, strength.Measure == ProductMeasure.Volume ? "kg/L" : "of 1, by weight"))
            : null;
    }

    private static string Slug(string name) => string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
}
