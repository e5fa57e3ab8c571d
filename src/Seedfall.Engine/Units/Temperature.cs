namespace Seedfall.Engine.Units;

/// <summary>A temperature on a scale (not a difference). Canonical unit: degree Celsius.</summary>
/// <param name="Celsius">The value in degC; finite.</param>
public readonly record struct Temperature(double Celsius) : IComparable<Temperature>
{
    /// <summary>From degC; throws when the value is not a finite number.</summary>
    public static Temperature FromCelsius(double value) => new(Finite.Require(value, "degC"));

    /// <summary>From degF; throws when the value is not a finite number.</summary>
    public static Temperature FromFahrenheit(double value) => new((Finite.Require(value, "degF") - 32.0) / 1.8);

    /// <summary>The value in degF.</summary>
    public double Fahrenheit => Celsius * 1.8 + 32.0;

    /// <summary>The value in K.</summary>
    public double Kelvin => Celsius + 273.15;

    public static bool operator <(Temperature a, Temperature b) => a.Celsius < b.Celsius;

    public static bool operator >(Temperature a, Temperature b) => a.Celsius > b.Celsius;

    public static bool operator <=(Temperature a, Temperature b) => a.Celsius <= b.Celsius;

    public static bool operator >=(Temperature a, Temperature b) => a.Celsius >= b.Celsius;

    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    public override string ToString() => FormattableString.Invariant($"{Celsius} degC");
}
