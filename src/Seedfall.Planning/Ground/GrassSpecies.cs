namespace Seedfall.Planning.Ground;

/// <summary>The cool-season lawn grasses Seedfall plans for.</summary>
public enum GrassSpecies
{
    KentuckyBluegrass,
    PerennialRyegrass,
    TallFescue,
    CreepingRedFescue,
    ChewingsFescue,
    HardFescue,
    SheepFescue,
}
