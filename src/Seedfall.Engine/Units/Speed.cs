namespace Seedfall.Engine.Units;

/// <summary>A speed of wind or walking. Canonical unit: meter per second.</summary>
/// <param name="MetersPerSecond">The value in m/s; finite.</param>
public readonly record struct Speed(double MetersPerSecond) : IComparable<Speed>
{
    public static Speed Zero => default;

    private const double MetersPerSecondPerOneMilesPerHour = 0.44704;

    private const double MetersPerSecondPerOneKilometersPerHour = 1 / 3.6;

    /// <summary>From m/s; throws when the value is not a finite number.</summary>
    public static Speed FromMetersPerSecond(double value) => new(Finite.Require(value, "m/s"));

    /// <summary>From mph; throws when the value is not a finite number.</summary>
    public static Speed FromMilesPerHour(double value) => new(Finite.Require(value, "mph") * MetersPerSecondPerOneMilesPerHour);

    /// <summary>The value in mph.</summary>
    public double MilesPerHour => MetersPerSecond / MetersPerSecondPerOneMilesPerHour;

    /// <summary>From km/h; throws when the value is not a finite number.</summary>
    public static Speed FromKilometersPerHour(double value) => new(Finite.Require(value, "km/h") * MetersPerSecondPerOneKilometersPerHour);

    /// <summary>The value in km/h.</summary>
    public double KilometersPerHour => MetersPerSecond / MetersPerSecondPerOneKilometersPerHour;

    public static Speed operator +(Speed a, Speed b) => new(a.MetersPerSecond + b.MetersPerSecond);

    public static Speed operator -(Speed a, Speed b) => new(a.MetersPerSecond - b.MetersPerSecond);

    public static Speed operator *(Speed a, double factor) => new(a.MetersPerSecond * factor);

    public static double operator /(Speed a, Speed b) => a.MetersPerSecond / b.MetersPerSecond;

    public static Speed operator /(Speed a, double divisor) => new(a.MetersPerSecond / divisor);

    public static bool operator <(Speed a, Speed b) => a.MetersPerSecond < b.MetersPerSecond;

    public static bool operator >(Speed a, Speed b) => a.MetersPerSecond > b.MetersPerSecond;

    public static bool operator <=(Speed a, Speed b) => a.MetersPerSecond <= b.MetersPerSecond;

    public static bool operator >=(Speed a, Speed b) => a.MetersPerSecond >= b.MetersPerSecond;

    public int CompareTo(Speed other) => MetersPerSecond.CompareTo(other.MetersPerSecond);

    public override string ToString() => FormattableString.Invariant($"{MetersPerSecond} m/s");
}
