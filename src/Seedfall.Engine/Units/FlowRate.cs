namespace Seedfall.Engine.Units;

/// <summary>A volume flow. Canonical unit: liter per minute.</summary>
/// <param name="LitersPerMinute">The value in L/min; finite.</param>
public readonly record struct FlowRate(double LitersPerMinute) : IComparable<FlowRate>
{
    public static FlowRate Zero => default;

    private const double LitersPerMinutePerOneGallonsPerMinute = 3.785411784;

    /// <summary>From L/min; throws when the value is not a finite number.</summary>
    public static FlowRate FromLitersPerMinute(double value) => new(Finite.Require(value, "L/min"));

    /// <summary>From gpm; throws when the value is not a finite number.</summary>
    public static FlowRate FromGallonsPerMinute(double value) => new(Finite.Require(value, "gpm") * LitersPerMinutePerOneGallonsPerMinute);

    /// <summary>The value in gpm.</summary>
    public double GallonsPerMinute => LitersPerMinute / LitersPerMinutePerOneGallonsPerMinute;

    public static FlowRate operator +(FlowRate a, FlowRate b) => new(a.LitersPerMinute + b.LitersPerMinute);

    public static FlowRate operator -(FlowRate a, FlowRate b) => new(a.LitersPerMinute - b.LitersPerMinute);

    public static FlowRate operator *(FlowRate a, double factor) => new(a.LitersPerMinute * factor);

    public static double operator /(FlowRate a, FlowRate b) => a.LitersPerMinute / b.LitersPerMinute;

    public static FlowRate operator /(FlowRate a, double divisor) => new(a.LitersPerMinute / divisor);

    public static bool operator <(FlowRate a, FlowRate b) => a.LitersPerMinute < b.LitersPerMinute;

    public static bool operator >(FlowRate a, FlowRate b) => a.LitersPerMinute > b.LitersPerMinute;

    public static bool operator <=(FlowRate a, FlowRate b) => a.LitersPerMinute <= b.LitersPerMinute;

    public static bool operator >=(FlowRate a, FlowRate b) => a.LitersPerMinute >= b.LitersPerMinute;

    public int CompareTo(FlowRate other) => LitersPerMinute.CompareTo(other.LitersPerMinute);

    public override string ToString() => FormattableString.Invariant($"{LitersPerMinute} L/min");
}
