using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>Something that goes into the tank of one trip.</summary>
internal sealed record TankItem(string Slug, string Name, FormulationClass Formulation, ProductRate Rate, string Source, Sureness Sureness);

/// <summary>One trip with the sprayer as figures: amounts, tanks, order, jar test.</summary>
internal static class SprayTrips
{
    private const string CalibrationSource = "tank arithmetic: Oklahoma State University and K-State extension on sprayer calibration";

    /// <param name="id">Id of the trip.</param>
    /// <param name="title">Title in trade words.</param>
    /// <param name="items">What goes into the tank, at least one.</param>
    /// <param name="carrier">Carrier per area.</param>
    /// <param name="tank">Tank size; null where the hose brings the water and there is no tank.</param>
    /// <param name="patches">Patches sprayed.</param>
    internal static SprayTrip Of(string id, string title, IReadOnlyList<TankItem> items, VolumePerArea carrier, Volume? tank, IReadOnlyList<PatchSummary> patches)
    {
        var area = Area.FromSquareMeters(patches.Sum(p => p.Area.Value));
        var carrierTotal = LabelRate.ProductFor(carrier, area);
        var loads = tank is { } size ? TankMix.Loads(carrierTotal, size) : [carrierTotal];
        var ordered = items.OrderBy(i => i.Formulation).ToList();
        var doses = ordered.ToDictionary(i => i.Slug, i => TankMix.Split(i.Rate, area, loads));
        return new SprayTrip(
            id,
            title,
            [.. ordered.Select(i => Product(id, i, doses[i.Slug], area, patches))],
            Carrier(id, carrier, carrierTotal, area, loads.Count),
            [.. loads.Select((load, n) => Tank(id, n + 1, load, carrierTotal, ordered, doses))],
            MixingOrder.For(ordered),
            MixingOrder.JarTest(ordered));
    }

    private static SprayProduct Product(string trip, TankItem item, IReadOnlyList<double> doses, Area area, IReadOnlyList<PatchSummary> patches)
    {
        var rate = new Figure($"spray.{trip}.{item.Slug}.rate", $"{item.Name}: rate", item.Rate.Measure.RateKind(), item.Rate.PerSquareMeter, new Working("as entered", [], item.Source, item.Sureness));
        var total = Worked.Computed(
            $"spray.{trip}.{item.Slug}.total", $"{item.Name} in all", item.Rate.Measure.DoseKind(), doses.Sum(), $"total = sum of the tanks, each rate A carrier/total carrier, rounded down once to {Marks(item)}", "Product, not diluted mix: the amount for the record.",
            item.Rate.Input("rate", "label rate"), new WorkingInput("A", "area", area.Acres, "acre"), new WorkingInput("n", "tanks", doses.Count, ""));
        return new(item.Name, item.Formulation, rate, total, [.. patches.Select(p => PerPatch(trip, item, p))]);
    }

    private static Figure PerPatch(string trip, TankItem item, PatchSummary patch) => Worked.Computed(
        $"spray.{trip}.{item.Slug}.{patch.Id}", $"{item.Name} on {patch.Name}", item.Rate.Measure.DoseKind(), item.Rate.PerSquareMeter * patch.Area.Value, "amount = rate A", null,
        item.Rate.Input("rate", "label rate"), new WorkingInput("A", "area", new Area(patch.Area.Value).Acres, "acre"));

    private static Figure Carrier(string trip, VolumePerArea carrier, Volume total, Area area, int tanks) => Worked.Computed(
        $"spray.{trip}.carrier", "water as carrier", QuantityKind.Volume, total.Liters, "carrier = rate A", null,
        new WorkingInput("rate", "carrier put out", carrier.GallonsPerThousandSquareFeet, "gal per 1,000 sq ft"), new WorkingInput("A", "area", area.ThousandSquareFeet, "1,000 sq ft"), new WorkingInput("n", "tanks", tanks, ""));

    private static TankLoad Tank(string trip, int number, Volume load, Volume total, IReadOnlyList<TankItem> items, IReadOnlyDictionary<string, IReadOnlyList<double>> doses)
    {
        var carrier = Worked.Computed($"spray.{trip}.tank-{number}.carrier", $"tank {number}", QuantityKind.Volume, load.Liters, "full tanks first, the rest in the last", null, new WorkingInput("total", "carrier in all", total.Gallons, "gal"));
        return new(number, carrier, [.. items.Select(i => Worked.Sourced(
            $"spray.{trip}.tank-{number}.{i.Slug}", i.Name, i.Rate.Measure.DoseKind(), doses[i.Slug][number - 1], $"dose = product x load / carrier, rounded down to {Marks(i)}", CalibrationSource, Sureness.Computed, null,
            new WorkingInput("load", "carrier in this tank", load.Gallons, "gal"), new WorkingInput("carrier", "carrier in all", total.Gallons, "gal")))]);
    }

    private static string Marks(TankItem item) => item.Rate.Measure == ProductMeasure.Volume ? "the measure's marks" : "what the scale shows (0.1 g below 100 g, 1 g above: common practice)";
}
