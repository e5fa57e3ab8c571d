namespace Seedfall.Engine.Units;

/// <summary>Rate at which a sprinkler or rain wets the ground. Canonical unit: millimeter per hour.</summary>
/// <param name="MillimetersPerHour">The value in mm/h; finite.</param>
public readonly record struct PrecipitationRate(double MillimetersPerHour) : IComparable<PrecipitationRate>
{
    public static PrecipitationRate Zero => default;

    private const double MillimetersPerHourPerOneInchesPerHour = 25.4;

    /// <summary>From mm/h; throws when the value is not a finite number.</summary>
    public static PrecipitationRate FromMillimetersPerHour(double value) => new(Finite.Require(value, "mm/h"));

    /// <summary>From in/h; throws when the value is not a finite number.</summary>
    public static PrecipitationRate FromInchesPerHour(double value) => new(Finite.Require(value, "in/h") * MillimetersPerHourPerOneInchesPerHour);

    /// <summary>The value in in/h.</summary>
    public double InchesPerHour => MillimetersPerHour / MillimetersPerHourPerOneInchesPerHour;

    public static PrecipitationRate operator +(PrecipitationRate a, PrecipitationRate b) => new(a.MillimetersPerHour + b.MillimetersPerHour);

    public static PrecipitationRate operator -(PrecipitationRate a, PrecipitationRate b) => new(a.MillimetersPerHour - b.MillimetersPerHour);

    public static PrecipitationRate operator *(PrecipitationRate a, double factor) => new(a.MillimetersPerHour * factor);

    public static double operator /(PrecipitationRate a, PrecipitationRate b) => a.MillimetersPerHour / b.MillimetersPerHour;

    public static PrecipitationRate operator /(PrecipitationRate a, double divisor) => new(a.MillimetersPerHour / divisor);

    public static bool operator <(PrecipitationRate a, PrecipitationRate b) => a.MillimetersPerHour < b.MillimetersPerHour;

    public static bool operator >(PrecipitationRate a, PrecipitationRate b) => a.MillimetersPerHour > b.MillimetersPerHour;

    public static bool operator <=(PrecipitationRate a, PrecipitationRate b) => a.MillimetersPerHour <= b.MillimetersPerHour;

    public static bool operator >=(PrecipitationRate a, PrecipitationRate b) => a.MillimetersPerHour >= b.MillimetersPerHour;

    public int CompareTo(PrecipitationRate other) => MillimetersPerHour.CompareTo(other.MillimetersPerHour);

    public override string ToString() => FormattableString.Invariant($"{MillimetersPerHour} mm/h");
}
