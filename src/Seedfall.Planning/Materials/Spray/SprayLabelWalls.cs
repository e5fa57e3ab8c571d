using System.Globalization;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The entered label put to the planned spraying: what it forbids.</summary>
internal static class SprayLabelWalls
{
    private const string Source = "label, as entered";
    private const double Slack = 1.0 + 1.0e-6;

    /// <summary>Walls that stop the pre-emergent on seed-down day.</summary>
    internal static IEnumerable<Wall> For(Lawn lawn, HerbicideLabel label, IReadOnlyList<GrassSpecies> seeded, TradeTables tables, YearUse use)
    {
        if (Measured(label) is { } measured)
        {
            yield return measured;
        }

        if (label.MaximumRate is { } most && label.Rate > most * Slack)
        {
            yield return new("label.rate", "Highest rate in one application", Text($"{label.ActiveIngredient} at {label.Rate.Words()} is above the label's {most.PerAcre():0.##}."), Text($"Enter a rate of {most.Words()} or less."), Source);
        }

        foreach (var wall in use.Walls("label.yearly-maximum", 1).Concat(Species(lawn, label, seeded, tables)).Concat(Handling(lawn, label)))
        {
            yield return wall;
        }

        if (label.SeedingIntervalDays is > 0)
        {
            yield return new("label.seeding-interval", "Interval before seeding", Text($"The label asks {label.SeedingIntervalDays} days between {label.ActiveIngredient} and seed: it cannot go on at seed-down."), "Leave it out this season, or use a pre-emergent labeled at seeding.", Source);
        }
    }

    /// <summary>The wall that stops only the repeat; null where it fits or none is planned.</summary>
    internal static Wall? Repeat(HerbicideLabel label, YearUse use) =>
        label.RepeatAfterEmergenceDays is null ? null : use.Walls("label.yearly-maximum.repeat", 2).LastOrDefault();

    /// <summary>A dry product by volume, or a liquid by weight: the one is no dose, the other most likely fluid ounces misread.</summary>
    private static Wall? Measured(HerbicideLabel label) => (label.Formulation.IsDry(), label.Rate.Measure) switch
    {
        (true, ProductMeasure.Volume) => new(
            "mix.by-weight",
            "Dry product is weighed",
            $"{label.ActiveIngredient} is entered as a {MixingOrder.Words(label.Formulation)} with its rate as a volume; a volume of dry product is no dose.",
            "Enter the label's rate by weight, in ounces, pounds or grams for an area. If it is a liquid, put its formulation right.",
            Worked.Practice),
        (false, ProductMeasure.Weight) => new(
            "mix.by-volume",
            "Liquid product is measured",
            $"{label.ActiveIngredient} is entered as a liquid ({MixingOrder.Words(label.Formulation)}) with its rate as a weight; an ounce of weight is not a fluid ounce.",
            "Read the label again: enter fluid ounces, pints or milliliters for an area, or put the formulation right if the product is dry.",
            Worked.Practice),
        _ => null,
    };

    private static IEnumerable<Wall> Species(Lawn lawn, HerbicideLabel label, IReadOnlyList<GrassSpecies> seeded, TradeTables tables)
    {
        var standing = lawn.Patches.SelectMany(p => p.Grasses).Distinct();
        foreach (var barred in seeded.Union(standing).Where(label.Barred.Contains).Order())
        {
            yield return new($"label.species.{SpeciesIds.Of(barred)}", "Grasses the label bars", Text($"The label bars {label.ActiveIngredient} on {tables.For(barred).Name}."), "Leave it out, or seed without that grass.", Source);
        }

        foreach (var unlisted in seeded.Where(s => !label.LabeledAtSeeding.Contains(s) && !label.Barred.Contains(s)))
        {
            yield return new($"label.species.{SpeciesIds.Of(unlisted)}", "Grasses the label names at seeding", Text($"{tables.For(unlisted).Name} is in the seed and not among the grasses entered from the label as safe at seeding with {label.ActiveIngredient}."), "Read the label: enter that grass if it is named there, else change the mix or leave the pre-emergent out.", Source);
        }
    }

    private static IEnumerable<Wall> Handling(Lawn lawn, HerbicideLabel label)
    {
        if (label.HoseEndBarred && lawn.Sprayer?.Kind == SprayerKind.HoseEnd)
        {
            yield return new("label.hose-end", "No hose-end sprayers", Text($"The label bars hose-end sprayers for {label.ActiveIngredient}."), "Use a backpack, hand-can or boom sprayer calibrated on this lawn.", Source);
        }

        if (label.MinimumCarrier is { } least && lawn.Sprayer?.Carrier is { } carrier && carrier.LitersPerSquareMeter * Slack < least.LitersPerSquareMeter)
        {
            yield return new("label.carrier", "Least carrier", Text($"The sprayer puts out {carrier.GallonsPerThousandSquareFeet:0.##} gal per 1,000 sq ft; the label asks at least {least.GallonsPerThousandSquareFeet:0.##}."), "Walk slower or fit a larger nozzle, and calibrate again.", Source);
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
