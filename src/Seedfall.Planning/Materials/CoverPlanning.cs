using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>The covering part of the plan.</summary>
public static class CoverPlanning
{
    /// <summary>Living cover below which the bare part of a patch is covered.</summary>
    public const double ThinBelow = 0.75;

    /// <summary>Slope from which all of a patch is covered, percent.</summary>
    public const double SteepPercent = 10.0;

    /// <summary>Covering for thin and sloped patches. Null where nothing needs it or none is wanted.</summary>
    /// <param name="lawn">The lawn; must have passed <see cref="LawnRules.Problems"/>.</param>
    /// <param name="patches">Summaries of all the lawn's patches, in its order.</param>
    public static Section<CoverPlan> Plan(Lawn lawn, IReadOnlyList<PatchSummary> patches)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(patches);
        var material = lawn.Cover ?? new CoverMaterial(CoverKind.Straw);
        var areas = lawn.Patches.Zip(patches, (p, s) => (Summary: s, Steep: (p.SlopePercent ?? GroundDefaults.SlopePercent) > SteepPercent)).Where(x => x.Steep || x.Summary.LivingCover.Value < ThinBelow).ToList();
        if (material.Kind == CoverKind.None || areas.Count == 0)
        {
            return new(null, [], []);
        }

        var rows = areas.Select(a => Row(material, a.Summary, a.Steep)).ToList();
        var total = Total(material.Kind, rows);
        var buy = total.Kind == QuantityKind.Mass ? BagPurchase.For("cover.buy", Mass.FromKilograms(total.Value), material.Bags, lawn.Prices?.CoverPerPound) : null;
        return new(new CoverPlan(material.Kind, Sentence(material, areas.Any(a => a.Steep)), rows, total, buy), [], lawn.Cover is null ? [Assumed] : []);
    }

    private static Assumption Assumed => new("assumed.cover", "Clean straw is taken to cover the thin and steep places.", "Weight to buy and work on seed-down day.", "Choose the covering, or none.");

    private static PatchCover Row(CoverMaterial material, PatchSummary patch, bool steep)
    {
        var areaM2 = steep ? patch.Area.Value : patch.Area.Value * (1.0 - patch.LivingCover.Value);
        var area = Worked.Sourced(
            $"cover.{patch.Id}.area", $"{patch.Name}: area to cover", QuantityKind.Area, areaM2,
            steep ? "A = whole patch" : "A = patch area (1 - c)", Worked.Practice, Sureness.CommonPractice,
            steep ? "Steeper than 10 %: all of it is covered." : "The bare part of a patch with less than three quarters living cover.",
            new WorkingInput("area", "patch area", new Area(patch.Area.Value).SquareFeet, "sq ft"), new WorkingInput("c", "living cover", patch.LivingCover.Value, ""));
        return new(patch.Id, area, Amount(material, patch, Area.FromSquareMeters(areaM2)));
    }

    private static Figure Amount(CoverMaterial material, PatchSummary patch, Area area)
    {
        var (id, label) = ($"cover.{patch.Id}.amount", $"{patch.Name}: {Words(material.Kind)}");
        switch (material.Kind)
        {
            case CoverKind.Peat or CoverKind.Compost:
                var layer = material.Layer ?? CoverRates.UsualLayer(material.Kind);
                return Worked.Sourced(
                    id, label, QuantityKind.BulkVolume, CoverRates.LayerVolume(area, layer).Liters, "V = A d",
                    material.Layer is null ? "usual layer: common practice, no source read" : "layer as entered", material.Layer is null ? Sureness.CommonPractice : Sureness.Measured, null,
                    new WorkingInput("A", "area", area.SquareFeet, "sq ft"), new WorkingInput("d", "layer", layer.Inches, "in"));
            case CoverKind.StrawBlanket:
                return Worked.Computed(id, label, QuantityKind.Area, area.SquareMeters, "area to cover", "Overlap the edges as the blanket's sheet says and buy that much more.", new WorkingInput("A", "area", area.SquareFeet, "sq ft"));
            default:
                var (rate, source, sureness) = CoverRates.ByWeight(material.Kind);
                return Worked.Sourced(
                    id, label, QuantityKind.Mass, rate.KilogramsPerSquareMeter * area.SquareMeters, "weight = rate A", source, sureness, null,
                    new WorkingInput("rate", "weight per area", rate.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft"), new WorkingInput("A", "area", area.ThousandSquareFeet, "1,000 sq ft"));
        }
    }

    private static Figure Total(CoverKind kind, IReadOnlyList<PatchCover> rows) => Worked.Computed(
        "cover.total", $"{Words(kind)} in all", rows[0].Amount.Kind, rows.Sum(r => r.Amount.Value), "sum over the patches");

    private static string Sentence(CoverMaterial material, bool steep) => (material.Kind, steep) switch
    {
        (CoverKind.Straw, _) => "Straw so thin that half the soil still shows" + (steep ? "; on the steep part pin a net over it, or it slides." : "."),
        (CoverKind.Peat or CoverKind.Compost, _) => "A screened layer no deeper than the seed can push through, raked level" + (steep ? "; on the steep part a blanket holds better." : "."),
        (CoverKind.StrawBlanket, _) => "Blanket rolled down the slope, edges lapped and pinned.",
        (CoverKind.PaperPellets, _) => "Pellets spread evenly, then wetted until they open" + (steep ? "; on the steep part a blanket holds better." : "."),
        _ => "An even coat from two directions, so that no soil shows through.",
    };

    internal static string Words(CoverKind kind) => kind switch
    {
        CoverKind.Straw => "straw",
        CoverKind.Peat => "peat",
        CoverKind.Compost => "compost",
        CoverKind.PaperPellets => "paper pellets",
        CoverKind.Hydromulch => "hydromulch",
        CoverKind.StrawBlanket => "straw blanket",
        CoverKind.None => "nothing",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a known covering"),
    };
}
