using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Validation.Watering;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>The seedbeds on which ways of watering are compared: one seeding on sand, loam and clay.</summary>
public static class WateringScenes
{
    /// <summary>Hours of the rounds.</summary>
    public static IReadOnlyList<int> RoundHours { get; } = [7, 11, 15];

    /// <summary>Depth of a fixed round: 0.1 in (common practice, the upper end of 0.05 to 0.10).</summary>
    public static Depth Textbook { get; } = Depth.FromInches(0.1);

    /// <summary>Potential the seed's layer is kept at or above, MPa.</summary>
    public const double UsualWantedMPa = -0.1;

    /// <summary>The three soils.</summary>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="wantedMPa">Potential the seed's layer is to be kept at, MPa.</param>
    public static IReadOnlyList<WateringScene> All(TradeTables tables, double wantedMPa = UsualWantedMPa)
    {
        var choice = ChoiceScenes.All(tables)[0];
        WateringScene On(string name, SoilTexture texture) => new(name, choice.Ground with { Texture = texture }, choice.Sown, RoundHours, Textbook.Millimeters, wantedMPa);
        return [On("sand", SoilTexture.Sand), On("loam", SoilTexture.Loam), On("clay", SoilTexture.Clay)];
    }
}
