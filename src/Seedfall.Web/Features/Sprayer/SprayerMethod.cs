using Seedfall.Planning.Materials;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>The ways a sprayer is calibrated, by the name in the address.</summary>
public sealed record SprayerMethod(string Key, string Title, string When, IReadOnlyList<string> Steps)
{
    private const string Full = "Put clean water in the tank and nothing else. Wear the gloves you spray in: the tank has held other things.";

    public static SprayerMethod Refill { get; } = new("refill", "Spray an area, refill the tank", "A backpack or hand can. Needs a measured piece of lawn or pavement and a marked jug.",
    [
        Full,
        "Mark out 1,000 sq ft (93 m²), for example 20 by 50 ft, or any area you can measure.",
        "Fill to a mark. Spray the area just as you would the lawn, at your usual walk and pressure.",
        "Measure what it takes to fill to the mark again. Walk it three times.",
    ]);

    public static SprayerMethod Catch { get; } = new("catch", "Time a walk, catch as long", "A spray gun, a wand or a hose-end sprayer: anything you can hold over a bucket.",
    [
        Full,
        "Mark out a course of known area: its length times the width you cover.",
        "Walk it spraying, three times, and take the time of each.",
        "Stand still, spray into a bucket for the mean of the three times at the same pressure, and measure what you caught.",
    ]);

    public static SprayerMethod Course { get; } = new("course", "Catch each nozzle: ounces are gallons per acre", "A boom or push tank with several nozzles, or one nozzle on a wand. Shows worn nozzles.",
    [
        Full,
        "Measure the distance between two nozzles, or the band one nozzle covers. Below it tells how long a course to mark.",
        "Walk the course spraying, three times, and take the time of each.",
        "Standing still at the same pressure, catch each nozzle for the mean of those times. Each fluid ounce is a gallon per acre.",
    ]);

    public static IReadOnlyList<SprayerMethod> All { get; } = [Refill, Catch, Course];

    public static SprayerMethod? Find(string key) => All.FirstOrDefault(m => m.Key == key);

    /// <summary>The way that suits a sprayer best.</summary>
    public static SprayerMethod For(SprayerKind? kind) => kind switch
    {
        SprayerKind.Boom or SprayerKind.PushTank => Course,
        SprayerKind.HoseEnd => Catch,
        _ => Refill,
    };
}
