namespace Seedfall.Engine.Units;

/// <summary>A share of a whole, 0 to 1.</summary>
/// <param name="Value">0 to 1, dimensionless.</param>
public readonly record struct Fraction(double Value) : IComparable<Fraction>
{
    public static Fraction None => default;

    public static Fraction All => new(1.0);

    /// <summary>From a share 0 to 1; throws outside that range and for NaN.</summary>
    public static Fraction Of(double value) =>
        value is >= 0.0 and <= 1.0 ? new(value) : throw new ArgumentOutOfRangeException(nameof(value), value, "a share from 0 to 1 is needed");

    /// <summary>From percent 0 to 100; throws outside that range and for NaN.</summary>
    public static Fraction FromPercent(double percent) =>
        percent is >= 0.0 and <= 100.0 ? new(percent / 100.0) : throw new ArgumentOutOfRangeException(nameof(percent), percent, "a percentage from 0 to 100 is needed");

    /// <summary>The value in percent.</summary>
    public double Percent => Value * 100.0;

    public int CompareTo(Fraction other) => Value.CompareTo(other.Value);

    public override string ToString() => FormattableString.Invariant($"{Percent} %");
}
