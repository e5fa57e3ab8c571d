using Seedfall.Planning.Materials;
using static Seedfall.Planning.Judgment.Survey.Causes.SuspectedCause;
using static Seedfall.Planning.Judgment.Survey.Causes.WalkFindings;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>The weights of evidence, cause by cause: one row for each finding that says something. Causes are weighed apart, so several may hold at once.</summary>
public static class EvidenceTable
{
    private const string Practice = Worked.Practice;
    private const string Crowns = "University of Wisconsin: living crowns hold, firm and white; dead plants come up easily";
    private const string GrubLine = Thresholds.GrubSource;
    private const string Dollar = "Smith et al. 2018, PLoS ONE 13:e0194216: mild temperature with high humidity; signs common practice";
    private const string Brown = "Fidanza, Dernoeden and Grybauskas 1996, Phytopathology 86:385-390: humid, nights about 21 degC; signs common practice";
    private const string Pythium = "Nutter, Cole and Schein 1983, Plant Disease 67:1126: days above 30 degC, then long wet nights above 20 degC; signs common practice";
    private const string GrayLeaf = "Uddin, Serlemitsos and Viji 2003, Phytopathology 93:336: 28 degC and wet leaves, ryegrass and tall fescue; signs common practice";
    private const string Driver = "Cornell: roots slow above 200 psi; a 6 in screwdriver goes in when moist, common practice";

    /// <summary>Every row.</summary>
    public static IReadOnlyList<Evidence> All { get; } =
    [
        .. Of(Drought, Practice,
            (HotDry, 1.5, -0.5), (At(Sign.BlueGrayFootprints), 1.5, -0.3), (SoilDry, 1.0, 0.0), (SoilMoist, -0.7, 0.0), (SoilWet, -1.5, 0.0),
            (At(Sign.WorstInSun), 0.7, 0.0), (At(Sign.AlongPaving), 0.3, 0.0), (BeganOverWeeks, 0.3, 0.0), (LongRain, -1.0, 0.0), (PushShallowDry, 0.3, 0.0)),
        .. Of(Drought, Crowns, (TugHeld, 1.0, 0.0), (TugLifted, -1.0, 0.0)),
        .. Of(SprinklerGap, Practice, (At(Sign.SprinklerGaps), 2.0, -0.7), (SoilDry, 0.7, 0.0), (SoilWet, -1.0, 0.0), (HotDry, 0.5, 0.0), (At(Sign.BlueGrayFootprints), 0.5, 0.0)),
        .. Of(WaterRepellentSoil, Practice, (DropStood, 2.5, -2.0), (SoilDry, 0.5, 0.0), (SoilWet, -1.0, 0.0), (ThatchThick, 0.3, 0.0), (At(Sign.WorstInSun), 0.3, 0.0)),

        .. Of(Grubs, GrubLine, (GrubsAbove, 3.0, 0.0), (GrubsSome, 0.7, 0.0), (GrubsBelow, -3.0, 0.0)),
        .. Of(Grubs, Practice, (TugLifted, 2.0, -0.7), (At(Sign.Digging), 1.0, -0.3), (BeganOverWeeks, 0.3, 0.0), (InsecticideOn, -0.5, 0.0)),
        .. Of(SodWebworms, Practice,
            (At(Sign.CaterpillarsFlushed), 2.5, 0.0), (At(Sign.GreenPellets), 2.0, -0.5), (At(Sign.Moths), 1.0, 0.0), (At(Sign.Digging), 0.5, 0.0),
            (At(Sign.WorstInSun), 0.3, 0.0), (HotDry, 0.3, 0.0), (TugLifted, -0.5, 0.0)),
        .. Of(ChinchBugs, Practice,
            (At(Sign.ChinchBugsFloated), 3.0, 0.0), (At(Sign.WorstInSun), 0.7, -0.3), (HotDry, 0.7, 0.0), (At(Sign.AlongPaving), 0.3, 0.0), (ThatchThick, 0.3, 0.0),
            (TugLifted, -1.0, 0.0), (SoilWet, -0.7, 0.0)),
        .. Of(Billbugs, Practice, (At(Sign.SawdustStems), 2.5, -0.5), (TugPulledOut, 0.7, 0.0), (HotDry, 0.3, 0.0), (At(Sign.AlongPaving), 0.3, 0.0), (TugLifted, -0.5, 0.0)),

        .. Of(DollarSpot, Dollar,
            (At(Sign.HourglassLesions), 2.0, -0.7), (At(Sign.SmallSpots), 1.2, -0.5), (At(Sign.CottonyMornings), 0.7, 0.0), (MildDewy, 1.0, -0.3),
            (At(Sign.PaleAllOver), 0.5, 0.0), (TugLifted, -1.0, 0.0), (At(Sign.DarkRim), -0.7, 0.0)),
        .. Of(BrownPatch, Brown,
            (At(Sign.BrownEdgedBlotches), 2.0, -0.5), (At(Sign.SmokeRing), 1.5, 0.0), (At(Sign.RoundPatches), 1.0, -0.4), (HotHumid, 1.5, -0.5), (FertilizerOn, 0.3, 0.0),
            (BeganInDays, 0.5, 0.0), (CoolWet, -1.0, 0.0), (HotDry, -0.7, 0.0), (TugLifted, -1.0, 0.0)),
        .. Of(PythiumBlight, Pythium,
            (At(Sign.GreasyBlades), 2.0, -0.5), (At(Sign.CottonyMornings), 1.0, 0.0), (HotHumid, 1.5, -0.7), (At(Sign.StandingWater), 0.7, 0.0), (SoilWet, 0.5, 0.0),
            (BeganInDays, 1.0, -0.5), (FertilizerOn, 0.3, 0.0), (SoilDry, -1.0, 0.0), (CoolWet, -0.7, 0.0), (HotDry, -1.0, 0.0)),
        .. Of(GrayLeafSpot, GrayLeaf, (At(Sign.GraySpotsTwistedTips), 2.5, -0.7), (HotHumid, 1.0, -0.3), (BeganInDays, 0.5, 0.0), (FertilizerOn, 0.3, 0.0), (TugLifted, -1.0, 0.0)),
        .. Of(RedThreadOrRust, Practice, (At(Sign.RedThreads), 2.5, 0.0), (At(Sign.OrangeDust), 2.5, 0.0), (At(Sign.PaleAllOver), 0.5, 0.0), (CoolWet, 0.3, 0.0), (TugLifted, -1.0, 0.0)),
        .. Of(RootPatchDisease, Practice,
            (At(Sign.RottenRoots), 1.5, -0.3), (At(Sign.FrogEyes), 1.5, -0.3), (At(Sign.RoundPatches), 0.5, 0.0), (TugPulledOut, 0.7, 0.0), (ThatchThick, 0.3, 0.0),
            (PushShallowMoist, 0.3, 0.0), (LongRain, 0.3, 0.0), (BeganOverYears, 0.3, 0.0)),
        .. Of(FairyRing, Practice, (At(Sign.Rings), 2.5, -1.0), (DropStood, 0.5, 0.0), (BeganOverYears, 0.3, 0.0), (BeganInDays, -0.5, 0.0)),
        .. Of(SnowMold, Practice,
            (At(Sign.SnowMats), 2.0, -0.5), (BeganInWinter, 1.5, -1.0), (LongSnow, 1.5, -0.5), (At(Sign.RoundPatches), 0.3, 0.0), (CoolWet, 0.3, 0.0), (HotDry, -1.0, 0.0)),

        .. Of(Shade, Thresholds.SunSource, (SunFew, 2.5, 0.0), (SunSome, 1.0, 0.0), (SunPlenty, -2.0, 0.0)),
        .. Of(Shade, Practice,
            (At(Sign.WorstInShade), 1.5, -0.5), (ShadeWeeds, 0.7, 0.0), (At(Sign.MossOrSlime), 0.7, -0.2), (BeganOverYears, 0.7, 0.0), (BeganInDays, -1.0, 0.0),
            (At(Sign.WorstInSun), -1.5, 0.0)),
        .. Of(Wear, Practice, (At(Sign.TrafficLines), 2.0, -0.7), (PackedWeeds, 0.7, 0.0), (PushShallowMoist, 0.5, 0.0), (BeganInDays, -0.5, 0.0)),
        .. Of(Compaction, Driver, (PushShallowMoist, 2.0, 0.0), (PushDeep, -2.0, 0.0), (PushShallowDry, 0.3, 0.0)),
        .. Of(Compaction, Practice,
            (PackedWeeds, 1.0, -0.2), (At(Sign.StandingWater), 0.7, 0.0), (At(Sign.TrafficLines), 0.7, 0.0), (AnnualBluegrassSeen, 0.3, 0.0), (BeganOverYears, 0.3, 0.0),
            (BeganInDays, -0.5, 0.0)),
        .. Of(WetGround, Practice,
            (At(Sign.StandingWater), 2.0, -0.5), (SoilWet, 1.0, 0.0), (SoilDry, -1.5, 0.0), (LongRain, 0.7, 0.0), (At(Sign.MossOrSlime), 0.7, 0.0), (SedgeSeen, 0.7, 0.0)),
        .. Of(Thatch, Thresholds.ThatchSource, (ThatchThick, 2.0, 0.0), (ThatchMiddling, 0.7, 0.0), (ThatchThin, -2.0, 0.0)),
        .. Of(Thatch, Practice, (DropStood, 0.3, 0.0), (At(Sign.Scalped), 0.3, 0.0), (BeganInDays, -0.5, 0.0)),

        .. Of(Scalping, Practice, (At(Sign.Scalped), 2.5, -0.7), (MownLow, 0.7, -0.3), (BeganInDays, 0.3, 0.0), (TugHeld, 0.3, 0.0)),
        .. Of(BurnOrSpill, Practice,
            (At(Sign.Stripes), 2.0, -0.4), (At(Sign.SharpShape), 1.5, -0.3), (FertilizerOn, 0.7, 0.0), (WeedKillerOn, 0.7, 0.0), (BeganInDays, 0.5, 0.0), (BeganOverYears, -1.0, 0.0)),
        .. Of(Salt, Practice, (At(Sign.SaltOrPlowedSnow), 1.5, -0.3), (DeicerOn, 1.5, 0.0), (At(Sign.AlongPaving), 1.0, -0.5), (BeganInWinter, 0.7, 0.0)),
        .. Of(DogSpots, Practice, (At(Sign.DarkRim), 2.5, -1.0), (At(Sign.SmallSpots), 0.5, 0.0), (At(Sign.HourglassLesions), -0.7, 0.0)),
        .. Of(WinterKill, Practice,
            (BeganInWinter, 2.0, -1.5), (IceOrFrost, 1.5, -0.3), (TugPulledOut, 0.5, 0.0), (At(Sign.StandingWater), 0.3, 0.0), (At(Sign.SnowMats), -0.5, 0.0), (TugHeld, -0.7, 0.0)),
        .. Of(Hunger, Practice,
            (At(Sign.PaleAllOver), 1.5, -0.4), (CloverSeen, 1.0, -0.2), (BeganOverYears, 0.7, 0.0), (At(Sign.RedThreads), 0.5, 0.0), (FertilizerOn, -0.7, 0.0), (BeganInDays, -0.7, 0.0)),
        .. Of(SuspectedCause.Weeds, Thresholds.WeedSource, (WeedsMost, 2.0, 0.0), (WeedsFew, -1.0, 0.0)),
    ];

    private static Finding At(Sign sign) => SignFindings.Of(sign);

    private static IEnumerable<Evidence> Of(SuspectedCause cause, string source, params (Finding Finding, double Seen, double NotSeen)[] rows) =>
        rows.Select(row => new Evidence(cause, row.Finding, row.Seen, row.NotSeen, source));
}
