using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Web.Forms;

/// <summary>One unit a quantity may be typed in.</summary>
/// <param name="Key">Stable key posted by the form.</param>
/// <param name="Text">As written in the trade.</param>
/// <param name="System">The system it belongs to.</param>
public sealed record UnitChoice<T>(string Key, string Text, UnitSystem System, Func<double, T> From, Func<T, double> In);

/// <summary>The units each quantity is offered in, the usual one of each system first.</summary>
internal static class UnitChoices
{
    private const UnitSystem Us = UnitSystem.UsCustomary;
    private const UnitSystem Metric = UnitSystem.Metric;
    private const double LitersPerHundredCubicFeet = 2831.6846592;

    public static IReadOnlyList<UnitChoice<Length>> Distance { get; } =
    [
        new("ft", "ft", Us, Length.FromFeet, l => l.Feet),
        new("m", "m", Metric, Length.FromMeters, l => l.Meters),
    ];

    public static IReadOnlyList<UnitChoice<Length>> SprayHeight { get; } =
    [
        new("in", "in", Us, Length.FromInches, l => l.Inches),
        new("cm", "cm", Metric, Length.FromCentimeters, l => l.Centimeters),
    ];

    /// <summary>For the inner diameter of a hose.</summary>
    public static IReadOnlyList<UnitChoice<Length>> Bore { get; } =
    [
        new("in", "in", Us, Length.FromInches, l => l.Inches),
        new("mm", "mm", Metric, mm => Length.FromCentimeters(mm / 10.0), l => l.Centimeters * 10.0),
    ];

    public static IReadOnlyList<UnitChoice<Depth>> Depth { get; } =
    [
        new("in", "in", Us, Engine.Units.Depth.FromInches, d => d.Inches),
        new("mm", "mm", Metric, Engine.Units.Depth.FromMillimeters, d => d.Millimeters),
        new("cm", "cm", Metric, Engine.Units.Depth.FromCentimeters, d => d.Centimeters),
    ];

    public static IReadOnlyList<UnitChoice<Temperature>> Temperature { get; } =
    [
        new("F", "°F", Us, Engine.Units.Temperature.FromFahrenheit, t => t.Fahrenheit),
        new("C", "°C", Metric, Engine.Units.Temperature.FromCelsius, t => t.Celsius),
    ];

    public static IReadOnlyList<UnitChoice<Area>> Area { get; } =
    [
        new("sqft", "sq ft", Us, Engine.Units.Area.FromSquareFeet, a => a.SquareFeet),
        new("m2", "m²", Metric, Engine.Units.Area.FromSquareMeters, a => a.SquareMeters),
        new("acre", "acre", Us, Engine.Units.Area.FromAcres, a => a.Acres),
        new("ha", "ha", Metric, Engine.Units.Area.FromHectares, a => a.Hectares),
    ];

    /// <summary>For a spade's or a core's ground.</summary>
    public static IReadOnlyList<UnitChoice<Area>> LiftArea { get; } = [.. Area.Take(2)];

    public static IReadOnlyList<UnitChoice<Volume>> Volume { get; } =
    [
        new("gal", "gal", Us, Engine.Units.Volume.FromGallons, v => v.Gallons),
        new("L", "L", Metric, Engine.Units.Volume.FromLiters, v => v.Liters),
        new("qt", "qt", Us, Engine.Units.Volume.FromQuarts, v => v.Quarts),
    ];

    /// <summary>For use by the water bill.</summary>
    public static IReadOnlyList<UnitChoice<Volume>> Billed { get; } =
    [
        new("gal", "gal", Us, Engine.Units.Volume.FromGallons, v => v.Gallons),
        new("m3", "m³", Metric, Engine.Units.Volume.FromCubicMeters, v => v.CubicMeters),
        new("ccf", "100 cu ft", Us, v => Engine.Units.Volume.FromLiters(v * LitersPerHundredCubicFeet), v => v.Liters / LitersPerHundredCubicFeet),
    ];

    public static IReadOnlyList<UnitChoice<Pressure>> Pressure { get; } =
    [
        new("psi", "psi", Us, Engine.Units.Pressure.FromPoundsPerSquareInch, p => p.PoundsPerSquareInch),
        new("bar", "bar", Metric, Engine.Units.Pressure.FromBars, p => p.Bars),
        new("kPa", "kPa", Metric, Engine.Units.Pressure.FromKilopascals, p => p.Kilopascals),
    ];

    public static IReadOnlyList<UnitChoice<FlowRate>> Flow { get; } =
    [
        new("gpm", "gal per min", Us, FlowRate.FromGallonsPerMinute, f => f.GallonsPerMinute),
        new("Lmin", "L per min", Metric, FlowRate.FromLitersPerMinute, f => f.LitersPerMinute),
    ];

    public static IReadOnlyList<UnitChoice<PrecipitationRate>> Precipitation { get; } =
    [
        new("inh", "in per hour", Us, PrecipitationRate.FromInchesPerHour, r => r.InchesPerHour),
        new("mmh", "mm per hour", Metric, PrecipitationRate.FromMillimetersPerHour, r => r.MillimetersPerHour),
    ];

    public static IReadOnlyList<UnitChoice<Mass>> Mass { get; } =
    [
        new("lb", "lb", Us, Engine.Units.Mass.FromPounds, m => m.Pounds),
        new("kg", "kg", Metric, Engine.Units.Mass.FromKilograms, m => m.Kilograms),
    ];

    /// <summary>For product weighed out, from a spoonful to a bag.</summary>
    public static IReadOnlyList<UnitChoice<Mass>> ProductMass { get; } =
    [
        .. Mass,
        new("oz", "oz", Us, Engine.Units.Mass.FromOunces, m => m.Ounces),
        new("g", "g", Metric, Engine.Units.Mass.FromGrams, m => m.Grams),
    ];

    /// <summary>For product measured out, from a syringe to a jug.</summary>
    public static IReadOnlyList<UnitChoice<Volume>> ProductVolume { get; } =
    [
        new("floz", "fl oz", Us, Engine.Units.Volume.FromFluidOunces, v => v.FluidOunces),
        new("mL", "mL", Metric, Engine.Units.Volume.FromMilliliters, v => v.Milliliters),
        new("pt", "pt", Us, Engine.Units.Volume.FromPints, v => v.Pints),
        .. Volume,
    ];

    public static IReadOnlyList<UnitChoice<Speed>> Speed { get; } =
    [
        new("mph", "mph", Us, Engine.Units.Speed.FromMilesPerHour, s => s.MilesPerHour),
        new("kmh", "km/h", Metric, Engine.Units.Speed.FromKilometersPerHour, s => s.KilometersPerHour),
        new("ms", "m/s", Metric, Engine.Units.Speed.FromMetersPerSecond, s => s.MetersPerSecond),
    ];

    public static IReadOnlyList<UnitChoice<VolumePerArea>> Carrier { get; } =
    [
        new("galM", "gal per 1,000 sq ft", Us, VolumePerArea.FromGallonsPerThousandSquareFeet, v => v.GallonsPerThousandSquareFeet),
        new("L100", "L per 100 m²", Metric, v => VolumePerArea.FromLitersPerSquareMeter(v / 100.0), v => v.LitersPerSquareMeter * 100.0),
        new("galA", "gal per acre", Us, VolumePerArea.FromGallonsPerAcre, v => v.GallonsPerAcre),
        new("Lha", "L per ha", Metric, VolumePerArea.FromLitersPerHectare, v => v.LitersPerHectare),
    ];

    public static IReadOnlyList<UnitChoice<VolumePerArea>> LabelRate { get; } =
    [
        new("flozA", "fl oz per acre", Us, VolumePerArea.FromFluidOuncesPerAcre, v => v.FluidOuncesPerAcre),
        new("Lha", "L per ha", Metric, VolumePerArea.FromLitersPerHectare, v => v.LitersPerHectare),
        new("flozM", "fl oz per 1,000 sq ft", Us, VolumePerArea.FromFluidOuncesPerThousandSquareFeet, v => v.FluidOuncesPerThousandSquareFeet),
        new("mL100", "mL per 100 m²", Metric, v => VolumePerArea.FromMillilitersPerSquareMeter(v / 100.0), v => v.MillilitersPerSquareMeter * 100.0),
    ];

    /// <summary>For a dry product; a dry oz is an ounce by weight.</summary>
    public static IReadOnlyList<UnitChoice<MassPerArea>> WeighedRate { get; } =
    [
        new("ozA", "dry oz per acre", Us, v => MassPerArea.FromPoundsPerAcre(v / 16.0), m => m.PoundsPerAcre * 16.0),
        new("gha", "g per ha", Metric, v => MassPerArea.FromKilogramsPerHectare(v / 1000.0), m => m.KilogramsPerHectare * 1000.0),
        new("lbA", "lb per acre", Us, MassPerArea.FromPoundsPerAcre, m => m.PoundsPerAcre),
        new("ozM", "dry oz per 1,000 sq ft", Us, v => MassPerArea.FromPoundsPerThousandSquareFeet(v / 16.0), m => m.PoundsPerThousandSquareFeet * 16.0),
        new("g100", "g per 100 m²", Metric, v => MassPerArea.FromGramsPerSquareMeter(v / 100.0), m => m.GramsPerSquareMeter * 100.0),
        new("kgha", "kg per ha", Metric, MassPerArea.FromKilogramsPerHectare, m => m.KilogramsPerHectare),
    ];

    /// <summary>Degrees north; a southern one is typed without a sign.</summary>
    public static IReadOnlyList<UnitChoice<double>> Latitude { get; } =
    [
        new("N", "° north", Us, d => d, d => d),
        new("S", "° south", Metric, d => d < 0.0 ? d : -d, d => -d),
    ];

    /// <summary>Degrees east; a western one is typed with or without a sign.</summary>
    public static IReadOnlyList<UnitChoice<double>> Longitude { get; } =
    [
        new("W", "° west", Us, d => d < 0.0 ? d : -d, d => -d),
        new("E", "° east", Metric, d => d, d => d),
    ];
}
