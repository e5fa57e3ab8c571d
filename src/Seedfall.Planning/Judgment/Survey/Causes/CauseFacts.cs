using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>What is worth knowing of a cause once it is suspected.</summary>
/// <param name="Name">As the trade says it, in lower case where it stands inside a sentence.</param>
/// <param name="Entry">The entry of the patch's list of causes it belongs to; null where the list has none.</param>
/// <param name="Confirm">A test one can do today.</param>
/// <param name="Meanwhile">What to do until it is confirmed.</param>
/// <param name="Treatment">What would be sprayed or spread against it, where anything is.</param>
public sealed record CauseFacts(string Name, DamageCause? Entry, string Confirm, string Meanwhile, Treatment Treatment = Treatment.None)
{
    private const string Watch = "Water early in the morning, mow when the blades are dry and the diseased places last, put no nitrogen on, and keep feet off while it is wet.";
    private const string Lab = "or send a fresh plug from the edge to the state's plant clinic";

    private static readonly Dictionary<SuspectedCause, CauseFacts> All = new()
    {
        [SuspectedCause.Drought] = new("drought", DamageCause.Drought, "Soak one marked square yard (square meter) every two days for 10 to 14 days: dormant turf greens, dead turf does not.", "Keep feet and mower off; water deeply once to keep crowns alive, where the town allows it."),
        [SuspectedCause.SprinklerGap] = new("water that does not reach", DamageCause.Drought, "Set out catch cans over green and brown ground and run the set 15 minutes: the brown places hold least.", "Water the dry places by hose until heads are straightened or moved."),
        [SuspectedCause.WaterRepellentSoil] = new("soil that sheds water", DamageCause.Drought, "Let drops fall on a dry core at several depths: where they stand more than 5 seconds the soil sheds water.", "Fork or spike the spots and soak them slowly; a wetting agent by its label may help."),
        [SuspectedCause.Grubs] = new("white grubs", DamageCause.Grubs, "Cut three sides of a square foot (30 x 30 cm), roll it back at the edge of the damage and count; ten lifts over the patch.", "Lay the turf back and water it; seed nothing until they are counted.", Treatment.Insecticide),
        [SuspectedCause.SodWebworms] = new("sod webworms", DamageCause.OtherInsects, "Pour two tablespoons (30 mL) of plain dish soap in two gallons (8 L) of water over a square yard (square meter) at the edge: caterpillars come up within ten minutes.", "Water and feed lightly: turf outgrows a few.", Treatment.Insecticide),
        [SuspectedCause.ChinchBugs] = new("chinch bugs", DamageCause.OtherInsects, "Push a bottomless can 2 in (5 cm) into the edge of the damage, keep it full of water for ten minutes and count what floats up.", "Water: drought-stressed turf suffers most.", Treatment.Insecticide),
        [SuspectedCause.Billbugs] = new("billbugs", DamageCause.OtherInsects, "Tug brown stems: they break at the crown, hollow, with fine sawdust; look for legless white larvae in the first 2 in (5 cm) of soil.", "Water and feed lightly; choose endophyte seed where no stock grazes.", Treatment.Insecticide),
        [SuspectedCause.DollarSpot] = new("dollar spot", DamageCause.Disease, "Look at blades at the edge of a spot at dawn with a lens: a bleached band right across, edged red-brown; white threads in the dew; " + Lab + ".", "Feed lightly if it is hungry, knock the dew off, water early and deep.", Treatment.Fungicide),
        [SuspectedCause.BrownPatch] = new("brown patch", DamageCause.Disease, "Look at dawn after a warm night for a smoky rim, and on blades for tan blotches with a dark brown edge; " + Lab + ".", Watch, Treatment.Fungicide),
        [SuspectedCause.PythiumBlight] = new("Pythium blight", DamageCause.Disease, "Put a plug with a wet paper in a closed bag overnight in the warm: cotton on the blades by morning; " + Lab + ".", Watch + " Let the ground dry.", Treatment.Fungicide),
        [SuspectedCause.GrayLeafSpot] = new("gray leaf spot", DamageCause.Disease, "Look on ryegrass and tall fescue for gray spots with a dark edge and tips twisted like a fishhook; " + Lab + ".", Watch, Treatment.Fungicide),
        [SuspectedCause.RedThreadOrRust] = new("red thread or rust", DamageCause.Disease, "Rub blades on white paper for orange dust; look for red threads from the tips.", "Feed lightly and mow: both live on slow, hungry turf and seldom need more."),
        [SuspectedCause.RootPatchDisease] = new("a root-rotting patch disease", DamageCause.Disease, "Wash roots from the edge of a patch: dark and brittle with no insect; only a plant clinic can name it, so send a plug from the edge.", "Mow high, water a little at midday in heat, loosen packed soil, feed slowly.", Treatment.Fungicide),
        [SuspectedCause.FairyRing] = new("fairy ring", DamageCause.Disease, "Dig at the ring: white threads and a musty smell, soil that sheds water.", "Spike the ring and soak it; feed the rest to hide it. Sprays seldom pay."),
        [SuspectedCause.SnowMold] = new("snow mold", DamageCause.Disease, "Rake a mat and look at the crowns: mostly they live; gray mats with tiny hard beads, or a pink rim, say which one.", "Rake lightly to let air in and wait for growth before counting it dead."),
        [SuspectedCause.Shade] = new("shade", DamageCause.Shade, "Look every two hours on a clear day and count the hours of direct sun.", "Mow high, feed and water less than in the open, limb up trees."),
        [SuspectedCause.Wear] = new("wear", DamageCause.Wear, "Rope it off for three weeks of growing weather and see whether it fills.", "Give feet and wheels another way."),
        [SuspectedCause.Compaction] = new("packed soil", DamageCause.Wear, "A day after a soaking push a 6 in (15 cm) screwdriver in ten places: it should go to the handle.", "Keep off while wet; core-aerate when the soil is moist."),
        [SuspectedCause.WetGround] = new("waterlogged ground", null, "Dig a hole a foot (30 cm) deep, fill it twice, and see whether the second filling is gone in a day.", "Water less; lead roof water elsewhere."),
        [SuspectedCause.Thatch] = new("thatch", DamageCause.Neglect, "Cut ten plugs and measure the brown springy layer between green and soil.", "Water less often and deeper until it is thinned."),
        [SuspectedCause.Scalping] = new("scalping", null, "Mow one strip two notches higher for three weeks and compare.", "Raise the mower; never take more than a third of the blade."),
        [SuspectedCause.BurnOrSpill] = new("a burn or a spill", null, "Ask what was spread, sprayed, spilled or parked and when; match the stripes with the swath.", "Soak the place deeply to wash salts down, unless the label of what was sprayed forbids it."),
        [SuspectedCause.Salt] = new("salt from paving or plow", null, "Have the soil's salinity (ECe) tested from the strip and from good turf.", "Flush with deep slow watering in spring; keep deicer off the edge."),
        [SuspectedCause.DogSpots] = new("dog spots", DamageCause.DogSpots, "Ask about the dog; flush a fresh spot with two gallons (8 L) of water and see whether it stays green.", "Flush fresh spots within hours; rake out the dead."),
        [SuspectedCause.WinterKill] = new("winter kill", DamageCause.WinterKill, "Bring a plug inside, warm and moist, for two weeks: what greens is alive.", "Wait for growing weather before counting it dead."),
        [SuspectedCause.Hunger] = new("hunger", DamageCause.Neglect, "Feed one marked square lightly and look in two weeks; take a soil test.", "Mulch clippings back in."),
        [SuspectedCause.Weeds] = new("weeds", DamageCause.Weeds, "Throw the grid ten times and count weed hits apart.", "Mow before they seed; name each weed before choosing anything against it.", Treatment.Herbicide),
    };

    public static CauseFacts Of(SuspectedCause cause) => All[cause];
}
