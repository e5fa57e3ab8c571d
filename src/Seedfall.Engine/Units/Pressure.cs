namespace Seedfall.Engine.Units;

/// <summary>A pressure. Canonical unit: kilopascal.</summary>
/// <param name="Kilopascals">The value in kPa; finite.</param>
public readonly record struct Pressure(double Kilopascals) : IComparable<Pressure>
{
    public static Pressure Zero => default;

    private const double KilopascalsPerOnePoundsPerSquareInch = 6.894757293168361;

    private const double KilopascalsPerOneBars = 100;

    /// <summary>From kPa; throws when the value is not a finite number.</summary>
    public static Pressure FromKilopascals(double value) => new(Finite.Require(value, "kPa"));

    /// <summary>From psi; throws when the value is not a finite number.</summary>
    public static Pressure FromPoundsPerSquareInch(double value) => new(Finite.Require(value, "psi") * KilopascalsPerOnePoundsPerSquareInch);

    /// <summary>The value in psi.</summary>
    public double PoundsPerSquareInch => Kilopascals / KilopascalsPerOnePoundsPerSquareInch;

    /// <summary>From bar; throws when the value is not a finite number.</summary>
    public static Pressure FromBars(double value) => new(Finite.Require(value, "bar") * KilopascalsPerOneBars);

    /// <summary>The value in bar.</summary>
    public double Bars => Kilopascals / KilopascalsPerOneBars;

    public static Pressure operator +(Pressure a, Pressure b) => new(a.Kilopascals + b.Kilopascals);

    public static Pressure operator -(Pressure a, Pressure b) => new(a.Kilopascals - b.Kilopascals);

    public static Pressure operator *(Pressure a, double factor) => new(a.Kilopascals * factor);

    public static double operator /(Pressure a, Pressure b) => a.Kilopascals / b.Kilopascals;

    public static Pressure operator /(Pressure a, double divisor) => new(a.Kilopascals / divisor);

    public static bool operator <(Pressure a, Pressure b) => a.Kilopascals < b.Kilopascals;

    public static bool operator >(Pressure a, Pressure b) => a.Kilopascals > b.Kilopascals;

    public static bool operator <=(Pressure a, Pressure b) => a.Kilopascals <= b.Kilopascals;

    public static bool operator >=(Pressure a, Pressure b) => a.Kilopascals >= b.Kilopascals;

    public int CompareTo(Pressure other) => Kilopascals.CompareTo(other.Kilopascals);

    public override string ToString() => FormattableString.Invariant($"{Kilopascals} kPa");
}
