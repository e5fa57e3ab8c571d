namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>The signs of the checklist as findings, with the words they are shown in.</summary>
public static class SignFindings
{
    private static readonly (Sign Sign, string Words)[] Checklist =
    [
        (Sign.Rings, "rings or arcs, dark green or dead"),
        (Sign.RoundPatches, "round patches a foot (30 cm) or more across"),
        (Sign.SmallSpots, "straw spots from a coin to a fist in size"),
        (Sign.FrogEyes, "dead rings with living grass in the middle"),
        (Sign.Stripes, "stripes or overlaps as a spreader or sprayer goes"),
        (Sign.SharpShape, "a dead shape with sharp edges"),
        (Sign.AlongPaving, "worst along paving or the road"),
        (Sign.TrafficLines, "worst where feet, wheels or a gate lead"),
        (Sign.WorstInShade, "worst under trees or beside a wall"),
        (Sign.WorstInSun, "worst in full sun or on a bank toward the sun"),
        (Sign.SprinklerGaps, "worst where the sprinklers do not reach"),
        (Sign.BlueGrayFootprints, "dull blue-gray, footprints stay"),
        (Sign.StandingWater, "water stands, or the ground squelches"),
        (Sign.Digging, "birds, skunks or raccoons dig for something"),
        (Sign.Scalped, "brown on humps right after mowing"),
        (Sign.PaleAllOver, "pale, thin and slow all over"),
        (Sign.Moths, "small buff moths zigzag up at dusk"),
        (Sign.CottonyMornings, "white cottony growth on wet mornings"),
        (Sign.HourglassLesions, "bleached bands across the blades, edged red-brown"),
        (Sign.BrownEdgedBlotches, "tan blotches on the blades with a dark brown edge"),
        (Sign.SmokeRing, "dark smoky ring at the edge of a patch at dawn"),
        (Sign.GraySpotsTwistedTips, "gray-brown spots, blade tips twisted like a fishhook"),
        (Sign.GreasyBlades, "dark, greasy, matted blades"),
        (Sign.RedThreads, "red or pink threads from the blade tips"),
        (Sign.OrangeDust, "orange dust that rubs off on shoes"),
        (Sign.SnowMats, "matted gray or pink patches where snow lay"),
        (Sign.RottenRoots, "dark, rotten roots and crowns, no insects"),
        (Sign.GreenPellets, "green pellets, chewed-off blades, silk tunnels"),
        (Sign.CaterpillarsFlushed, "caterpillars came up after a soapy-water drench"),
        (Sign.ChinchBugsFloated, "chinch bugs floated up in a can of water"),
        (Sign.SawdustStems, "stems snap off at the crown with sawdust inside"),
        (Sign.DarkRim, "dead spot with a dark green rim"),
        (Sign.MossOrSlime, "moss, or green-black slime"),
        (Sign.SaltOrPlowedSnow, "white crust, or deicer or plowed snow lay here"),
    ];

    /// <summary>Signs that only a test of their own shows: not ticking them says nothing.</summary>
    private static readonly HashSet<Sign> NeedATest = [Sign.CaterpillarsFlushed, Sign.ChinchBugsFloated, Sign.SmokeRing, Sign.Moths, Sign.CottonyMornings];

    private static readonly Dictionary<Sign, Finding> BySign = Checklist.ToDictionary(c => c.Sign, c => Make(c.Sign, c.Words));

    /// <summary>All signs, those seen from afar first.</summary>
    public static IReadOnlyList<Finding> All { get; } = [.. Checklist.Select(c => BySign[c.Sign])];

    /// <summary>The signs of one step of the walk, with their words.</summary>
    public static IReadOnlyList<(Sign Sign, string Words)> At(WalkStep step) => [.. Checklist.Where(c => StepOf(c.Sign) == step)];

    /// <summary>The step at which a sign is looked for.</summary>
    public static WalkStep StepOf(Sign sign) => sign <= Sign.PaleAllOver ? WalkStep.FromAfar : WalkStep.UpClose;

    internal static Finding Of(Sign sign) => BySign[sign];

    private static Finding Make(Sign sign, string words)
    {
        var afar = StepOf(sign) == WalkStep.FromAfar;
        return new(
            $"sign.{sign}",
            StepOf(sign),
            words,
            $"not seen: {words}",
            (_, s) => s.Signs.Contains(sign) ? true : !NeedATest.Contains(sign) && (afar ? s.LookedFromAfar : s.LookedUpClose) ? false : null);
    }
}
