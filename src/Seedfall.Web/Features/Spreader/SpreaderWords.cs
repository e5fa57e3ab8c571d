using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Web.Features.Spreader;

/// <summary>Entries and parts of the work in words.</summary>
internal static class SpreaderWords
{
    public static IReadOnlyList<(SpreadMaterial, string, string)> Materials { get; } =
    [
        (SpreadMaterial.FineSeed, "fine-seed", "Light seed: bluegrass, fine fescue"),
        (SpreadMaterial.CoarseSeed, "coarse-seed", "Larger seed: ryegrass, tall fescue"),
        (SpreadMaterial.MixedSeed, "mixed-seed", "A mix of both"),
        (SpreadMaterial.CoatedSeed, "coated-seed", "Coated seed"),
        (SpreadMaterial.Granules, "granules", "Granular fertilizer"),
    ];

    public static string Of(SpreadPart part) => part switch
    {
        SpreadPart.FirstHalf => "First half",
        SpreadPart.MoreOfFirstHalf => "More of the first half",
        SpreadPart.FinishPass => "Finish the pass",
        SpreadPart.PartOfSecondHalf => "Part of the second half",
        _ => "Second half",
    };

    public static string What(KeptSpreader spreader, SpreaderEntry entry, UnitSystem system) => entry switch
    {
        SpreaderEntry.Run { Used.Kilograms: <= 0.0 } run => $"At {spreader.Scale.Show(run.Opening)} nothing fell ({run.What})",
        SpreaderEntry.Run run => $"At {spreader.Scale.Show(run.Opening)}: {Rate(run, system)} of {run.What} on {FigureText.Show(QuantityKind.Area, run.Covered.SquareMeters, system).ToString().Replace("m2", "m²", StringComparison.Ordinal)}",
        SpreaderEntry.FirstFall fall => $"First grains fell at {spreader.Scale.Show(fall.Opening)}",
        SpreaderEntry.Struck struck => $"Struck: {struck.Why}",
        _ => "",
    };

    private static string Rate(SpreaderEntry.Run run, UnitSystem system) =>
        FigureText.Show(QuantityKind.MassPerArea, run.Rate.KilogramsPerSquareMeter, system).ToString().Replace("m2", "m²", StringComparison.Ordinal);
}
