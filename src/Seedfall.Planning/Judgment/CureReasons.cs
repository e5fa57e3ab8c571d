using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Judgment;

/// <summary>Reasons to cure the cause before seeding.</summary>
internal static class CureReasons
{
    internal static IEnumerable<Reason> For(Patch patch, TradeTables tables)
    {
        if (patch.Thatch?.Inches > Thresholds.ThatchInches)
        {
            yield return new Reason(
                Id(patch, "thatch"),
                Text($"{patch.Name}: {patch.Thatch.Value.Inches:0.##} in of thatch keeps seed from the soil: strip or dethatch first."),
                Thatch(patch));
        }

        if (Grubby(patch))
        {
            yield return new Reason(
                Id(patch, "grubs"),
                Text($"{patch.Name}: {patch.GrubsPerSquareFoot:0.#} grubs a square foot eat new roots as fast as they grow: treat first, by the label, and count again."),
                Grubs(patch));
        }
        else if (StillThere(patch) is { } sentence)
        {
            yield return new Reason(Id(patch, "cause"), $"{patch.Name}: {sentence}");
        }

        if (patch.SunHours < Thresholds.SunHours)
        {
            yield return new Reason(
                Id(patch, "shade"),
                Text($"{patch.Name}: {patch.SunHours:0.#} hours of sun are too few for any cool-season lawn grass: limb up the trees, or plant something else."),
                Sun(patch, Thresholds.SunHours));
        }
    }

    internal static IEnumerable<Reason> Notes(Patch patch, TradeTables tables)
    {
        if (patch.Thatch?.Inches is > Thresholds.ThatchNearInches and <= Thresholds.ThatchInches)
        {
            yield return new Reason(
                Id(patch, "thatch"),
                Text($"{patch.Name}: {patch.Thatch.Value.Inches:0.##} in of thatch: aerate or dethatch before seeding."),
                Thatch(patch));
        }

        if (patch.GrubsPerSquareFoot > 0.0 && !Grubby(patch))
        {
            yield return new Reason(
                Id(patch, "grubs"),
                Text($"{patch.Name}: {patch.GrubsPerSquareFoot:0.#} grubs a square foot{(patch is { Cause: DamageCause.Grubs, CauseCured: true } ? ", treated since: count again before seeding" : " can be outgrown")}."),
                Grubs(patch));
        }

        if (patch.SunHours is { } sun and >= Thresholds.SunHours && Shaded(patch, tables, sun) is { } shaded)
        {
            yield return shaded;
        }

        if (SunReasons.Note(patch) is { } sunlight)
        {
            yield return sunlight;
        }

        if (patch.Cause == DamageCause.Unknown)
        {
            yield return new Reason(Id(patch, "cause"), $"{patch.Name}: why it thinned is not known; what killed the old grass may kill the new.");
        }
    }

    private static bool Grubby(Patch patch) =>
        patch.GrubsPerSquareFoot > Thresholds.Grubs && patch is not { Cause: DamageCause.Grubs, CauseCured: true };

    /// <summary>What to say of a cause that still works; null where it is cured, measured as harmless, or mends with the season.</summary>
    private static string? StillThere(Patch patch) => patch.CauseCured ? null : patch.Cause switch
    {
        DamageCause.Grubs when patch.GrubsPerSquareFoot is null => "grubs did it and were neither treated nor counted: cut ten cores and count before seeding.",
        DamageCause.OtherInsects => "the insects that did it are not dealt with: treat them first, by the label.",
        DamageCause.Disease => "the disease that did it is still about: let it run out or treat it, mend what fed it, and choose resistant seed.",
        DamageCause.Shade when patch.SunHours is null => "shade did it and nothing was changed: count the hours of sun, and limb up the trees.",
        DamageCause.Wear => "the wear that did it goes on: give feet and wheels another way for eight to ten weeks first.",
        _ => null,
    };

    private static Reason? Shaded(Patch patch, TradeTables tables, double sunHours)
    {
        var unsuited = patch.Grasses.Select(tables.For).Where(facts => facts.LeastSunHours.Value > sunHours).ToArray();
        return unsuited.Length == 0 ? null : new Reason(
            Id(patch, "shade"),
            Text($"{patch.Name}: {sunHours:0.#} hours of sun are too few for {string.Join(" and ", unsuited.Select(facts => facts.Name))}: choose grasses that bear shade."),
            Sun(patch, unsuited.Max(facts => facts.LeastSunHours.Value)));
    }

    private static Figure Thatch(Patch patch) => Against(patch, "thatch-depth", "thatch", QuantityKind.Depth, patch.Thatch!.Value.Millimeters, patch.Thatch.Value.Inches, Thresholds.ThatchInches, "in", Thresholds.ThatchSource, SurveyedPatch.ThatchNote(patch));

    private static Figure Grubs(Patch patch) => Against(patch, "grub-count", "grubs per square foot", QuantityKind.Number, patch.GrubsPerSquareFoot!.Value, patch.GrubsPerSquareFoot.Value, Thresholds.Grubs, "per sq ft", Thresholds.GrubSource, SurveyedPatch.GrubNote(patch));

    private static Figure Sun(Patch patch, double least) => patch.SunWorked is { } worked && worked.Value == patch.SunHours
        ? worked with { Id = Id(patch, "sun-hours"), Working = worked.Working with { Source = $"{worked.Working.Source}; line of {least.ToString("0.#", CultureInfo.InvariantCulture)} h: {Thresholds.SunSource}" } }
        : Against(patch, "sun-hours", "hours of sun", QuantityKind.Number, patch.SunHours!.Value, patch.SunHours.Value, least, "h", Thresholds.SunSource);

    private static Figure Against(Patch patch, string id, string what, QuantityKind kind, double value, double shown, double line, string unit, string source, string? note = null) => new(
        Id(patch, id), $"{patch.Name}: {what}", kind, value, new Working(
            "x against the line L", [new("x", $"{what}, as found", shown, unit), new("L", "line", line, unit)], source, Sureness.Measured, note));

    private static string Id(Patch patch, string what) => $"verdict.{patch.Id}.{what}";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
