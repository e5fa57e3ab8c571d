using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>How a product is measured out: never both.</summary>
public enum ProductMeasure
{
    /// <summary>Liquids: syringe, cylinder, jug.</summary>
    Volume,

    /// <summary>Powders and granules: a scale.</summary>
    Weight,
}

/// <summary>
/// Product per area as a label gives it: by volume or by weight, always exactly one of the two. Two rates are only put together
/// where they are of one measure; a volume of a dry product is no dose, and no density is ever assumed.
/// </summary>
public readonly record struct ProductRate : IComparable<ProductRate>
{
    private ProductRate(ProductMeasure measure, double perSquareMeter) => (Measure, PerSquareMeter) = (measure, perSquareMeter);

    public ProductMeasure Measure { get; }

    /// <summary>L/m2 by volume, kg/m2 by weight.</summary>
    internal double PerSquareMeter { get; }

    /// <summary>The rate by volume; null where it is by weight.</summary>
    public VolumePerArea? Volume => Measure == ProductMeasure.Volume ? new VolumePerArea(PerSquareMeter) : null;

    /// <summary>The rate by weight; null where it is by volume.</summary>
    public MassPerArea? Weight => Measure == ProductMeasure.Weight ? new MassPerArea(PerSquareMeter) : null;

    /// <summary>True where nothing goes on.</summary>
    public bool IsNothing => PerSquareMeter == 0.0;

    public static ProductRate FromVolumePerArea(VolumePerArea rate) => new(ProductMeasure.Volume, rate.LitersPerSquareMeter);

    public static ProductRate FromMassPerArea(MassPerArea rate) => new(ProductMeasure.Weight, rate.KilogramsPerSquareMeter);

    public static implicit operator ProductRate(VolumePerArea rate) => FromVolumePerArea(rate);

    public static implicit operator ProductRate(MassPerArea rate) => FromMassPerArea(rate);

    /// <summary>No product, in a measure.</summary>
    public static ProductRate Nothing(ProductMeasure measure) => new(measure, 0.0);

    /// <summary>So much in a measure, in its canonical unit (L/m2 or kg/m2).</summary>
    internal static ProductRate Of(ProductMeasure measure, double perSquareMeter) => new(measure, perSquareMeter);

    public static ProductRate operator +(ProductRate a, ProductRate b) => new(Shared(a, b), a.PerSquareMeter + b.PerSquareMeter);

    public static ProductRate operator -(ProductRate a, ProductRate b) => new(Shared(a, b), a.PerSquareMeter - b.PerSquareMeter);

    public static ProductRate operator *(ProductRate a, double factor) => new(a.Measure, a.PerSquareMeter * factor);

    public static bool operator <(ProductRate a, ProductRate b) => a.CompareTo(b) < 0;

    public static bool operator >(ProductRate a, ProductRate b) => a.CompareTo(b) > 0;

    public static bool operator <=(ProductRate a, ProductRate b) => a.CompareTo(b) <= 0;

    public static bool operator >=(ProductRate a, ProductRate b) => a.CompareTo(b) >= 0;

    /// <summary>Order of two rates of one measure; throws where one is a volume and the other a weight.</summary>
    public int CompareTo(ProductRate other)
    {
        Shared(this, other);
        return PerSquareMeter.CompareTo(other.PerSquareMeter);
    }

    public override string ToString() => FormattableString.Invariant($"{PerSquareMeter} {(Measure == ProductMeasure.Volume ? "L/m2" : "kg/m2")}");

    private static ProductMeasure Shared(ProductRate a, ProductRate b) => a.Measure == b.Measure
        ? a.Measure
        : throw new ArgumentException($"two rates of one measure are needed, not {a} and {b}", nameof(b));
}

/// <summary>Active ingredient in a product: per volume of a liquid, or as a share by weight of a dry one.</summary>
public readonly record struct ProductStrength
{
    private ProductStrength(ProductMeasure measure, double active) => (Measure, Active) = (measure, active);

    public ProductMeasure Measure { get; }

    /// <summary>kg of active ingredient per L of product, or per kg of product.</summary>
    internal double Active { get; }

    /// <summary>kg per L of a liquid product; null for a dry one.</summary>
    public double? KilogramsPerLiter => Measure == ProductMeasure.Volume ? Active : null;

    /// <summary>Share by weight of a dry product; null for a liquid one.</summary>
    public Fraction? ByWeight => Measure == ProductMeasure.Weight ? Fraction.Of(Active) : null;

    /// <summary>Of a liquid.</summary>
    /// <param name="kilograms">Active ingredient in each liter, kg/L, above 0.</param>
    public static ProductStrength PerLiter(double kilograms) => kilograms > 0.0 && double.IsFinite(kilograms)
        ? new(ProductMeasure.Volume, kilograms)
        : throw new ArgumentOutOfRangeException(nameof(kilograms), kilograms, "a strength above 0 kg/L is needed");

    /// <summary>Of a dry product.</summary>
    /// <param name="share">Active ingredient by weight, above 0.</param>
    public static ProductStrength Percent(Fraction share) => share.Value > 0.0
        ? new(ProductMeasure.Weight, share.Value)
        : throw new ArgumentOutOfRangeException(nameof(share), share, "a share above 0 % is needed");
}
