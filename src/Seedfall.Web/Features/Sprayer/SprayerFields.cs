using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>The questions of the calibration forms.</summary>
internal static class SprayerFields
{
    /// <summary>Most nozzles caught one by one.</summary>
    public const int MostNozzles = 8;

    private static readonly IReadOnlyList<UnitChoice<Volume>> Jug =
    [
        new("floz", "fl oz", UnitSystem.UsCustomary, Volume.FromFluidOunces, v => v.FluidOunces),
        new("mL", "mL", UnitSystem.Metric, Volume.FromMilliliters, v => v.Milliliters),
        new("qt", "qt", UnitSystem.UsCustomary, Volume.FromQuarts, v => v.Quarts),
        new("gal", "gal", UnitSystem.UsCustomary, Volume.FromGallons, v => v.Gallons),
        new("L", "L", UnitSystem.Metric, Volume.FromLiters, v => v.Liters),
    ];

    private static readonly IReadOnlyList<UnitChoice<Volume>> Bucket = [Jug[3], Jug[4], Jug[2], Jug[0], Jug[1]];

    private static readonly IReadOnlyList<UnitChoice<Length>> Band = [.. UnitChoices.SprayHeight, .. UnitChoices.Distance];

    private static readonly IReadOnlyList<UnitChoice<Pressure>> Gauge =
    [
        new("psi", "psi", UnitSystem.UsCustomary, Engine.Units.Pressure.FromPoundsPerSquareInch, p => p.PoundsPerSquareInch),
        new("kPa", "kPa", UnitSystem.Metric, Engine.Units.Pressure.FromKilopascals, p => p.Kilopascals),
        new("bar", "bar", UnitSystem.Metric, Engine.Units.Pressure.FromBars, p => p.Bars),
    ];

    private static readonly Volume MostCaught = Volume.FromGallons(200.0);

    public static QuantityField<Area> Ground { get; } = new("ground", "Area sprayed each time", UnitChoices.Area, Area.Zero, Area.FromAcres(2.0)) { Required = true, AboveLeast = true };

    public static IReadOnlyList<QuantityField<Volume>> Used { get; } = Runs("used", "Water to refill", Bucket);

    public static IReadOnlyList<QuantityField<Volume>> Caught { get; } = Runs("caught", "Caught", Bucket);

    public static IReadOnlyList<QuantityField<Volume>> Nozzles { get; } =
        [.. Enumerable.Range(1, MostNozzles).Select(n => new QuantityField<Volume>($"nozzle{n}", $"Nozzle {n} gave", Jug, Volume.Zero, MostCaught) { AboveLeast = true, Required = n == 1 })];

    public static IReadOnlyList<NumberField> Times { get; } =
        [.. Enumerable.Range(1, 3).Select(n => new NumberField($"time{n}", $"Time of walk {n}", 1.0, 3600.0, "seconds") { Required = n == 1 })];

    public static NumberField CatchTime { get; } = new("catchtime", "Caught for", 1.0, 3600.0, "seconds") { Hint = "Blank where it was the mean of the walks." };

    public static QuantityField<Length> Width { get; } = new("width", "Width one walk covers", [.. UnitChoices.Distance, .. UnitChoices.SprayHeight], Length.Zero, Length.FromMeters(30.0)) { AboveLeast = true, Hint = "With it and the times the speed is known." };

    public static QuantityField<Length> Spacing { get; } = new("spacing", "Distance between nozzles, or the band one covers", Band, Length.FromInches(4.0), Length.FromFeet(20.0)) { Required = true };

    public static QuantityField<VolumePerArea> Wanted { get; } = new("wanted", "Carrier you want", UnitChoices.Carrier, VolumePerArea.Zero, VolumePerArea.FromGallonsPerThousandSquareFeet(20.0)) { AboveLeast = true, Hint = "By the label. Blank where what comes out is good as long as it is known." };

    public static QuantityField<Pressure> Pressure { get; } = Gauged("pressure", "Pressure while testing");

    public static QuantityField<Pressure> LeastPressure { get; } = Gauged("least", "Nozzle’s lowest pressure");

    public static QuantityField<Pressure> MostPressure { get; } = Gauged("most", "Nozzle’s highest pressure");

    public static QuantityField<FlowRate> Rated { get; } = new("rated", "Nozzle’s rated flow", UnitChoices.Flow, FlowRate.Zero, FlowRate.FromGallonsPerMinute(20.0)) { AboveLeast = true };

    public static QuantityField<Pressure> RatedAt { get; } = Gauged("ratedat", "at");

    public static QuantityField<Volume> Tank { get; } = new("tank", "What the tank holds", UnitChoices.Volume, Volume.Zero, Volume.FromLiters(4000.0)) { AboveLeast = true };

    private static IReadOnlyList<QuantityField<Volume>> Runs(string name, string label, IReadOnlyList<UnitChoice<Volume>> units) =>
        [.. Enumerable.Range(1, 3).Select(n => new QuantityField<Volume>($"{name}{n}", $"{label}, {(n == 1 ? "first" : n == 2 ? "second" : "third")} time", units, Volume.Zero, MostCaught) { AboveLeast = true, Required = n == 1 })];

    private static QuantityField<Pressure> Gauged(string name, string label) =>
        new(name, label, Gauge, Engine.Units.Pressure.Zero, Engine.Units.Pressure.FromPoundsPerSquareInch(300.0)) { AboveLeast = true };
}
