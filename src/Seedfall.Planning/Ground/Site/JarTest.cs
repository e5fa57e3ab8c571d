using System.Globalization;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Ground;

/// <summary>Soil texture from a jar of shaken soil: when to mark it, and what the marks say.</summary>
public static class JarTest
{
    /// <summary>A mark can be read this well nine times in ten.</summary>
    public static Length ReadingError { get; } = Length.FromCentimeters(0.1);

    private const string Stokes = "Stokes' law with USDA size limits of 0.05 and 0.002 mm; viscosity of water Kestin et al. 1978";
    private const string Triangle = "jar test common practice, read in extension guides (Clemson, Colorado State, Montana State); classes of the USDA texture triangle (Soil Survey Manual, Handbook 18)";

    /// <summary>When to mark the top of the sand, and of the silt, for a jar's depth and temperature.</summary>
    public static IReadOnlyList<Figure> Times(Length waterDepth, Temperature water) =>
    [
        Time("soil.jar.sand-time", "Mark the sand after", StokesSettling.FinestSandM, waterDepth, water, "By then every grain of sand is down. Stokes' law is at its limit here: coarse sand is down long before."),
        Time("soil.jar.silt-time", "Mark the silt after", StokesSettling.FinestSiltM, waterDepth, water, "By then every grain of silt is down. The usual two hours are too soon: fine silt is still afloat and is then counted as clay."),
        new("soil.jar.clay-time", "Mark the clay after", QuantityKind.Minutes, 48.0 * 60.0, new Working("until the water is clear", [], "24 to 48 h, common practice in extension guides; clay that stays afloat wants a pinch of salt or more days", Sureness.CommonPractice)),
    ];

    /// <summary>Shares of sand, silt and clay with their workings.</summary>
    /// <param name="layers">The marks, in order.</param>
    /// <param name="reading">What they say.</param>
    /// <param name="siltMark">When the silt was marked, min; null where the reckoned time was kept.</param>
    /// <param name="waterDepth">Depth from the water's surface to the bottom.</param>
    /// <param name="water">Temperature of the water.</param>
    public static IReadOnlyList<Figure> Shares(JarLayers layers, JarReading reading, double? siltMark, Length waterDepth, Temperature water)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var early = siltMark is { } minutes ? Early(minutes, waterDepth, water) : null;
        return
        [
            Share("soil.jar.sand", "Sand", reading.Sand, reading.SandSpread, "sand = s / c", layers, null),
            Share("soil.jar.silt", "Silt", reading.Silt, null, "silt = (i - s) / c", layers, early),
            Share("soil.jar.clay", "Clay", reading.Clay, reading.ClaySpread, "clay = (c - i) / c", layers, early),
        ];
    }

    private static string? Early(double minutes, Length waterDepth, Temperature water)
    {
        var cutMicrons = StokesSettling.CutM(minutes * 60.0, waterDepth, water) * 1e6;
        return cutMicrons <= 2.2
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"When the silt was marked, grains below {cutMicrons:0.#} thousandths of a millimeter were still afloat: fine silt is counted as clay, so the true clay is less.");
    }

    private static Figure Time(string id, string label, double diameterM, Length fall, Temperature water, string note) => new(
        id, label, QuantityKind.Minutes, StokesSettling.Seconds(diameterM, fall, water) / 60.0, new Working(
            "t = 18 mu h / ((rho_s - rho_w) g d^2)",
            [
                new("h", "water above the bottom", fall.Centimeters, "cm"), new("d", "smallest grain that must be down", diameterM * 1e3, "mm"),
                new("T", "water temperature", water.Celsius, "degC"), new("mu", "viscosity of the water", StokesSettling.ViscosityPaS(water) * 1e3, "mPa s"),
            ],
            Stokes,
            Sureness.Published,
            note));

    private static Figure Share(string id, string label, Fraction share, double? spread, string formula, JarLayers layers, string? early)
    {
        var read = spread is { } s ? string.Create(CultureInfo.InvariantCulture, $"Marks read to 1 mm: +- {1.645 * s * 100.0:0.#} points, nine times in ten. ") : "";
        return new Figure(id, label, QuantityKind.Share, share.Value, new Working(
            formula,
            [new("s", "top of the sand", layers.Sand.Centimeters * 10.0, "mm"), new("i", "top of the silt", layers.Silt.Centimeters * 10.0, "mm"), new("c", "top of the clay", layers.Clay.Centimeters * 10.0, "mm")],
            Triangle,
            Sureness.CommonPractice,
            $"{read}Layers pack differently: clay settles loose and looks like more than it weighs.{(early is null ? "" : " " + early)}"));
    }
}
