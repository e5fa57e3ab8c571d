namespace Seedfall.Engine.Units;

/// <summary>A ground area. Canonical unit: square meter.</summary>
/// <param name="SquareMeters">The value in m2; finite.</param>
public readonly record struct Area(double SquareMeters) : IComparable<Area>
{
    public static Area Zero => default;

    private const double SquareMetersPerOneSquareFeet = 0.09290304;

    private const double SquareMetersPerOneThousandSquareFeet = 92.90304;

    private const double SquareMetersPerOneAcres = 4046.8564224;

    private const double SquareMetersPerOneHectares = 10000;

    /// <summary>From m2; throws when the value is not a finite number.</summary>
    public static Area FromSquareMeters(double value) => new(Finite.Require(value, "m2"));

    /// <summary>From sq ft; throws when the value is not a finite number.</summary>
    public static Area FromSquareFeet(double value) => new(Finite.Require(value, "sq ft") * SquareMetersPerOneSquareFeet);

    /// <summary>The value in sq ft.</summary>
    public double SquareFeet => SquareMeters / SquareMetersPerOneSquareFeet;

    /// <summary>From M (1,000 sq ft); throws when the value is not a finite number.</summary>
    public static Area FromThousandSquareFeet(double value) => new(Finite.Require(value, "M (1,000 sq ft)") * SquareMetersPerOneThousandSquareFeet);

    /// <summary>The value in M (1,000 sq ft).</summary>
    public double ThousandSquareFeet => SquareMeters / SquareMetersPerOneThousandSquareFeet;

    /// <summary>From acre; throws when the value is not a finite number.</summary>
    public static Area FromAcres(double value) => new(Finite.Require(value, "acre") * SquareMetersPerOneAcres);

    /// <summary>The value in acre.</summary>
    public double Acres => SquareMeters / SquareMetersPerOneAcres;

    /// <summary>From ha; throws when the value is not a finite number.</summary>
    public static Area FromHectares(double value) => new(Finite.Require(value, "ha") * SquareMetersPerOneHectares);

    /// <summary>The value in ha.</summary>
    public double Hectares => SquareMeters / SquareMetersPerOneHectares;

    public static Area operator +(Area a, Area b) => new(a.SquareMeters + b.SquareMeters);

    public static Area operator -(Area a, Area b) => new(a.SquareMeters - b.SquareMeters);

    public static Area operator *(Area a, double factor) => new(a.SquareMeters * factor);

    public static double operator /(Area a, Area b) => a.SquareMeters / b.SquareMeters;

    public static Area operator /(Area a, double divisor) => new(a.SquareMeters / divisor);

    public static bool operator <(Area a, Area b) => a.SquareMeters < b.SquareMeters;

    public static bool operator >(Area a, Area b) => a.SquareMeters > b.SquareMeters;

    public static bool operator <=(Area a, Area b) => a.SquareMeters <= b.SquareMeters;

    public static bool operator >=(Area a, Area b) => a.SquareMeters >= b.SquareMeters;

    public int CompareTo(Area other) => SquareMeters.CompareTo(other.SquareMeters);

    public override string ToString() => FormattableString.Invariant($"{SquareMeters} m2");
}
