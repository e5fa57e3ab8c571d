using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>What each phase needs by rules of thumb, from what the air takes and the soil holds; the same on every patch.</summary>
internal static class RuledNeeds
{
    private const string Phased = "phased watering of new seed, common practice, no source read; UNL and WVU on shallow and frequent first, then deeper";

    /// <summary>Depth of soil soaked before seeding.</summary>
    private static readonly Depth SoakLayer = Depth.FromInches(4.0);

    internal static PhaseNeed Of(Phase phase, Demand demand, NeedScene scene) => phase.Id switch
    {
        "soak" => Soak(phase, scene),
        "seedbed" => Seedbed(phase, demand, scene),
        "seedlings" => Seedlings(phase, demand, scene),
        "weaning" => Weaning(phase, demand, scene),
        _ => Deep(phase, scene),
    };

    private static PhaseNeed Soak(Phase phase, NeedScene scene)
    {
        var evenings = phase.To.DayNumber - phase.From.DayNumber + 1;
        var depth = AvailableWater.In(scene.Texture, SoakLayer) * (0.5 / evenings);
        return PhaseNeed.Even(phase, scene.Beds, depth.Millimeters, 1, 7, new Working(
            "d = 0.5 S / n",
            [new("S", "available water of the top 4 in", AvailableWater.In(scene.Texture, SoakLayer).Inches, "in"), new("n", "evenings", evenings, "")],
            $"{AvailableWater.Source}; ground taken to be half dry",
            Sureness.Assumed));
    }

    private static PhaseNeed Seedbed(Phase phase, Demand demand, NeedScene scene)
    {
        var loss = Depth.FromMillimeters(demand.EtoMm * SeedbedNeed.WetSoilFactor * scene.MulchFactor);
        var need = scene.Chosen.Instead(SeedbedNeed.For(loss, scene.Texture, scene.MostRounds), loss);
        return PhaseNeed.Even(phase, scene.Beds, need.PerRound.Millimeters, need.Rounds, 7, new Working(
            scene.Chosen.Any ? "as chosen; else d = ETo Ke m / n" : "d = ETo Ke m / n, at least 0.05 in",
            [
                new("ETo", "reference evapotranspiration four days in five stay below", Depth.FromMillimeters(demand.EtoMm).Inches, "in/d"),
                new("Ke", "wet seedbed over reference", SeedbedNeed.WetSoilFactor, ""),
                new("m", "covered over bare seedbed", scene.MulchFactor, ""),
                new("n", "rounds a day", need.Rounds, ""),
            ],
            $"FAO-56 for the wet-soil factor (no source read); {MulchFactor.Source}",
            Sureness.CommonPractice,
            "Check with a finger: the top 1/2 to 3/4 in should be moist before each round."));
    }

    private static PhaseNeed Seedlings(Phase phase, Demand demand, NeedScene scene)
    {
        var loss = Depth.FromMillimeters(demand.EtoMm).Inches;
        var rounds = loss > 0.15 ? 2 : 1;
        return PhaseNeed.Even(phase, scene.Beds, Depth.FromInches(Math.Clamp(loss / rounds, 0.10, 0.15)).Millimeters, rounds, 7, new Working(
            "d = ETo / n, within 0.10 to 0.15 in",
            [new("ETo", "reference evapotranspiration four days in five stay below", loss, "in/d"), new("n", "rounds a day", rounds, "")],
            Phased,
            Sureness.CommonPractice));
    }

    private static PhaseNeed Weaning(Phase phase, Demand demand, NeedScene scene)
    {
        const int Days = 3;
        var loss = Depth.FromMillimeters(demand.EtoMm).Inches;
        return PhaseNeed.Even(phase, scene.Beds, Depth.FromInches(Math.Clamp(loss * 7.0 / Days, 0.25, 0.35)).Millimeters, 1, Days, new Working(
            "d = 7 ETo / n, within 0.25 to 0.35 in",
            [new("ETo", "reference evapotranspiration four days in five stay below", loss, "in/d"), new("n", "waterings a week", Days, "")],
            Phased,
            Sureness.CommonPractice));
    }

    private static PhaseNeed Deep(Phase phase, NeedScene scene) => PhaseNeed.Even(phase, scene.Beds, Depth.FromInches(0.5).Millimeters, 1, 2, new Working(
        "d = 1 in / 2",
        [new("n", "waterings a week", 2, "")],
        "1 in a week including rain, common practice, no source read",
        Sureness.CommonPractice,
        "Skip a watering after half an inch of rain."));
}
