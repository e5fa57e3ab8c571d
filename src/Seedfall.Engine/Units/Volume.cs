namespace Seedfall.Engine.Units;

/// <summary>A volume. Canonical unit: liter.</summary>
/// <param name="Liters">The value in L; finite.</param>
public readonly record struct Volume(double Liters) : IComparable<Volume>
{
    public static Volume Zero => default;

    private const double LitersPerOneMilliliters = 0.001;

    private const double LitersPerOneCubicMeters = 1000;

    private const double LitersPerOneGallons = 3.785411784;

    private const double LitersPerOneFluidOunces = 0.0295735295625;

    private const double LitersPerOnePints = 0.473176473;

    private const double LitersPerOneQuarts = 0.946352946;

    private const double LitersPerOneCubicYards = 764.554857984;

    /// <summary>From L; throws when the value is not a finite number.</summary>
    public static Volume FromLiters(double value) => new(Finite.Require(value, "L"));

    /// <summary>From mL; throws when the value is not a finite number.</summary>
    public static Volume FromMilliliters(double value) => new(Finite.Require(value, "mL") * LitersPerOneMilliliters);

    /// <summary>The value in mL.</summary>
    public double Milliliters => Liters / LitersPerOneMilliliters;

    /// <summary>From m3; throws when the value is not a finite number.</summary>
    public static Volume FromCubicMeters(double value) => new(Finite.Require(value, "m3") * LitersPerOneCubicMeters);

    /// <summary>The value in m3.</summary>
    public double CubicMeters => Liters / LitersPerOneCubicMeters;

    /// <summary>From gal; throws when the value is not a finite number.</summary>
    public static Volume FromGallons(double value) => new(Finite.Require(value, "gal") * LitersPerOneGallons);

    /// <summary>The value in gal.</summary>
    public double Gallons => Liters / LitersPerOneGallons;

    /// <summary>From fl oz; throws when the value is not a finite number.</summary>
    public static Volume FromFluidOunces(double value) => new(Finite.Require(value, "fl oz") * LitersPerOneFluidOunces);

    /// <summary>The value in fl oz.</summary>
    public double FluidOunces => Liters / LitersPerOneFluidOunces;

    /// <summary>From pt; throws when the value is not a finite number.</summary>
    public static Volume FromPints(double value) => new(Finite.Require(value, "pt") * LitersPerOnePints);

    /// <summary>The value in pt.</summary>
    public double Pints => Liters / LitersPerOnePints;

    /// <summary>From qt; throws when the value is not a finite number.</summary>
    public static Volume FromQuarts(double value) => new(Finite.Require(value, "qt") * LitersPerOneQuarts);

    /// <summary>The value in qt.</summary>
    public double Quarts => Liters / LitersPerOneQuarts;

    /// <summary>From cu yd; throws when the value is not a finite number.</summary>
    public static Volume FromCubicYards(double value) => new(Finite.Require(value, "cu yd") * LitersPerOneCubicYards);

    /// <summary>The value in cu yd.</summary>
    public double CubicYards => Liters / LitersPerOneCubicYards;

    public static Volume operator +(Volume a, Volume b) => new(a.Liters + b.Liters);

    public static Volume operator -(Volume a, Volume b) => new(a.Liters - b.Liters);

    public static Volume operator *(Volume a, double factor) => new(a.Liters * factor);

    public static double operator /(Volume a, Volume b) => a.Liters / b.Liters;

    public static Volume operator /(Volume a, double divisor) => new(a.Liters / divisor);

    public static bool operator <(Volume a, Volume b) => a.Liters < b.Liters;

    public static bool operator >(Volume a, Volume b) => a.Liters > b.Liters;

    public static bool operator <=(Volume a, Volume b) => a.Liters <= b.Liters;

    public static bool operator >=(Volume a, Volume b) => a.Liters >= b.Liters;

    public int CompareTo(Volume other) => Liters.CompareTo(other.Liters);

    public override string ToString() => FormattableString.Invariant($"{Liters} L");
}
