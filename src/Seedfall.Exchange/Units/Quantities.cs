using Seedfall.Engine.Units;

namespace Seedfall.Exchange.Units;

/// <summary>The quantities of a lawn file and the units they may be written in, the usual one first.</summary>
public static class Quantities
{
    public static readonly QuantityText<Area> Area = Positive<Area>(
        "an area",
        new("sq ft", Engine.Units.Area.FromSquareFeet, v => v.SquareFeet, "ft2", "sqft"),
        new("acre", Engine.Units.Area.FromAcres, v => v.Acres, "acres"),
        new("ha", Engine.Units.Area.FromHectares, v => v.Hectares),
        new("m2", Engine.Units.Area.FromSquareMeters, v => v.SquareMeters, "sq m"));

    public static readonly QuantityText<Length> Length = Positive<Length>(
        "a length",
        new("ft", Engine.Units.Length.FromFeet, v => v.Feet),
        new("in", Engine.Units.Length.FromInches, v => v.Inches),
        new("cm", Engine.Units.Length.FromCentimeters, v => v.Centimeters),
        new("m", Engine.Units.Length.FromMeters, v => v.Meters));

    public static readonly QuantityText<Depth> Depth = Positive<Depth>(
        "a depth",
        new("in", Engine.Units.Depth.FromInches, v => v.Inches),
        new("cm", Engine.Units.Depth.FromCentimeters, v => v.Centimeters),
        new("mm", Engine.Units.Depth.FromMillimeters, v => v.Millimeters));

    public static readonly QuantityText<Mass> Mass = Positive<Mass>(
        "a weight",
        new("lb", Engine.Units.Mass.FromPounds, v => v.Pounds),
        new("oz", Engine.Units.Mass.FromOunces, v => v.Ounces),
        new("g", Engine.Units.Mass.FromGrams, v => v.Grams),
        new("kg", Engine.Units.Mass.FromKilograms, v => v.Kilograms));

    public static readonly QuantityText<Volume> Volume = Positive<Volume>(
        "a volume",
        new("gal", Engine.Units.Volume.FromGallons, v => v.Gallons),
        new("qt", Engine.Units.Volume.FromQuarts, v => v.Quarts),
        new("pt", Engine.Units.Volume.FromPints, v => v.Pints),
        new("fl oz", Engine.Units.Volume.FromFluidOunces, v => v.FluidOunces),
        new("cu yd", Engine.Units.Volume.FromCubicYards, v => v.CubicYards),
        new("mL", Engine.Units.Volume.FromMilliliters, v => v.Milliliters),
        new("L", Engine.Units.Volume.FromLiters, v => v.Liters));

    public static readonly QuantityText<FlowRate> Flow = Positive<FlowRate>(
        "a flow",
        new("gpm", FlowRate.FromGallonsPerMinute, v => v.GallonsPerMinute, "gal/min"),
        new("L/min", FlowRate.FromLitersPerMinute, v => v.LitersPerMinute));

    public static readonly QuantityText<Pressure> Pressure = Positive<Pressure>(
        "a pressure",
        new("psi", Engine.Units.Pressure.FromPoundsPerSquareInch, v => v.PoundsPerSquareInch),
        new("bar", Engine.Units.Pressure.FromBars, v => v.Bars),
        new("kPa", Engine.Units.Pressure.FromKilopascals, v => v.Kilopascals));

    public static readonly QuantityText<PrecipitationRate> PrecipitationRate = Positive<PrecipitationRate>(
        "a precipitation rate",
        new("in/h", Engine.Units.PrecipitationRate.FromInchesPerHour, v => v.InchesPerHour),
        new("mm/h", Engine.Units.PrecipitationRate.FromMillimetersPerHour, v => v.MillimetersPerHour));

    public static readonly QuantityText<Speed> Speed = Positive<Speed>(
        "a speed",
        new("mph", Engine.Units.Speed.FromMilesPerHour, v => v.MilesPerHour),
        new("km/h", Engine.Units.Speed.FromKilometersPerHour, v => v.KilometersPerHour),
        new("m/s", Engine.Units.Speed.FromMetersPerSecond, v => v.MetersPerSecond));

    /// <summary>Liquid on the ground; M stands for 1,000 sq ft.</summary>
    public static readonly QuantityText<VolumePerArea> LiquidRate = Positive<VolumePerArea>(
        "a liquid rate",
        new("fl oz/acre", VolumePerArea.FromFluidOuncesPerAcre, v => v.FluidOuncesPerAcre),
        new("gal/M", VolumePerArea.FromGallonsPerThousandSquareFeet, v => v.GallonsPerThousandSquareFeet),
        new("fl oz/M", VolumePerArea.FromFluidOuncesPerThousandSquareFeet, v => v.FluidOuncesPerThousandSquareFeet),
        new("gal/acre", VolumePerArea.FromGallonsPerAcre, v => v.GallonsPerAcre),
        new("L/ha", VolumePerArea.FromLitersPerHectare, v => v.LitersPerHectare),
        new("mL/m2", VolumePerArea.FromMillilitersPerSquareMeter, v => v.MillilitersPerSquareMeter),
        new("L/m2", VolumePerArea.FromLitersPerSquareMeter, v => v.LitersPerSquareMeter));

    /// <summary>Dry material on the ground; M stands for 1,000 sq ft.</summary>
    public static readonly QuantityText<MassPerArea> DryRate = Positive<MassPerArea>(
        "a dry rate",
        new("lb/M", MassPerArea.FromPoundsPerThousandSquareFeet, v => v.PoundsPerThousandSquareFeet),
        new("lb/acre", MassPerArea.FromPoundsPerAcre, v => v.PoundsPerAcre),
        new("kg/ha", MassPerArea.FromKilogramsPerHectare, v => v.KilogramsPerHectare),
        new("g/m2", MassPerArea.FromGramsPerSquareMeter, v => v.GramsPerSquareMeter),
        new("kg/m2", MassPerArea.FromKilogramsPerSquareMeter, v => v.KilogramsPerSquareMeter));

    /// <summary>A share: percent, or "of 1" where percent cannot carry every digit.</summary>
    public static readonly QuantityText<Fraction> Share = new(
        "a percentage",
        0.0,
        1.0,
        new("%", Fraction.FromPercent, v => v.Percent),
        new("of 1", Fraction.Of, v => v.Value));

    /// <summary>Meters above sea level.</summary>
    public static readonly QuantityText<double> Elevation = new(
        "an elevation",
        -430.0,
        9000.0,
        new("ft", v => Engine.Units.Length.FromFeet(v).Meters, v => new Length(v).Feet),
        new("m", v => v, v => v));

    /// <summary>Rise over run in percent.</summary>
    public static readonly QuantityText<double> Slope = new("a slope", 0.0, 200.0, new UnitName<double>("%", v => v, v => v));

    public static readonly QuantityText<double> SunHours = new("hours of sun", 0.0, 24.0, new UnitName<double>("h", v => v, v => v));

    public static readonly QuantityText<double> Seconds = Numbers("seconds", ("min", 60.0), ("s", 1.0));

    public static readonly QuantityText<double> Minutes = Numbers("minutes", ("h", 60.0), ("min", 1.0));

    /// <summary>Temperature on a scale; may be below zero.</summary>
    public static readonly QuantityText<Temperature> Temperature = new(
        "a temperature",
        -100.0,
        1000.0,
        new("degF", Engine.Units.Temperature.FromFahrenheit, v => v.Fahrenheit),
        new("degC", Engine.Units.Temperature.FromCelsius, v => v.Celsius));

    public static readonly QuantityText<double> PartsPerMillion = Numbers("a soil test value", ("mg/kg", 1.0), ("ppm", 1.0));

    public static readonly QuantityText<double> CationExchange = Numbers("a cation exchange capacity", ("cmol/kg", 1.0), ("meq/100 g", 1.0));

    public static readonly QuantityText<double> Salts = Numbers("soluble salts", ("mmho/cm", 1.0), ("dS/m", 1.0));

    public static readonly QuantityText<double> PerSquareFoot = Numbers("a count", ("per m2", 0.09290304), ("per sq ft", 1.0));

    public static readonly QuantityText<double> SeedsPerKilogram = Numbers("a seed count", ("per lb", 1.0 / 0.45359237), ("per g", 1000.0), ("per kg", 1.0));

    /// <summary>Active ingredient in a liquid product, kg/L.</summary>
    public static readonly QuantityText<double> Strength = Numbers("a strength", ("lb/gal", 0.45359237 / 3.785411784), ("g/L", 0.001), ("kg/L", 1.0));

    private static QuantityText<T> Positive<T>(string name, params UnitName<T>[] units)
        where T : notnull =>
        new(name, 0.0, double.MaxValue, units);

    private static QuantityText<double> Numbers(string name, params (string Unit, double Factor)[] units) =>
        new(name, 0.0, double.MaxValue, [.. units.Select(u => new UnitName<double>(u.Unit, v => v * u.Factor, v => v / u.Factor))]);
}
