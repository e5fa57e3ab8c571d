namespace Seedfall.Engine.Units;

/// <summary>A depth of water, rain or soil. Canonical unit: millimeter.</summary>
/// <param name="Millimeters">The value in mm; finite.</param>
public readonly record struct Depth(double Millimeters) : IComparable<Depth>
{
    public static Depth Zero => default;

    private const double MillimetersPerOneCentimeters = 10;

    private const double MillimetersPerOneInches = 25.4;

    /// <summary>From mm; throws when the value is not a finite number.</summary>
    public static Depth FromMillimeters(double value) => new(Finite.Require(value, "mm"));

    /// <summary>From cm; throws when the value is not a finite number.</summary>
    public static Depth FromCentimeters(double value) => new(Finite.Require(value, "cm") * MillimetersPerOneCentimeters);

    /// <summary>The value in cm.</summary>
    public double Centimeters => Millimeters / MillimetersPerOneCentimeters;

    /// <summary>From in; throws when the value is not a finite number.</summary>
    public static Depth FromInches(double value) => new(Finite.Require(value, "in") * MillimetersPerOneInches);

    /// <summary>The value in in.</summary>
    public double Inches => Millimeters / MillimetersPerOneInches;

    public static Depth operator +(Depth a, Depth b) => new(a.Millimeters + b.Millimeters);

    public static Depth operator -(Depth a, Depth b) => new(a.Millimeters - b.Millimeters);

    public static Depth operator *(Depth a, double factor) => new(a.Millimeters * factor);

    public static double operator /(Depth a, Depth b) => a.Millimeters / b.Millimeters;

    public static Depth operator /(Depth a, double divisor) => new(a.Millimeters / divisor);

    public static bool operator <(Depth a, Depth b) => a.Millimeters < b.Millimeters;

    public static bool operator >(Depth a, Depth b) => a.Millimeters > b.Millimeters;

    public static bool operator <=(Depth a, Depth b) => a.Millimeters <= b.Millimeters;

    public static bool operator >=(Depth a, Depth b) => a.Millimeters >= b.Millimeters;

    public int CompareTo(Depth other) => Millimeters.CompareTo(other.Millimeters);

    public override string ToString() => FormattableString.Invariant($"{Millimeters} mm");
}
