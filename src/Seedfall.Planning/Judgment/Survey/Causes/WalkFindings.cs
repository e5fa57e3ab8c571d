using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>Everything a walk-over can show, apart from the signs of the checklist (<see cref="SignFindings"/>).</summary>
public static class WalkFindings
{
    /// <summary>A screwdriver that stops above this met hard ground, inches: common practice, no source read.</summary>
    private const double ShallowInches = 4.0;

    /// <summary>A 6 in screwdriver should go in to the handle when the soil is moist; a half inch is left for the reading.</summary>
    private const double DeepInches = 5.5;

    private const double LowCutInches = 2.0;
    private const double EnoughSunHours = 6.0;
    private const double FewWeeds = 0.10;

    public static readonly Finding TugHeld = Of("tug.held", WalkStep.Tug, "brown tufts held fast, crowns firm", "brown tufts did not hold", (_, s) => Tugs(s, t => 3 * t.Held >= 2 * t.Total));
    public static readonly Finding TugLifted = Of("tug.lifted", WalkStep.Tug, "turf lifted like a carpet, roots gone", "turf did not lift like a carpet", (_, s) => Tugs(s, t => 3 * t.Lifted >= t.Total));
    public static readonly Finding TugPulledOut = Of("tug.pulled-out", WalkStep.Tug, "tufts pulled out at the crown", "tufts did not pull out at the crown", (_, s) => Tugs(s, t => 2 * t.PulledOut >= t.Total));

    public static readonly Finding GrubsAbove = Of("grubs.above", WalkStep.Lift, "grubs clearly above the line", "grubs not clearly above the line", (_, s) => Grubs(s, GrubStanding.ClearlyAbove));
    public static readonly Finding GrubsBelow = Of("grubs.below", WalkStep.Lift, "grubs clearly below the line", "grubs not clearly below the line", (_, s) => Grubs(s, GrubStanding.ClearlyBelow));
    public static readonly Finding GrubsSome = Of("grubs.some", WalkStep.Lift, "some grubs, not clear of the line", "the count is clear of the line", (_, s) => GrubEstimate.Of(s.Lifts) is { } g ? g.Standing == GrubStanding.NeedsMore && g.Counted > 0 : null);

    public static readonly Finding PushShallowMoist = Of("push.shallow-moist", WalkStep.Push, "the screwdriver stopped short of 4 in (10 cm) in moist soil", "the screwdriver went past 4 in (10 cm) or the soil was dry", (_, s) => Push(s, inches => inches < ShallowInches && s.Moisture is SoilFeel.Moist or SoilFeel.Wet));
    public static readonly Finding PushShallowDry = Of("push.shallow-dry", WalkStep.Push, "the screwdriver stopped short of 4 in (10 cm), in soil that was dry or not felt", "the screwdriver went past 4 in (10 cm) or the soil was moist", (_, s) => Push(s, inches => inches < ShallowInches && s.Moisture is SoilFeel.Dry or null));
    public static readonly Finding PushDeep = Of("push.deep", WalkStep.Push, "the screwdriver went in to the handle", "the screwdriver did not go in to the handle", (_, s) => Push(s, inches => inches >= DeepInches));

    public static readonly Finding ThatchThick = Of("thatch.thick", WalkStep.Thatch, "thatch above 3/4 in (19 mm)", "no thatch above 3/4 in (19 mm)", (p, _) => p.Thatch is { } t ? t.Inches > Thresholds.ThatchInches : null);
    public static readonly Finding ThatchMiddling = Of("thatch.middling", WalkStep.Thatch, "thatch of 1/2 to 3/4 in (13 to 19 mm)", "thatch outside 1/2 to 3/4 in (13 to 19 mm)", (p, _) => p.Thatch is { } t ? t.Inches is > Thresholds.ThatchNearInches and <= Thresholds.ThatchInches : null);
    public static readonly Finding ThatchThin = Of("thatch.thin", WalkStep.Thatch, "thatch of at most 1/2 in (13 mm)", "thatch above 1/2 in (13 mm)", (p, _) => p.Thatch is { } t ? t.Inches <= Thresholds.ThatchNearInches : null);

    public static readonly Finding SoilDry = Of("soil.dry", WalkStep.Moisture, "dry soil", "soil not dry", (_, s) => s.Moisture is { } m ? m == SoilFeel.Dry : null);
    public static readonly Finding SoilMoist = Of("soil.moist", WalkStep.Moisture, "moist soil", "soil not moist", (_, s) => s.Moisture is { } m ? m == SoilFeel.Moist : null);
    public static readonly Finding SoilWet = Of("soil.wet", WalkStep.Moisture, "wet soil", "soil not wet", (_, s) => s.Moisture is { } m ? m == SoilFeel.Wet : null);
    public static readonly Finding DropStood = Of("drop.stood", WalkStep.Moisture, "a drop of water stood on the dry core", "the drop sank in", (_, s) => s.DropStood);

    public static readonly Finding SunFew = Of("sun.few", WalkStep.Arrive, "less than 3 h of sun", "3 h of sun or more", (p, _) => p.SunHours is { } h ? h < Thresholds.SunHours : null);
    public static readonly Finding SunSome = Of("sun.some", WalkStep.Arrive, "3 to 6 h of sun", "sun outside 3 to 6 h", (p, _) => p.SunHours is { } h ? h is >= Thresholds.SunHours and < EnoughSunHours : null);
    public static readonly Finding SunPlenty = Of("sun.plenty", WalkStep.Arrive, "6 h of sun or more", "less than 6 h of sun", (p, _) => p.SunHours is { } h ? h >= EnoughSunHours : null);
    public static readonly Finding MownLow = Of("mown.low", WalkStep.Arrive, "cut below 2 in (5 cm)", "cut at 2 in (5 cm) or above", (_, s) => s.Mown is { } cut ? cut.Inches < LowCutInches : null);

    public static readonly Finding BeganInDays = Began("began.days", Onset.Days, "it came within days", "it did not come within days");
    public static readonly Finding BeganOverWeeks = Began("began.weeks", Onset.Weeks, "it came over weeks", "it did not come over weeks");
    public static readonly Finding BeganOverYears = Began("began.years", Onset.Years, "it came over months or years", "it did not come over months or years");
    public static readonly Finding BeganInWinter = Began("began.winter", Onset.AfterWinter, "it was there when the snow went", "it was not there when the snow went");

    public static readonly Finding HotDry = Weather("weather.hot-dry", WeatherBefore.HotDry, "hot, dry weather before");
    public static readonly Finding HotHumid = Weather("weather.hot-humid", WeatherBefore.HotHumid, "hot, humid weather with warm nights before");
    public static readonly Finding MildDewy = Weather("weather.mild-dewy", WeatherBefore.MildDewy, "mild days with heavy dew before");
    public static readonly Finding CoolWet = Weather("weather.cool-wet", WeatherBefore.CoolWet, "cool, wet weather before");
    public static readonly Finding LongRain = Weather("weather.long-rain", WeatherBefore.LongRain, "long rain before");
    public static readonly Finding LongSnow = Weather("weather.long-snow", WeatherBefore.LongSnow, "long snow cover before");
    public static readonly Finding IceOrFrost = Weather("weather.ice", WeatherBefore.IceOrBareFrost, "ice or bare frost before");

    public static readonly Finding FertilizerOn = On("put-on.fertilizer", PutOn.Fertilizer, "fertilizer was put on before");
    public static readonly Finding WeedKillerOn = On("put-on.weed-killer", PutOn.WeedKiller, "weed killer was put on before");
    public static readonly Finding InsecticideOn = On("put-on.insecticide", PutOn.Insecticide, "insecticide was put on before");
    public static readonly Finding DeicerOn = On("put-on.deicer", PutOn.Deicer, "deicer was put on before");

    public static readonly Finding WeedsMost = Of("weeds.most", WalkStep.Weeds, "more than half of the ground is weeds", "weeds on at most half of the ground", (p, _) => p.WeedCover is { } w ? w.Value > Thresholds.WeedShare : null);
    public static readonly Finding WeedsFew = Of("weeds.few", WalkStep.Weeds, "weeds on less than a tenth of the ground", "weeds on a tenth of the ground or more", (p, _) => p.WeedCover is { } w ? w.Value < FewWeeds : null);
    public static readonly Finding CloverSeen = Weed("weeds.clover", WeedKind.Clover, "clover or medic");
    public static readonly Finding PackedWeeds = Weed("weeds.packed", WeedKind.PackedGround, "weeds of packed ground");
    public static readonly Finding ShadeWeeds = Weed("weeds.shade", WeedKind.ShadeWeeds, "weeds of shade");
    public static readonly Finding SedgeSeen = Weed("weeds.sedge", WeedKind.Sedge, "nutsedge");
    public static readonly Finding AnnualBluegrassSeen = Weed("weeds.annual-bluegrass", WeedKind.AnnualBluegrass, "annual bluegrass");

    /// <summary>All of them, in the order of the walk.</summary>
    public static IReadOnlyList<Finding> All { get; } =
    [
        SunFew, SunSome, SunPlenty, MownLow, BeganInDays, BeganOverWeeks, BeganOverYears, BeganInWinter,
        HotDry, HotHumid, MildDewy, CoolWet, LongRain, LongSnow, IceOrFrost, FertilizerOn, WeedKillerOn, InsecticideOn, DeicerOn,
        TugHeld, TugLifted, TugPulledOut, GrubsAbove, GrubsSome, GrubsBelow, PushShallowMoist, PushShallowDry, PushDeep,
        ThatchThick, ThatchMiddling, ThatchThin, SoilDry, SoilMoist, SoilWet, DropStood,
        WeedsMost, WeedsFew, CloverSeen, PackedWeeds, ShadeWeeds, SedgeSeen, AnnualBluegrassSeen,
    ];

    private static Finding Of(string id, WalkStep step, string seen, string notSeen, Func<Patch, PatchSurvey, bool?> look) => new(id, step, seen, notSeen, look);

    private static Finding Began(string id, Onset onset, string seen, string notSeen) => Of(id, WalkStep.Arrive, seen, notSeen, (_, s) => s.Began is { } began ? began == onset : null);

    private static Finding Weather(string id, WeatherBefore weather, string seen) =>
        Of(id, WalkStep.Arrive, seen, "no " + seen, (_, s) => s.WeatherBefore.Count == 0 ? null : s.WeatherBefore.Contains(weather));

    private static Finding On(string id, PutOn what, string seen) => Of(id, WalkStep.Arrive, seen, "not known: " + seen, (_, s) => s.PutOn.Contains(what) ? true : null);

    private static Finding Weed(string id, WeedKind kind, string seen) =>
        Of(id, WalkStep.Weeds, seen, "no " + seen, (_, s) => s.Weeds.Any(w => w.Kind == kind) ? true : s.LookedForWeeds ? false : null);

    private static bool? Tugs(PatchSurvey survey, Func<TugTest, bool> test) => survey.Tugs is { Total: >= SurveyedPatch.FewestTufts } tugs ? test(tugs) : null;

    private static bool? Grubs(PatchSurvey survey, GrubStanding standing) => GrubEstimate.Of(survey.Lifts) is { } grubs ? grubs.Standing == standing : null;

    private static bool? Push(PatchSurvey survey, Func<double, bool> test) => SurveyedPatch.MeanDepth(survey.Pushes) is { } depth ? test(depth.Inches) : null;
}
