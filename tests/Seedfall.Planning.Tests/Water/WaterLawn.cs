using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Water;

/// <summary>Invented water on the invented lawn.</summary>
internal static class WaterLawn
{
    internal static readonly SeasonTiming Timing = Invented.Time(Invented.Weather).Value!;

    internal static readonly TimeOnly Midnight = new(0, 0);

    internal static SprinklerSet HoseSet(int positions = 4, string name = "hose sprinkler", params string[] patches) => new()
    {
        Name = name,
        PatchIds = patches.Length == 0 ? ["front"] : patches,
        Kind = SprinklerKind.Oscillating,
        Rate = PrecipitationRate.FromInchesPerHour(0.5),
        Positions = positions,
    };

    internal static WaterSupply Supply(double gpm = 8.0, params SprinklerSet[] sets) => new()
    {
        Flow = FlowRate.FromGallonsPerMinute(gpm),
        Sets = sets.Length == 0 ? [HoseSet()] : sets,
        Timer = true,
    };

    internal static Lawn Lawn(WaterSupply? supply, double squareFeet = 5000.0, SoilTexture? texture = SoilTexture.Loam) => Invented.Lawn(null, Invented.Patch(squareFeet)) with
    {
        Water = supply,
        Soil = texture is null ? null : new SoilFacts { Texture = texture },
        Prices = new PriceList { WaterPerThousandGallons = 5m },
    };

    internal static Section<WaterProof> Prove(Lawn lawn, WeatherHistory? weather = null, SeasonTiming? timing = null) =>
        WaterPlanning.Prove(lawn, Invented.Summaries(lawn), timing ?? Timing, weather ?? Invented.Weather, Invented.Tables);

    internal static WateringWindow Window(WeekDays days, int fromHour, int toHour) => new(days, new TimeOnly(fromHour, 0), new TimeOnly(toHour, 0));
}
