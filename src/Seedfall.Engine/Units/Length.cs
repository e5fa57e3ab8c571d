namespace Seedfall.Engine.Units;

/// <summary>A distance or a height. Canonical unit: meter.</summary>
/// <param name="Meters">The value in m; finite.</param>
public readonly record struct Length(double Meters) : IComparable<Length>
{
    public static Length Zero => default;

    private const double MetersPerOneCentimeters = 0.01;

    private const double MetersPerOneFeet = 0.3048;

    private const double MetersPerOneInches = 0.0254;

    /// <summary>From m; throws when the value is not a finite number.</summary>
    public static Length FromMeters(double value) => new(Finite.Require(value, "m"));

    /// <summary>From cm; throws when the value is not a finite number.</summary>
    public static Length FromCentimeters(double value) => new(Finite.Require(value, "cm") * MetersPerOneCentimeters);

    /// <summary>The value in cm.</summary>
    public double Centimeters => Meters / MetersPerOneCentimeters;

    /// <summary>From ft; throws when the value is not a finite number.</summary>
    public static Length FromFeet(double value) => new(Finite.Require(value, "ft") * MetersPerOneFeet);

    /// <summary>The value in ft.</summary>
    public double Feet => Meters / MetersPerOneFeet;

    /// <summary>From in; throws when the value is not a finite number.</summary>
    public static Length FromInches(double value) => new(Finite.Require(value, "in") * MetersPerOneInches);

    /// <summary>The value in in.</summary>
    public double Inches => Meters / MetersPerOneInches;

    public static Length operator +(Length a, Length b) => new(a.Meters + b.Meters);

    public static Length operator -(Length a, Length b) => new(a.Meters - b.Meters);

    public static Length operator *(Length a, double factor) => new(a.Meters * factor);

    public static double operator /(Length a, Length b) => a.Meters / b.Meters;

    public static Length operator /(Length a, double divisor) => new(a.Meters / divisor);

    public static bool operator <(Length a, Length b) => a.Meters < b.Meters;

    public static bool operator >(Length a, Length b) => a.Meters > b.Meters;

    public static bool operator <=(Length a, Length b) => a.Meters <= b.Meters;

    public static bool operator >=(Length a, Length b) => a.Meters >= b.Meters;

    public int CompareTo(Length other) => Meters.CompareTo(other.Meters);

    public override string ToString() => FormattableString.Invariant($"{Meters} m");
}
