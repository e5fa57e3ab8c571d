using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>What one product adds where the rinsate goes.</summary>
/// <param name="Name">Product.</param>
/// <param name="Left">Product still in the sprayer when it sucks air.</param>
/// <param name="OnStrip">Its rate over the strip kept back once all three rinses are out; never above the rate of the label.</param>
/// <param name="LeastArea">Where no strip was kept back: the least treated ground the rinsates may go over within the label; null where the label leaves no room.</param>
public sealed record RinsedProduct(string Name, Figure Left, Figure OnStrip, Figure? LeastArea);

/// <summary>Rinsing the sprayer three times and where the rinsate goes.</summary>
/// <param name="LeftOver">Mix the pump cannot draw.</param>
/// <param name="RinseWater">Water for each of the three rinses.</param>
/// <param name="Strip">Ground to leave unsprayed for the rinsate: what the mix left in the sprayer would have covered.</param>
/// <param name="StillIn">Share of the left product that stays in the sprayer after three rinses.</param>
/// <param name="Products">Product by product.</param>
/// <param name="Steps">What to do, in order.</param>
public sealed record RinsePlan(Figure LeftOver, Figure RinseWater, Figure Strip, Figure StillIn, IReadOnlyList<RinsedProduct> Products, IReadOnlyList<string> Steps)
{
    /// <summary>Rinses of a triple rinse.</summary>
    public const int Rinses = 3;

    /// <summary>Water of one rinse as a share of the tank; common practice, no source read.</summary>
    public const double RinseShare = 0.10;

    /// <summary>Mix a hand sprayer's pump leaves behind where it was not measured; common practice, no source read.</summary>
    public static Volume UsualLeftOver => Volume.FromFluidOunces(8.0);

    /// <summary>
    /// The rinse after the last tank. <c>strip = left / carrier</c>; each rinse leaves <c>f = left / (left + rinse)</c> of what was in
    /// the sprayer, so <c>rate on the strip = rate (1 - f^3)</c>, below the label's rate whatever the numbers.
    /// </summary>
    /// <param name="trip">Id of the trip.</param>
    /// <param name="items">Name, rate and label maximum (null where none is entered) of each product.</param>
    /// <param name="carrier">Carrier per area, above 0.</param>
    /// <param name="tank">Size of the tank, above 0.</param>
    /// <param name="area">Ground of the trip.</param>
    /// <param name="left">Mix left behind; null takes the usual.</param>
    public static RinsePlan Of(string trip, IReadOnlyList<(string Name, ProductRate Rate, ProductRate? Most)> items, VolumePerArea carrier, Volume tank, Area area, Volume? left = null)
    {
        ArgumentNullException.ThrowIfNull(items);
        if (!(carrier > VolumePerArea.Zero) || !(tank > Volume.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(carrier), carrier, $"a carrier and a tank above 0 are needed, the tank was {tank}");
        }

        var behindL = Math.Min(Math.Min((left ?? UsualLeftOver).Liters, tank.Liters), carrier.LitersPerSquareMeter * area.SquareMeters);
        var rinseL = RinseShare * tank.Liters;
        var stays = behindL / (behindL + rinseL);
        var stripM2 = behindL / carrier.LitersPerSquareMeter;
        var still = stays * stays * stays;
        var strip = Worked.Computed(
            $"rinse.{trip}.strip", "Strip to keep for the rinsate", QuantityKind.Area, stripM2, "strip = left / carrier", null,
            new WorkingInput("left", "mix left behind", Volume.FromLiters(behindL).Gallons, "gal"), new WorkingInput("carrier", "carrier put out", carrier.GallonsPerThousandSquareFeet, "gal per 1,000 sq ft"));
        return new(
            new Figure($"rinse.{trip}.left", "Mix the pump cannot draw", QuantityKind.Dose, behindL, left is null
                ? new Working("as usual", [], Worked.Practice, Sureness.Assumed, "Measure yours once: pump water until it sucks air, then pour out what is left.")
                : new Working("as entered", [], "measured on this sprayer", Sureness.Measured)),
            Worked.Sourced($"rinse.{trip}.water", "Water for each rinse", QuantityKind.Volume, rinseL, "rinse = tank / 10", Worked.Practice, Sureness.CommonPractice, null, new WorkingInput("tank", "tank", tank.Gallons, "gal")),
            strip,
            Worked.Computed($"rinse.{trip}.still", "Still in the sprayer after three", QuantityKind.Share, still, "(left / (left + rinse))^3", null, new WorkingInput("left", "mix left behind", behindL, "L"), new WorkingInput("rinse", "water of one rinse", rinseL, "L")),
            [.. items.Select((item, i) => Product($"rinse.{trip}.{i + 1}", item, behindL / carrier.LitersPerSquareMeter, still))],
            Work(strip, Volume.FromLiters(rinseL)));
    }

    private static RinsedProduct Product(string id, (string Name, ProductRate Rate, ProductRate? Most) item, double stripM2, double still)
    {
        var left = item.Rate * stripM2;
        var room = (item.Most ?? item.Rate) - item.Rate;
        return new(
            item.Name,
            Worked.Computed($"{id}.left", $"{item.Name} in what is left", item.Rate.Measure.DoseKind(), left.PerSquareMeter, "product = rate x strip"),
            Worked.Computed($"{id}.strip", $"{item.Name} on the strip", item.Rate.Measure.RateKind(), item.Rate.PerSquareMeter * (1.0 - still), "rate x (1 - share still in the sprayer)", "Never above the rate of the lawn.", item.Rate.Input("rate", "rate of the lawn")),
            room > item.Rate * 1.0e-9
                ? Worked.Computed($"{id}.area", $"{item.Name}: treated ground the rinsate needs", QuantityKind.Area, left.PerSquareMeter / room.PerSquareMeter, "area = product left / (label's highest rate - rate)", null, item.Most!.Value.Input("most", "label's highest rate"), item.Rate.Input("rate", "rate of the lawn"))
                : null);
    }

    private static IReadOnlyList<string> Work(Figure strip, Volume rinse) =>
    [
        $"Leave the last strip of the lawn, about {FigureText.Both(strip)}, unsprayed: what the pump cannot draw belongs there.",
        "When the sprayer sucks air, stop. Do not mix more.",
        string.Create(CultureInfo.InvariantCulture, $"Put in {rinse.Gallons:0.##} gal ({rinse.Liters:0.##} L) of clean water, close, shake, and spray all of it over that strip, nozzle and hose included. Three times."),
        "Let the strip take each rinse in before the next: nothing may run off.",
        "Rinse an emptied bottle or jug three times too, and pour that water into the tank while it is being filled, as part of its water. An emptied bag is shaken out into the tank, away from your face.",
        "Take out and brush nozzle and screens over the strip. Nothing goes into a drain, a ditch, a bed or onto paving.",
    ];
}
