namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>What may have thinned a patch, as finely as a walk-over can tell it apart.</summary>
public enum SuspectedCause
{
    Drought,
    SprinklerGap,
    WaterRepellentSoil,
    Grubs,
    SodWebworms,
    ChinchBugs,
    Billbugs,
    DollarSpot,
    BrownPatch,
    PythiumBlight,
    GrayLeafSpot,
    RedThreadOrRust,
    RootPatchDisease,
    FairyRing,
    SnowMold,
    Shade,
    Wear,
    Compaction,
    WetGround,
    Thatch,
    Scalping,
    BurnOrSpill,
    Salt,
    DogSpots,
    WinterKill,
    Hunger,
    Weeds,
}

/// <summary>What a treatment of a cause would be sprayed or spread with, where one is.</summary>
public enum Treatment
{
    None,
    Fungicide,
    Insecticide,
    Herbicide,
}
