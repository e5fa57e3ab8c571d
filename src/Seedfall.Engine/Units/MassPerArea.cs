namespace Seedfall.Engine.Units;

/// <summary>A rate of dry material on the ground. Canonical unit: kilogram per square meter.</summary>
/// <param name="KilogramsPerSquareMeter">The value in kg/m2; finite.</param>
public readonly record struct MassPerArea(double KilogramsPerSquareMeter) : IComparable<MassPerArea>
{
    public static MassPerArea Zero => default;

    private const double KilogramsPerSquareMeterPerOneGramsPerSquareMeter = 0.001;

    private const double KilogramsPerSquareMeterPerOneKilogramsPerHectare = 0.0001;

    private const double KilogramsPerSquareMeterPerOnePoundsPerThousandSquareFeet = 0.45359237 / 92.90304;

    private const double KilogramsPerSquareMeterPerOnePoundsPerAcre = 0.45359237 / 4046.8564224;

    /// <summary>From kg/m2; throws when the value is not a finite number.</summary>
    public static MassPerArea FromKilogramsPerSquareMeter(double value) => new(Finite.Require(value, "kg/m2"));

    /// <summary>From g/m2; throws when the value is not a finite number.</summary>
    public static MassPerArea FromGramsPerSquareMeter(double value) => new(Finite.Require(value, "g/m2") * KilogramsPerSquareMeterPerOneGramsPerSquareMeter);

    /// <summary>The value in g/m2.</summary>
    public double GramsPerSquareMeter => KilogramsPerSquareMeter / KilogramsPerSquareMeterPerOneGramsPerSquareMeter;

    /// <summary>From kg/ha; throws when the value is not a finite number.</summary>
    public static MassPerArea FromKilogramsPerHectare(double value) => new(Finite.Require(value, "kg/ha") * KilogramsPerSquareMeterPerOneKilogramsPerHectare);

    /// <summary>The value in kg/ha.</summary>
    public double KilogramsPerHectare => KilogramsPerSquareMeter / KilogramsPerSquareMeterPerOneKilogramsPerHectare;

    /// <summary>From lb/M; throws when the value is not a finite number.</summary>
    public static MassPerArea FromPoundsPerThousandSquareFeet(double value) => new(Finite.Require(value, "lb/M") * KilogramsPerSquareMeterPerOnePoundsPerThousandSquareFeet);

    /// <summary>The value in lb/M.</summary>
    public double PoundsPerThousandSquareFeet => KilogramsPerSquareMeter / KilogramsPerSquareMeterPerOnePoundsPerThousandSquareFeet;

    /// <summary>From lb/acre; throws when the value is not a finite number.</summary>
    public static MassPerArea FromPoundsPerAcre(double value) => new(Finite.Require(value, "lb/acre") * KilogramsPerSquareMeterPerOnePoundsPerAcre);

    /// <summary>The value in lb/acre.</summary>
    public double PoundsPerAcre => KilogramsPerSquareMeter / KilogramsPerSquareMeterPerOnePoundsPerAcre;

    public static MassPerArea operator +(MassPerArea a, MassPerArea b) => new(a.KilogramsPerSquareMeter + b.KilogramsPerSquareMeter);

    public static MassPerArea operator -(MassPerArea a, MassPerArea b) => new(a.KilogramsPerSquareMeter - b.KilogramsPerSquareMeter);

    public static MassPerArea operator *(MassPerArea a, double factor) => new(a.KilogramsPerSquareMeter * factor);

    public static double operator /(MassPerArea a, MassPerArea b) => a.KilogramsPerSquareMeter / b.KilogramsPerSquareMeter;

    public static MassPerArea operator /(MassPerArea a, double divisor) => new(a.KilogramsPerSquareMeter / divisor);

    public static bool operator <(MassPerArea a, MassPerArea b) => a.KilogramsPerSquareMeter < b.KilogramsPerSquareMeter;

    public static bool operator >(MassPerArea a, MassPerArea b) => a.KilogramsPerSquareMeter > b.KilogramsPerSquareMeter;

    public static bool operator <=(MassPerArea a, MassPerArea b) => a.KilogramsPerSquareMeter <= b.KilogramsPerSquareMeter;

    public static bool operator >=(MassPerArea a, MassPerArea b) => a.KilogramsPerSquareMeter >= b.KilogramsPerSquareMeter;

    public int CompareTo(MassPerArea other) => KilogramsPerSquareMeter.CompareTo(other.KilogramsPerSquareMeter);

    public override string ToString() => FormattableString.Invariant($"{KilogramsPerSquareMeter} kg/m2");
}
