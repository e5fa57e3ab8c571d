using System.Reflection;
using CsCheck;
using Seedfall.Engine.Units;
using Net = UnitsNet;

namespace Seedfall.Checks.Published.Units;

/// <summary>Every way into and out of a unit of the engine, against the conversions of the library UnitsNet (an outside oracle).</summary>
public sealed class UnitConversionChecks
{
    // The oracle rounds some factors (its acre is 4046.85642 m2), so agreement is asked to 2e-8.
    private const double Relative = 2e-8;

    private sealed record Conversion(string Name, Func<double, double> IntoCanonical, Func<double, double> BackOut, Func<double, double> Oracle);

    private static readonly double ThousandSquareFeetM2 = Net.Area.FromSquareFeet(1000).SquareMeters;

    private static readonly Conversion[] Conversions =
    [
        new("Area.FromSquareMeters", x => Area.FromSquareMeters(x).SquareMeters, x => x, x => x),
        new("Area.FromSquareFeet", x => Area.FromSquareFeet(x).SquareMeters, x => new Area(x).SquareFeet, x => Net.Area.FromSquareFeet(x).SquareMeters),
        new("Area.FromThousandSquareFeet", x => Area.FromThousandSquareFeet(x).SquareMeters, x => new Area(x).ThousandSquareFeet, x => Net.Area.FromSquareFeet(1000 * x).SquareMeters),
        new("Area.FromAcres", x => Area.FromAcres(x).SquareMeters, x => new Area(x).Acres, x => Net.Area.FromAcres(x).SquareMeters),
        new("Area.FromHectares", x => Area.FromHectares(x).SquareMeters, x => new Area(x).Hectares, x => Net.Area.FromHectares(x).SquareMeters),
        new("Depth.FromMillimeters", x => Depth.FromMillimeters(x).Millimeters, x => x, x => x),
        new("Depth.FromCentimeters", x => Depth.FromCentimeters(x).Millimeters, x => new Depth(x).Centimeters, x => Net.Length.FromCentimeters(x).Millimeters),
        new("Depth.FromInches", x => Depth.FromInches(x).Millimeters, x => new Depth(x).Inches, x => Net.Length.FromInches(x).Millimeters),
        new("FlowRate.FromLitersPerMinute", x => FlowRate.FromLitersPerMinute(x).LitersPerMinute, x => x, x => x),
        new("FlowRate.FromGallonsPerMinute", x => FlowRate.FromGallonsPerMinute(x).LitersPerMinute, x => new FlowRate(x).GallonsPerMinute, x => Net.VolumeFlow.FromUsGallonsPerMinute(x).LitersPerMinute),
        new("Length.FromMeters", x => Length.FromMeters(x).Meters, x => x, x => x),
        new("Length.FromCentimeters", x => Length.FromCentimeters(x).Meters, x => new Length(x).Centimeters, x => Net.Length.FromCentimeters(x).Meters),
        new("Length.FromFeet", x => Length.FromFeet(x).Meters, x => new Length(x).Feet, x => Net.Length.FromFeet(x).Meters),
        new("Length.FromInches", x => Length.FromInches(x).Meters, x => new Length(x).Inches, x => Net.Length.FromInches(x).Meters),
        new("Mass.FromKilograms", x => Mass.FromKilograms(x).Kilograms, x => x, x => x),
        new("Mass.FromGrams", x => Mass.FromGrams(x).Kilograms, x => new Mass(x).Grams, x => Net.Mass.FromGrams(x).Kilograms),
        new("Mass.FromPounds", x => Mass.FromPounds(x).Kilograms, x => new Mass(x).Pounds, x => Net.Mass.FromPounds(x).Kilograms),
        new("Mass.FromOunces", x => Mass.FromOunces(x).Kilograms, x => new Mass(x).Ounces, x => Net.Mass.FromOunces(x).Kilograms),
        new("MassPerArea.FromKilogramsPerSquareMeter", x => MassPerArea.FromKilogramsPerSquareMeter(x).KilogramsPerSquareMeter, x => x, x => x),
        new("MassPerArea.FromGramsPerSquareMeter", x => MassPerArea.FromGramsPerSquareMeter(x).KilogramsPerSquareMeter, x => new MassPerArea(x).GramsPerSquareMeter, x => Net.Mass.FromGrams(x).Kilograms),
        new("MassPerArea.FromKilogramsPerHectare", x => MassPerArea.FromKilogramsPerHectare(x).KilogramsPerSquareMeter, x => new MassPerArea(x).KilogramsPerHectare, x => x / Net.Area.FromHectares(1).SquareMeters),
        new("MassPerArea.FromPoundsPerThousandSquareFeet", x => MassPerArea.FromPoundsPerThousandSquareFeet(x).KilogramsPerSquareMeter, x => new MassPerArea(x).PoundsPerThousandSquareFeet, x => Net.Mass.FromPounds(x).Kilograms / ThousandSquareFeetM2),
        new("MassPerArea.FromPoundsPerAcre", x => MassPerArea.FromPoundsPerAcre(x).KilogramsPerSquareMeter, x => new MassPerArea(x).PoundsPerAcre, x => Net.Mass.FromPounds(x).Kilograms / Net.Area.FromAcres(1).SquareMeters),
        new("PrecipitationRate.FromMillimetersPerHour", x => PrecipitationRate.FromMillimetersPerHour(x).MillimetersPerHour, x => x, x => x),
        new("PrecipitationRate.FromInchesPerHour", x => PrecipitationRate.FromInchesPerHour(x).MillimetersPerHour, x => new PrecipitationRate(x).InchesPerHour, x => Net.Speed.FromInchesPerHour(x).MillimetersPerHour),
        new("Pressure.FromKilopascals", x => Pressure.FromKilopascals(x).Kilopascals, x => x, x => x),
        new("Pressure.FromPoundsPerSquareInch", x => Pressure.FromPoundsPerSquareInch(x).Kilopascals, x => new Pressure(x).PoundsPerSquareInch, x => Net.Pressure.FromPoundsForcePerSquareInch(x).Kilopascals),
        new("Pressure.FromBars", x => Pressure.FromBars(x).Kilopascals, x => new Pressure(x).Bars, x => Net.Pressure.FromBars(x).Kilopascals),
        new("Speed.FromMetersPerSecond", x => Speed.FromMetersPerSecond(x).MetersPerSecond, x => x, x => x),
        new("Speed.FromMilesPerHour", x => Speed.FromMilesPerHour(x).MetersPerSecond, x => new Speed(x).MilesPerHour, x => Net.Speed.FromMilesPerHour(x).MetersPerSecond),
        new("Speed.FromKilometersPerHour", x => Speed.FromKilometersPerHour(x).MetersPerSecond, x => new Speed(x).KilometersPerHour, x => Net.Speed.FromKilometersPerHour(x).MetersPerSecond),
        new("Temperature.FromCelsius", x => Temperature.FromCelsius(x).Celsius, x => new Temperature(x).Kelvin - 273.15, x => Net.Temperature.FromDegreesCelsius(x).DegreesCelsius),
        new("Temperature.FromFahrenheit", x => Temperature.FromFahrenheit(x).Celsius, x => new Temperature(x).Fahrenheit, x => Net.Temperature.FromDegreesFahrenheit(x).DegreesCelsius),
        new("Volume.FromLiters", x => Volume.FromLiters(x).Liters, x => x, x => x),
        new("Volume.FromMilliliters", x => Volume.FromMilliliters(x).Liters, x => new Volume(x).Milliliters, x => Net.Volume.FromMilliliters(x).Liters),
        new("Volume.FromCubicMeters", x => Volume.FromCubicMeters(x).Liters, x => new Volume(x).CubicMeters, x => Net.Volume.FromCubicMeters(x).Liters),
        new("Volume.FromGallons", x => Volume.FromGallons(x).Liters, x => new Volume(x).Gallons, x => Net.Volume.FromUsGallons(x).Liters),
        new("Volume.FromFluidOunces", x => Volume.FromFluidOunces(x).Liters, x => new Volume(x).FluidOunces, x => Net.Volume.FromUsOunces(x).Liters),
        new("Volume.FromPints", x => Volume.FromPints(x).Liters, x => new Volume(x).Pints, x => Net.Volume.FromUsPints(x).Liters),
        new("Volume.FromQuarts", x => Volume.FromQuarts(x).Liters, x => new Volume(x).Quarts, x => Net.Volume.FromUsQuarts(x).Liters),
        new("Volume.FromCubicYards", x => Volume.FromCubicYards(x).Liters, x => new Volume(x).CubicYards, x => Net.Volume.FromCubicYards(x).Liters),
        new("VolumePerArea.FromLitersPerSquareMeter", x => VolumePerArea.FromLitersPerSquareMeter(x).LitersPerSquareMeter, x => x, x => x),
        new("VolumePerArea.FromLitersPerHectare", x => VolumePerArea.FromLitersPerHectare(x).LitersPerSquareMeter, x => new VolumePerArea(x).LitersPerHectare, x => x / Net.Area.FromHectares(1).SquareMeters),
        new("VolumePerArea.FromGallonsPerThousandSquareFeet", x => VolumePerArea.FromGallonsPerThousandSquareFeet(x).LitersPerSquareMeter, x => new VolumePerArea(x).GallonsPerThousandSquareFeet, x => Net.Volume.FromUsGallons(x).Liters / ThousandSquareFeetM2),
        new("VolumePerArea.FromGallonsPerAcre", x => VolumePerArea.FromGallonsPerAcre(x).LitersPerSquareMeter, x => new VolumePerArea(x).GallonsPerAcre, x => Net.Volume.FromUsGallons(x).Liters / Net.Area.FromAcres(1).SquareMeters),
        new("VolumePerArea.FromFluidOuncesPerAcre", x => VolumePerArea.FromFluidOuncesPerAcre(x).LitersPerSquareMeter, x => new VolumePerArea(x).FluidOuncesPerAcre, x => Net.Volume.FromUsOunces(x).Liters / Net.Area.FromAcres(1).SquareMeters),
        new("VolumePerArea.FromFluidOuncesPerThousandSquareFeet", x => VolumePerArea.FromFluidOuncesPerThousandSquareFeet(x).LitersPerSquareMeter, x => new VolumePerArea(x).FluidOuncesPerThousandSquareFeet, x => Net.Volume.FromUsOunces(x).Liters / ThousandSquareFeetM2),
        new("VolumePerArea.FromMillilitersPerSquareMeter", x => VolumePerArea.FromMillilitersPerSquareMeter(x).LitersPerSquareMeter, x => new VolumePerArea(x).MillilitersPerSquareMeter, x => Net.Volume.FromMilliliters(x).Liters),
        new("Fraction.FromPercent", x => Fraction.FromPercent(Math.Clamp(x, 0, 100)).Value, x => new Fraction(x).Percent, x => Net.Ratio.FromPercent(Math.Clamp(x, 0, 100)).DecimalFractions),
        new("Fraction.Of", x => Fraction.Of(Math.Clamp(x, 0, 1)).Value, x => x, x => Math.Clamp(x, 0, 1)),
    ];

    public static TheoryData<string> Names => [.. Conversions.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void AgreesWithTheOracleAndComesBack(string name)
    {
        var conversion = Conversions.Single(c => c.Name == name);
        Gen.Double[0.001, 100_000.0].Sample(x =>
        {
            var canonical = conversion.IntoCanonical(x);
            var expected = conversion.Oracle(x);
            Assert.True(Math.Abs(canonical - expected) <= Relative * Math.Max(1.0, Math.Abs(expected)), $"{name}({x}) = {canonical}, oracle {expected}");
            var bounded = name.StartsWith("Fraction", StringComparison.Ordinal) ? Math.Clamp(x, 0, name.EndsWith("Of", StringComparison.Ordinal) ? 1 : 100) : x;
            Assert.Equal(bounded, conversion.BackOut(canonical), 1e-9 * Math.Max(1.0, bounded));
        });
    }

    [Fact]
    public void NoUnitOfTheEngineIsLeftOut()
    {
        var declared = typeof(Depth).Assembly.GetTypes()
            .Where(t => t is { IsPublic: true, IsValueType: true, IsEnum: false, Namespace: "Seedfall.Engine.Units" })
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
                .Where(m => m.ReturnType == t && m.GetParameters() is [{ ParameterType: var p }] && p == typeof(double) && !m.IsSpecialName)
                .Select(m => $"{t.Name}.{m.Name}"))
            .Order();
        Assert.Equal(declared, Conversions.Select(c => c.Name).Order());
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void NothingButNumbersComesIn(double value)
    {
        foreach (var conversion in Conversions.Where(c => c.Name is not ("Fraction.Of" or "Fraction.FromPercent")))
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => conversion.IntoCanonical(value));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Fraction.Of(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fraction.FromPercent(value));
    }
}
