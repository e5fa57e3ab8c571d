using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>What the label in hand says of the weather. Null means that it was not entered, which is not the same as that it says nothing.</summary>
public sealed record SprayLabel
{
    /// <summary>No label fact was entered.</summary>
    public static SprayLabel NothingEntered { get; } = new();

    /// <summary>The label's highest wind.</summary>
    public Speed? MaximumWind { get; init; }

    /// <summary>The label's least wind.</summary>
    public Speed? MinimumWind { get; init; }

    /// <summary>Hours without rain the label asks for afterward.</summary>
    public double? RainFreeHours { get; init; }

    /// <summary>The label's lowest air temperature.</summary>
    public Temperature? LowestAir { get; init; }

    /// <summary>The label's highest air temperature.</summary>
    public Temperature? HighestAir { get; init; }

    /// <summary>The weather facts of a label; nothing entered where there is none.</summary>
    public static SprayLabel Of(HerbicideLabel? label) => label is null ? NothingEntered : new SprayLabel
    {
        MaximumWind = label.MaximumWind,
        MinimumWind = label.MinimumWind,
        RainFreeHours = label.RainFreeHours,
        LowestAir = label.LowestAir,
        HighestAir = label.HighestAir,
    };
}
