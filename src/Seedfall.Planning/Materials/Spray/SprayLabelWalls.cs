using System.Globalization;
using Seedfall.Engine.Units;
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
    internal static IEnumerable<Wall> For(Lawn lawn, HerbicideLabel label, IReadOnlyList<GrassSpecies> seeded, TradeTables tables, DateOnly seedDown)
    {
        if (label.MaximumRate is { } most && label.Rate.LitersPerSquareMeter > most.LitersPerSquareMeter * Slack)
        {
            yield return new("label.rate", "Highest rate in one application", Text($"{label.ActiveIngredient} at {label.Rate.FluidOuncesPerAcre:0.##} fl oz per acre is above the label's {most.FluidOuncesPerAcre:0.##}."), Text($"Enter a rate of {most.FluidOuncesPerAcre:0.##} fl oz per acre or less."), Source);
        }

        var applied = YearlyUse.Applied(label, lawn.Sprayed, seedDown.Year);
        if (YearlyUse.Maximum(label) is { } year && !YearlyUse.Fits(year, applied, label.Rate))
        {
            yield return YearFull("label.yearly-maximum", label, year, [applied, label.Rate]);
        }

        foreach (var wall in Species(lawn, label, seeded, tables).Concat(Handling(lawn, label)))
        {
            yield return wall;
        }

        if (label.SeedingIntervalDays is > 0)
        {
            yield return new("label.seeding-interval", "Interval before seeding", Text($"The label asks {label.SeedingIntervalDays} days between {label.ActiveIngredient} and seed: it cannot go on at seed-down."), "Leave it out this season, or use a pre-emergent labeled at seeding.", Source);
        }
    }

    /// <summary>The wall that stops only the repeat; null where it fits or none is planned.</summary>
    internal static Wall? Repeat(Lawn lawn, HerbicideLabel label, DateOnly seedDown)
    {
        var applied = YearlyUse.Applied(label, lawn.Sprayed, seedDown.Year);
        return label.RepeatAfterEmergenceDays is not null && YearlyUse.Maximum(label) is { } year && !YearlyUse.Fits(year, applied, label.Rate, label.Rate)
            ? YearFull("label.yearly-maximum.repeat", label, year, [applied, label.Rate, label.Rate])
            : null;
    }

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

    private static Wall YearFull(string id, HerbicideLabel label, VolumePerArea most, IReadOnlyList<VolumePerArea> applications) => new(
        id,
        "Highest amount in one year",
        Text($"{string.Join(" + ", applications.Where(a => a.LitersPerSquareMeter > 0.0).Select(a => a.FluidOuncesPerAcre.ToString("0.##", CultureInfo.InvariantCulture)))} = {applications.Sum(a => a.FluidOuncesPerAcre):0.##} fl oz per acre of {label.ActiveIngredient} this year is above {most.FluidOuncesPerAcre:0.##}."),
        "Lower the rate, leave an application out, or wait for the new year.",
        label.MaximumPerYear is null ? "HortScience 53(11):1689, maximum annual use rate; check your label" : Source);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
