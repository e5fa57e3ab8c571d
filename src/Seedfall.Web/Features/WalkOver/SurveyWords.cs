using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Judgment.Survey.Causes;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>The answers a walk-over offers, as key and words.</summary>
internal static class SurveyWords
{
    public static IReadOnlyList<(Onset, string, string)> Onsets { get; } =
    [
        (Onset.Days, "days", "Overnight or in days"),
        (Onset.Weeks, "weeks", "Over some weeks"),
        (Onset.Years, "years", "Over months or years"),
        (Onset.AfterWinter, "winter", "There when the snow went"),
    ];

    public static IReadOnlyList<(WeatherBefore, string, string)> Weathers { get; } =
    [
        (WeatherBefore.HotDry, "hot-dry", "Hot and dry for weeks"),
        (WeatherBefore.HotHumid, "hot-humid", "Hot and humid, warm wet nights"),
        (WeatherBefore.MildDewy, "mild-dewy", "Mild days, cool nights, heavy dew"),
        (WeatherBefore.CoolWet, "cool-wet", "Cool and wet"),
        (WeatherBefore.LongRain, "long-rain", "Long rain, soaked ground"),
        (WeatherBefore.LongSnow, "long-snow", "Long snow cover"),
        (WeatherBefore.IceOrBareFrost, "ice", "Ice, or hard frost without snow"),
    ];

    public static IReadOnlyList<(PutOn, string, string)> PutOns { get; } =
    [
        (PutOn.Fertilizer, "fertilizer", "Fertilizer"),
        (PutOn.WeedKiller, "weed-killer", "Weed killer"),
        (PutOn.Insecticide, "insecticide", "Insecticide"),
        (PutOn.Fungicide, "fungicide", "Fungicide"),
        (PutOn.Deicer, "deicer", "Deicer"),
    ];

    public static IReadOnlyList<(SoilFeel, string, string)> Feels { get; } =
    [
        (SoilFeel.Dry, "dry", "Dry: dust, or will not hold together"),
        (SoilFeel.Moist, "moist", "Moist: holds a ball, palm nearly dry"),
        (SoilFeel.Wet, "wet", "Wet: water shows when squeezed"),
    ];

    public static IReadOnlyList<(bool, string, string)> Drops { get; } = [(true, "stood", "It stood on top"), (false, "sank", "It sank in")];

    public static IReadOnlyList<(WeedKind, string, string)> WeedKinds { get; } =
    [
        (WeedKind.Broadleaf, "broadleaf", "Broad-leaved (dandelion, plantain)"),
        (WeedKind.Clover, "clover", "Clover and medic"),
        (WeedKind.AnnualGrass, "annual-grass", "Annual grasses (crabgrass)"),
        (WeedKind.AnnualBluegrass, "annual-bluegrass", "Annual bluegrass"),
        (WeedKind.PerennialGrass, "perennial-grass", "Quackgrass, bentgrass and the like"),
        (WeedKind.Sedge, "sedge", "Nutsedge (three-edged stem)"),
        (WeedKind.PackedGround, "packed", "Knotweed, goosegrass (packed ground)"),
        (WeedKind.ShadeWeeds, "shade", "Ground ivy, violets (shade)"),
    ];

    /// <summary>The signs of one step of the walk.</summary>
    public static IReadOnlyList<(Sign, string, string)> Signs(WalkStep step) =>
        [.. SignFindings.At(step).Select(s => (s.Sign, s.Sign.ToString(), char.ToUpperInvariant(s.Words[0]) + s.Words[1..]))];
}
