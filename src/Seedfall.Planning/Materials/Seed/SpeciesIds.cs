using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>Grasses as they stand in ids and files.</summary>
public static class SpeciesIds
{
    /// <summary>Kebab-case, for example <c>kentucky-bluegrass</c>.</summary>
    public static string Of(GrassSpecies species) => species switch
    {
        GrassSpecies.KentuckyBluegrass => "kentucky-bluegrass",
        GrassSpecies.PerennialRyegrass => "perennial-ryegrass",
        GrassSpecies.TallFescue => "tall-fescue",
        GrassSpecies.CreepingRedFescue => "creeping-red-fescue",
        GrassSpecies.ChewingsFescue => "chewings-fescue",
        GrassSpecies.HardFescue => "hard-fescue",
        GrassSpecies.SheepFescue => "sheep-fescue",
        _ => throw new ArgumentOutOfRangeException(nameof(species), species, "is not a known grass"),
    };
}
