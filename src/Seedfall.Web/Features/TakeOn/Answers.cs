using System.Globalization;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Water;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>The answers offered, as key and words. Keys are posted by forms and never shown.</summary>
internal static class Answers
{
    public static IReadOnlyList<(GrassSpecies, string, string)> Grasses { get; } =
    [
        (GrassSpecies.KentuckyBluegrass, "kbg", "Kentucky bluegrass"),
        (GrassSpecies.TallFescue, "tf", "Turf-type tall fescue"),
        (GrassSpecies.PerennialRyegrass, "pr", "Perennial ryegrass"),
        (GrassSpecies.CreepingRedFescue, "crf", "Creeping red fescue"),
        (GrassSpecies.ChewingsFescue, "cf", "Chewings fescue"),
        (GrassSpecies.HardFescue, "hf", "Hard fescue"),
        (GrassSpecies.SheepFescue, "sf", "Sheep fescue"),
    ];

    public static IReadOnlyList<(DamageCause, string, string)> Causes { get; } =
    [
        (DamageCause.Drought, "drought", "Drought"),
        (DamageCause.Disease, "disease", "Disease"),
        (DamageCause.Grubs, "grubs", "Grubs"),
        (DamageCause.OtherInsects, "insects", "Other insects"),
        (DamageCause.Shade, "shade", "Shade"),
        (DamageCause.Wear, "wear", "Wear"),
        (DamageCause.Weeds, "weeds", "Weeds"),
        (DamageCause.DogSpots, "dog", "Dog spots"),
        (DamageCause.WinterKill, "winter", "Winter kill"),
        (DamageCause.Neglect, "neglect", "Neglect"),
    ];

    public static IReadOnlyList<(bool, string, string)> YesNo { get; } = [(true, "yes", "Yes"), (false, "no", "No")];

    public static IReadOnlyList<(LawnUse, string, string)> Uses { get; } =
    [
        (LawnUse.Ornamental, "ornamental", "Looked at, seldom walked on"),
        (LawnUse.Family, "family", "An ordinary family lawn"),
        (LawnUse.HardWear, "hard", "Children, dogs, games"),
    ];

    public static IReadOnlyList<(SeedingWork, string, string)> Works { get; } =
    [
        (SeedingWork.Overseed, "overseed", "Seeding into standing turf to thicken it"),
        (SeedingWork.Repair, "repair", "Re-establishing damaged turf"),
        (SeedingWork.NewEstablishment, "new", "A new lawn on bare ground"),
    ];

    public static IReadOnlyList<(SoilTexture, string, string)> Textures { get; } =
    [
        (SoilTexture.Sand, "sand", "Sand"),
        (SoilTexture.LoamySand, "loamy-sand", "Loamy sand"),
        (SoilTexture.SandyLoam, "sandy-loam", "Sandy loam"),
        (SoilTexture.Loam, "loam", "Loam"),
        (SoilTexture.SiltLoam, "silt-loam", "Silt loam"),
        (SoilTexture.Silt, "silt", "Silt"),
        (SoilTexture.SandyClayLoam, "sandy-clay-loam", "Sandy clay loam"),
        (SoilTexture.ClayLoam, "clay-loam", "Clay loam"),
        (SoilTexture.SiltyClayLoam, "silty-clay-loam", "Silty clay loam"),
        (SoilTexture.SandyClay, "sandy-clay", "Sandy clay"),
        (SoilTexture.SiltyClay, "silty-clay", "Silty clay"),
        (SoilTexture.Clay, "clay", "Clay"),
    ];

    public static IReadOnlyList<(SprinklerKind, string, string)> Sprinklers { get; } =
    [
        (SprinklerKind.Oscillating, "oscillating", "Oscillating, on a hose"),
        (SprinklerKind.Impact, "impact", "Impact"),
        (SprinklerKind.FixedSpray, "spray", "Fixed spray heads"),
        (SprinklerKind.Rotor, "rotor", "Rotors"),
        (SprinklerKind.MultiStreamRotor, "streams", "Multi-stream rotors"),
        (SprinklerKind.Traveling, "traveling", "Traveling"),
        (SprinklerKind.HandHose, "hand", "Hose by hand"),
    ];

    public static IReadOnlyList<(WeekDays, string, string)> Days { get; } =
    [
        (WeekDays.Monday, "mon", "Mon"),
        (WeekDays.Tuesday, "tue", "Tue"),
        (WeekDays.Wednesday, "wed", "Wed"),
        (WeekDays.Thursday, "thu", "Thu"),
        (WeekDays.Friday, "fri", "Fri"),
        (WeekDays.Saturday, "sat", "Sat"),
        (WeekDays.Sunday, "sun", "Sun"),
    ];

    public static IReadOnlyList<(SpreaderKind, string, string)> Spreaders { get; } =
    [
        (SpreaderKind.Rotary, "rotary", "Rotary"),
        (SpreaderKind.Drop, "drop", "Drop"),
        (SpreaderKind.HandCrank, "hand", "Hand-cranked"),
    ];

    public static IReadOnlyList<(SprayerKind, string, string)> Sprayers { get; } =
    [
        (SprayerKind.Backpack, "backpack", "Backpack"),
        (SprayerKind.HandCan, "can", "Hand can"),
        (SprayerKind.PushTank, "push", "Push tank"),
        (SprayerKind.Boom, "boom", "Boom"),
        (SprayerKind.HoseEnd, "hose", "Hose-end"),
    ];

    public static IReadOnlyList<(FormulationClass, string, string)> Formulations { get; } =
    [
        (FormulationClass.WettablePowder, "wp", "Wettable powder"),
        (FormulationClass.DryFlowable, "df", "Dry flowable, water-dispersible granule"),
        (FormulationClass.SuspensionConcentrate, "sc", "Suspension concentrate"),
        (FormulationClass.EmulsifiableConcentrate, "ec", "Emulsifiable concentrate"),
        (FormulationClass.SolublePowder, "sp", "Soluble powder or granule"),
        (FormulationClass.Solution, "sl", "Solution"),
        (FormulationClass.Surfactant, "su", "Surfactant"),
    ];

    public static IReadOnlyList<(CoverKind, string, string)> Covers { get; } =
    [
        (CoverKind.None, "none", "No cover"),
        (CoverKind.Straw, "straw", "Straw"),
        (CoverKind.Peat, "peat", "Peat"),
        (CoverKind.Compost, "compost", "Compost"),
        (CoverKind.PaperPellets, "pellets", "Paper pellets"),
        (CoverKind.Hydromulch, "hydromulch", "Hydromulch"),
        (CoverKind.StrawBlanket, "blanket", "Straw blanket"),
    ];

    /// <summary>A pressure as the trade speaks of it.</summary>
    public static string Shown(Pressure pressure, UnitSystem system) => system == UnitSystem.Metric
        ? string.Create(CultureInfo.InvariantCulture, $"{pressure.Bars:0.#} bar")
        : string.Create(CultureInfo.InvariantCulture, $"{pressure.PoundsPerSquareInch:0} psi");

    /// <summary>The words of a value, in lower case where it stands inside a sentence.</summary>
    public static string Words<T>(this IReadOnlyList<(T Value, string Key, string Text)> answers, T value) =>
        answers.First(a => EqualityComparer<T>.Default.Equals(a.Value, value)).Text;
}
