namespace Seedfall.Engine.Units;

/// <summary>A rate of liquid on the ground. Canonical unit: liter per square meter.</summary>
/// <param name="LitersPerSquareMeter">The value in L/m2; finite.</param>
public readonly record struct VolumePerArea(double LitersPerSquareMeter) : IComparable<VolumePerArea>
{
    public static VolumePerArea Zero => default;

    private const double LitersPerSquareMeterPerOneLitersPerHectare = 0.0001;

    private const double LitersPerSquareMeterPerOneGallonsPerThousandSquareFeet = 3.785411784 / 92.90304;

    private const double LitersPerSquareMeterPerOneGallonsPerAcre = 3.785411784 / 4046.8564224;

    private const double LitersPerSquareMeterPerOneFluidOuncesPerAcre = 0.0295735295625 / 4046.8564224;

    private const double LitersPerSquareMeterPerOneFluidOuncesPerThousandSquareFeet = 0.0295735295625 / 92.90304;

    private const double LitersPerSquareMeterPerOneMillilitersPerSquareMeter = 0.001;

    /// <summary>From L/m2; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromLitersPerSquareMeter(double value) => new(Finite.Require(value, "L/m2"));

    /// <summary>From L/ha; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromLitersPerHectare(double value) => new(Finite.Require(value, "L/ha") * LitersPerSquareMeterPerOneLitersPerHectare);

    /// <summary>The value in L/ha.</summary>
    public double LitersPerHectare => LitersPerSquareMeter / LitersPerSquareMeterPerOneLitersPerHectare;

    /// <summary>From gal/M; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromGallonsPerThousandSquareFeet(double value) => new(Finite.Require(value, "gal/M") * LitersPerSquareMeterPerOneGallonsPerThousandSquareFeet);

    /// <summary>The value in gal/M.</summary>
    public double GallonsPerThousandSquareFeet => LitersPerSquareMeter / LitersPerSquareMeterPerOneGallonsPerThousandSquareFeet;

    /// <summary>From gal/acre; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromGallonsPerAcre(double value) => new(Finite.Require(value, "gal/acre") * LitersPerSquareMeterPerOneGallonsPerAcre);

    /// <summary>The value in gal/acre.</summary>
    public double GallonsPerAcre => LitersPerSquareMeter / LitersPerSquareMeterPerOneGallonsPerAcre;

    /// <summary>From fl oz/acre; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromFluidOuncesPerAcre(double value) => new(Finite.Require(value, "fl oz/acre") * LitersPerSquareMeterPerOneFluidOuncesPerAcre);

    /// <summary>The value in fl oz/acre.</summary>
    public double FluidOuncesPerAcre => LitersPerSquareMeter / LitersPerSquareMeterPerOneFluidOuncesPerAcre;

    /// <summary>From fl oz/M; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromFluidOuncesPerThousandSquareFeet(double value) => new(Finite.Require(value, "fl oz/M") * LitersPerSquareMeterPerOneFluidOuncesPerThousandSquareFeet);

    /// <summary>The value in fl oz/M.</summary>
    public double FluidOuncesPerThousandSquareFeet => LitersPerSquareMeter / LitersPerSquareMeterPerOneFluidOuncesPerThousandSquareFeet;

    /// <summary>From mL/m2; throws when the value is not a finite number.</summary>
    public static VolumePerArea FromMillilitersPerSquareMeter(double value) => new(Finite.Require(value, "mL/m2") * LitersPerSquareMeterPerOneMillilitersPerSquareMeter);

    /// <summary>The value in mL/m2.</summary>
    public double MillilitersPerSquareMeter => LitersPerSquareMeter / LitersPerSquareMeterPerOneMillilitersPerSquareMeter;

    public static VolumePerArea operator +(VolumePerArea a, VolumePerArea b) => new(a.LitersPerSquareMeter + b.LitersPerSquareMeter);

    public static VolumePerArea operator -(VolumePerArea a, VolumePerArea b) => new(a.LitersPerSquareMeter - b.LitersPerSquareMeter);

    public static VolumePerArea operator *(VolumePerArea a, double factor) => new(a.LitersPerSquareMeter * factor);

    public static double operator /(VolumePerArea a, VolumePerArea b) => a.LitersPerSquareMeter / b.LitersPerSquareMeter;

    public static VolumePerArea operator /(VolumePerArea a, double divisor) => new(a.LitersPerSquareMeter / divisor);

    public static bool operator <(VolumePerArea a, VolumePerArea b) => a.LitersPerSquareMeter < b.LitersPerSquareMeter;

    public static bool operator >(VolumePerArea a, VolumePerArea b) => a.LitersPerSquareMeter > b.LitersPerSquareMeter;

    public static bool operator <=(VolumePerArea a, VolumePerArea b) => a.LitersPerSquareMeter <= b.LitersPerSquareMeter;

    public static bool operator >=(VolumePerArea a, VolumePerArea b) => a.LitersPerSquareMeter >= b.LitersPerSquareMeter;

    public int CompareTo(VolumePerArea other) => LitersPerSquareMeter.CompareTo(other.LitersPerSquareMeter);

    public override string ToString() => FormattableString.Invariant($"{LitersPerSquareMeter} L/m2");
}
