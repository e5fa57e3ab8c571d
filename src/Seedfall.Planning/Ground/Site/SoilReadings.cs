using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Ground;

/// <summary>A soil report read for cool-season turf: reaction and lime first, then what the plan changes by, then the rest.</summary>
public static class SoilReadings
{
    /// <summary>Most ground limestone at once on standing turf.</summary>
    public static MassPerArea MostLimeAtOnce { get; } = MassPerArea.FromPoundsPerThousandSquareFeet(50.0);

    internal const string LimeSource = "Penn State, Liming Turfgrass Areas";
    internal const double LowPh = 6.0;
    internal const double HighPh = 7.2;

    private const string Practice = "common practice, no source read";
    private const string SaltSource = "salt tolerance table, PMC3814051: bluegrass 3 to 6, tall and fine fescues 6 to 10 dS/m; tables differ on ryegrass";

    /// <summary>Every value known, graded, in the order a report is read.</summary>
    public static IReadOnlyList<SoilReading> Of(SoilFacts? soil) => soil is null ? [] :
    [
        .. soil.Ph is { } ph ? [Reaction(ph)] : Array.Empty<SoilReading>(),
        .. soil.BufferPh is { } buffer ? [Buffer(buffer, soil)] : Array.Empty<SoilReading>(),
        .. soil.LabLime is { } lime ? [Lime(lime)] : Array.Empty<SoilReading>(),
        .. NutrientLevels.Of(soil),
        .. soil.OrganicMatter is { } organic ? [Organic(organic.Percent)] : Array.Empty<SoilReading>(),
        .. soil.CationExchange is { } exchange ? [Exchange(exchange)] : Array.Empty<SoilReading>(),
        .. soil.SaltsDsPerM is { } salts ? [Salts(salts)] : Array.Empty<SoilReading>(),
    ];

    /// <summary>Applications the lime is split into on standing turf [-].</summary>
    public static int LimeApplications(MassPerArea lime) => (int)Math.Ceiling(lime / MostLimeAtOnce - 1e-9);

    /// <summary>Product to buy for a lime need: <c>need / CCE</c>.</summary>
    /// <param name="need">Lime at 100 % calcium carbonate equivalent.</param>
    /// <param name="equivalent">Calcium carbonate equivalent on the bag, above 0; pure calcium carbonate is 1.</param>
    public static MassPerArea LimeProduct(MassPerArea need, double equivalent) => equivalent > 0.0
        ? need / equivalent
        : throw new ArgumentOutOfRangeException(nameof(equivalent), equivalent, "a calcium carbonate equivalent above 0 is needed");

    private static SoilReading Reaction(double ph) => ph switch
    {
        < LowPh => Ph(ph, SoilLevel.Low, $"{LimeSource}; the 50 lb is {Practice}", Sureness.CommonPractice, $"Soil pH {ph:0.0} is below {LowPh:0.0}: lime by the lab's buffer test, at most 50 lb of ground limestone per 1,000 sq ft at once on standing turf."),
        > HighPh => Ph(ph, SoilLevel.High, LimeSource, Sureness.Published, $"Soil pH {ph:0.0} is above {HighPh:0.0}: no lime; expect iron to be short before anything else. Sulfur only where and as much as the lab says: it burns turf, and a limy soil eats any amount of it."),
        _ => Ph(ph, SoilLevel.Optimum, LimeSource, Sureness.Published, $"Soil pH {ph:0.0} suits cool-season turf ({LowPh:0.0} to {HighPh:0.0}): no lime."),
    };

    private static SoilReading Ph(double ph, SoilLevel level, string source, Sureness sureness, FormattableString sentence) =>
        SoilReading.Of("ph", "pH in water", ph, "", (LowPh, HighPh), level, source, sureness, sentence);

    private static SoilReading Buffer(double buffer, SoilFacts soil) => SoilReading.Plain(
        "buffer", "Buffer pH", buffer, "", "each laboratory's buffer has a table of its own; no lime is reckoned from it here", Sureness.Measured,
        soil.LabLime is null
            ? $"Buffer pH {buffer:0.0} sets how much lime a low pH wants, by the lab's own table: enter the lime the lab recommends."
            : (FormattableString)$"Buffer pH {buffer:0.0}: the lab's lime recommendation is made from it and is used.");

    private static SoilReading Lime(MassPerArea lime)
    {
        var (pounds, times) = (lime.PoundsPerThousandSquareFeet, LimeApplications(lime));
        return new SoilReading(
            new Figure("soil.lime", "Lime the laboratory recommends", QuantityKind.MassPerArea, lime.KilogramsPerSquareMeter, new Working(
                "applications = lime / most at once, rounded up; product = lime / (CCE / 100)",
                [new("lime", "recommended", pounds, "lb per 1,000 sq ft"), new("most", "at once on standing turf", MostLimeAtOnce.PoundsPerThousandSquareFeet, "lb per 1,000 sq ft")],
                $"the laboratory's report; 50 lb at once {Practice}",
                Sureness.Measured)),
            "",
            SoilLevel.Noted,
            times == 0
                ? "The lab recommends no lime."
                : string.Create(CultureInfo.InvariantCulture, $"The lab recommends {pounds:0} lb of lime per 1,000 sq ft: {(times == 1 ? "one application" : $"{times} applications, half a year apart")}. Divide by the bag's calcium carbonate equivalent."));
    }

    private static SoilReading Organic(double percent) => SoilReading.Of(
        "organic", "Organic matter", percent, "%", (3.0, 6.0), SoilReading.Grade(percent, 3.0, 6.0),
        $"University of Minnesota soil laboratory calls 2.8 % low and 3.5 % medium; the upper line {Practice}", Sureness.CommonPractice,
        percent < 3.0 ? $"Organic matter {percent:0.#} % is low: the seedbed dries fast and holds little; compost as cover pays." : percent > 6.0 ? $"Organic matter {percent:0.#} % is high: the soil feeds some nitrogen by itself and holds water well." : (FormattableString)$"Organic matter {percent:0.#} % is ordinary for a lawn.");

    private static SoilReading Exchange(double exchange) => SoilReading.Of(
        "exchange", "Cation exchange capacity", exchange, "meq/100 g", (5.0, 20.0), SoilReading.Grade(exchange, 5.0, 20.0),
        "Ohio State turf list, read second-hand: sands 1 to 5, silts 5 to 20, clays 20 to 30", Sureness.CommonPractice,
        exchange < 5.0 ? $"Cation exchange {exchange:0.#} meq/100 g is a sand's: feed little and often, nitrogen and potash wash out." : exchange > 20.0 ? $"Cation exchange {exchange:0.#} meq/100 g is a clay's: it holds feed well and changes its pH slowly." : (FormattableString)$"Cation exchange {exchange:0.#} meq/100 g is a loam's.");

    private static SoilReading Salts(double salts) => SoilReading.Of(
        "salts", "Soluble salts, saturated paste", salts, "dS/m", (0.0, 3.0), salts > 3.0 ? SoilLevel.High : SoilLevel.Optimum, SaltSource, Sureness.Published,
        salts > 6.0 ? $"Soluble salts {salts:0.#} dS/m stop seedlings of most cool-season grass: leach with good water and test again before seeding."
            : salts > 3.0 ? $"Soluble salts {salts:0.#} dS/m hold back Kentucky bluegrass, and seedlings of any grass more: choose fescues, keep the seedbed wet, no extra feed." : (FormattableString)$"Soluble salts {salts:0.#} dS/m are harmless. Some labs report a 1:1 or 1:2 slurry, which reads lower than the paste meant here.");
}
