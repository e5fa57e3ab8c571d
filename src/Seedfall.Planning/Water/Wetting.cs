using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>Water that wets the seed zone, and how often it must be given back.</summary>
internal static class Wetting
{
    internal static IReadOnlyList<Figure> Figures(WaterScene scene, PhaseFit seedbed)
    {
        var demand = scene.Ground.Phases.First(p => p.Phase.Id == "seedbed").Demand;
        var layer = AvailableWater.In(scene.Ground.Texture, SeedbedNeed.Layer);
        return
        [
            DepthFigure("water.wet-half", "Water that wets the top 1/2 in of dry soil", scene, Depth.FromInches(0.5)),
            DepthFigure("water.wet-three-quarter", "Water that wets the top 3/4 in of dry soil", scene, SeedbedNeed.Layer),
            new Figure("water.demand", "What the air takes on a thirsty day", QuantityKind.Depth, demand.EtoMm, demand.Working),
            new Figure("water.rounds", "Rounds a day to emergence", QuantityKind.Count, seedbed.Need.RoundsPerDay, scene.Ground is { Simulated: true, Chosen.PerRound: null } ? seedbed.Need.DepthWorking : Ruled(scene, demand.EtoMm, layer)),
        ];
    }

    private static Working Ruled(WaterScene scene, double etoMm, Depth layer) => new(
        "n = ETo Ke m / (0.5 S) rounded up, 2 to 4",
        [
            new("ETo", "reference evapotranspiration four days in five stay below", new Depth(etoMm).Inches, "in/d"),
            new("Ke", "wet seedbed over reference", SeedbedNeed.WetSoilFactor, ""),
            new("m", "covered over bare seedbed", scene.Ground.MulchFactor, ""),
            new("S", "available water of the top 3/4 in", layer.Inches, "in"),
        ],
        $"{AvailableWater.Source}; half of it may go between rounds (assumed); two to four a day common practice",
        Sureness.CommonPractice);

    private static Figure DepthFigure(string id, string label, WaterScene scene, Depth layer) => new(id, label, QuantityKind.Depth, AvailableWater.In(scene.Ground.Texture, layer).Millimeters, new Working(
        "S = a z / 12",
        [new("a", "available water of the texture", AvailableWater.InchesPerFoot(scene.Ground.Texture), "in/ft"), new("z", "depth of soil", layer.Inches, "in")],
        AvailableWater.Source,
        Sureness.Published));
}
