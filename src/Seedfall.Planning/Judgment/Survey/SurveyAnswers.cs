namespace Seedfall.Planning.Judgment.Survey;

/// <summary>The steps of the walk, in the order one walks.</summary>
public enum WalkStep
{
    Arrive,
    FromAfar,
    Quadrats,
    Tug,
    Lift,
    Push,
    Thatch,
    Moisture,
    UpClose,
    Weeds,
}

/// <summary>How the damage began.</summary>
public enum Onset
{
    /// <summary>Overnight or within days.</summary>
    Days,

    /// <summary>Over some weeks.</summary>
    Weeks,

    /// <summary>Over months or years.</summary>
    Years,

    /// <summary>It was there when the snow went.</summary>
    AfterWinter,
}

/// <summary>Weather of the weeks before it showed.</summary>
public enum WeatherBefore
{
    /// <summary>Hot and dry for weeks.</summary>
    HotDry,

    /// <summary>Hot, humid, warm wet nights.</summary>
    HotHumid,

    /// <summary>Mild days, cool nights, heavy dew.</summary>
    MildDewy,

    /// <summary>Cool and wet.</summary>
    CoolWet,

    /// <summary>Long rain, soaked ground.</summary>
    LongRain,

    /// <summary>Long snow cover, or snow on unfrozen ground.</summary>
    LongSnow,

    /// <summary>Ice, or hard frost without snow.</summary>
    IceOrBareFrost,
}

/// <summary>What was put on the patch before it showed.</summary>
public enum PutOn
{
    Fertilizer,
    WeedKiller,
    Insecticide,
    Fungicide,
    Deicer,
}

/// <summary>Soil moisture by feel.</summary>
public enum SoilFeel
{
    /// <summary>Dust or hard; does not hold together.</summary>
    Dry,

    /// <summary>Holds a ball; the palm stays nearly dry.</summary>
    Moist,

    /// <summary>Water shows when squeezed.</summary>
    Wet,
}

/// <summary>Weeds by kind, as they are dealt with.</summary>
public enum WeedKind
{
    /// <summary>Broad-leaved, such as dandelion or plantain.</summary>
    Broadleaf,

    /// <summary>Clovers and medics, which live on hungry ground.</summary>
    Clover,

    /// <summary>Annual grasses, such as crabgrass.</summary>
    AnnualGrass,

    /// <summary>Annual bluegrass.</summary>
    AnnualBluegrass,

    /// <summary>Perennial grasses out of place, such as quackgrass or bentgrass.</summary>
    PerennialGrass,

    /// <summary>Nutsedge: three-edged stem.</summary>
    Sedge,

    /// <summary>Knotweed and goosegrass, which live on packed ground.</summary>
    PackedGround,

    /// <summary>Ground ivy, violets and others that live in shade.</summary>
    ShadeWeeds,
}

/// <summary>Signs on the checklist. The first block is seen from afar, the second up close.</summary>
public enum Sign
{
    /// <summary>Rings or arcs, dark green or dead, with or without mushrooms.</summary>
    Rings,

    /// <summary>Round patches a foot or more across.</summary>
    RoundPatches,

    /// <summary>Straw spots from a coin to a fist in size.</summary>
    SmallSpots,

    /// <summary>Dead rings with living grass in the middle.</summary>
    FrogEyes,

    /// <summary>Stripes or overlaps as a spreader or sprayer goes.</summary>
    Stripes,

    /// <summary>A dead shape with sharp edges.</summary>
    SharpShape,

    /// <summary>Worst along paving or the road.</summary>
    AlongPaving,

    /// <summary>Worst where feet, wheels or a gate lead.</summary>
    TrafficLines,

    /// <summary>Worst under trees or beside a wall.</summary>
    WorstInShade,

    /// <summary>Worst in full sun or on a bank toward the sun.</summary>
    WorstInSun,

    /// <summary>Worst where the sprinklers do not reach.</summary>
    SprinklerGaps,

    /// <summary>Dull blue-gray; footprints stay.</summary>
    BlueGrayFootprints,

    /// <summary>Water stands, or the ground squelches.</summary>
    StandingWater,

    /// <summary>Birds, skunks or raccoons dig for something.</summary>
    Digging,

    /// <summary>Brown on humps right after mowing.</summary>
    Scalped,

    /// <summary>Pale, thin and slow all over.</summary>
    PaleAllOver,

    /// <summary>Small buff moths zigzag up at dusk.</summary>
    Moths,

    /// <summary>White cottony growth on wet mornings.</summary>
    CottonyMornings,

    /// <summary>Bleached bands across blades, edged red-brown, hourglass-shaped.</summary>
    HourglassLesions,

    /// <summary>Tan blotches on blades with a dark brown edge.</summary>
    BrownEdgedBlotches,

    /// <summary>Dark smoky ring at the edge of a patch at dawn.</summary>
    SmokeRing,

    /// <summary>Gray-brown spots; blade tips twisted like a fishhook.</summary>
    GraySpotsTwistedTips,

    /// <summary>Dark, greasy, matted blades.</summary>
    GreasyBlades,

    /// <summary>Red or pink threads from the blade tips.</summary>
    RedThreads,

    /// <summary>Orange dust that rubs off on shoes.</summary>
    OrangeDust,

    /// <summary>Matted gray or pink patches where snow lay.</summary>
    SnowMats,

    /// <summary>Dark, rotten roots and crowns, no insects.</summary>
    RottenRoots,

    /// <summary>Green pellets, chewed-off blades, silk tunnels.</summary>
    GreenPellets,

    /// <summary>Caterpillars came up after a soapy-water drench.</summary>
    CaterpillarsFlushed,

    /// <summary>Chinch bugs floated up in a can of water.</summary>
    ChinchBugsFloated,

    /// <summary>Stems snap off at the crown with sawdust inside.</summary>
    SawdustStems,

    /// <summary>Dead spot with a dark green rim.</summary>
    DarkRim,

    /// <summary>Moss, or green-black slime.</summary>
    MossOrSlime,

    /// <summary>White crust, or deicer or plowed snow lay here.</summary>
    SaltOrPlowedSnow,
}
