namespace Seedfall.Engine.Units;

/// <summary>A mass. Canonical unit: kilogram.</summary>
/// <param name="Kilograms">The value in kg; finite.</param>
public readonly record struct Mass(double Kilograms) : IComparable<Mass>
{
    public static Mass Zero => default;

    private const double KilogramsPerOneGrams = 0.001;

    private const double KilogramsPerOnePounds = 0.45359237;

    private const double KilogramsPerOneOunces = 0.028349523125;

    /// <summary>From kg; throws when the value is not a finite number.</summary>
    public static Mass FromKilograms(double value) => new(Finite.Require(value, "kg"));

    /// <summary>From g; throws when the value is not a finite number.</summary>
    public static Mass FromGrams(double value) => new(Finite.Require(value, "g") * KilogramsPerOneGrams);

    /// <summary>The value in g.</summary>
    public double Grams => Kilograms / KilogramsPerOneGrams;

    /// <summary>From lb; throws when the value is not a finite number.</summary>
    public static Mass FromPounds(double value) => new(Finite.Require(value, "lb") * KilogramsPerOnePounds);

    /// <summary>The value in lb.</summary>
    public double Pounds => Kilograms / KilogramsPerOnePounds;

    /// <summary>From oz; throws when the value is not a finite number.</summary>
    public static Mass FromOunces(double value) => new(Finite.Require(value, "oz") * KilogramsPerOneOunces);

    /// <summary>The value in oz.</summary>
    public double Ounces => Kilograms / KilogramsPerOneOunces;

    public static Mass operator +(Mass a, Mass b) => new(a.Kilograms + b.Kilograms);

    public static Mass operator -(Mass a, Mass b) => new(a.Kilograms - b.Kilograms);

    public static Mass operator *(Mass a, double factor) => new(a.Kilograms * factor);

    public static double operator /(Mass a, Mass b) => a.Kilograms / b.Kilograms;

    public static Mass operator /(Mass a, double divisor) => new(a.Kilograms / divisor);

    public static bool operator <(Mass a, Mass b) => a.Kilograms < b.Kilograms;

    public static bool operator >(Mass a, Mass b) => a.Kilograms > b.Kilograms;

    public static bool operator <=(Mass a, Mass b) => a.Kilograms <= b.Kilograms;

    public static bool operator >=(Mass a, Mass b) => a.Kilograms >= b.Kilograms;

    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    public override string ToString() => FormattableString.Invariant($"{Kilograms} kg");
}
