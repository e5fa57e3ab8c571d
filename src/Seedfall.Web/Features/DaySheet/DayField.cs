using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>A unit a field may be written in.</summary>
/// <param name="Text">As the log format has it, for example <c>lb</c>.</param>
/// <param name="Shown">As the page has it, for example <c>°F</c>.</param>
/// <param name="PerCanonical">How many of it are one of the canonical unit; 0 where there is no mere factor.</param>
public sealed record DayUnit(string Text, string Shown, double PerCanonical);

/// <summary>One field of what is written down on the phone.</summary>
/// <param name="Name">Within its form.</param>
/// <param name="Path">Where its value goes in the entry's JSON.</param>
public sealed record DayField(string Name, string Label, string Path)
{
    public DayFieldKind Kind { get; init; } = DayFieldKind.Text;

    public string? Value { get; init; }

    public bool Required { get; init; }

    public string? Hint { get; init; }

    /// <summary>The first is the one shown; one alone stands as text.</summary>
    public IReadOnlyList<DayUnit> Units { get; init; } = [];

    /// <summary>Names of the log format and what the page calls them.</summary>
    public IReadOnlyList<(string Value, string Label)> Choices { get; init; } = [];

    /// <summary>Heading it is folded under; null where it always shows.</summary>
    public string? Fold { get; init; }

    /// <summary>True where that heading begins unfolded.</summary>
    public bool Open { get; init; }

    /// <summary>True for the amount of product, with which what is in the product rises and falls.</summary>
    public bool Scales { get; init; }

    public static DayField Quantity(string name, string label, string path, double? canonical, UnitSystem system, params (UnitSystem System, DayUnit Unit)[] units)
    {
        IReadOnlyList<DayUnit> ordered = [.. units.OrderBy(u => u.System == system ? 0 : 1).Select(u => u.Unit)];
        return new(name, label, path)
        {
            Kind = DayFieldKind.Quantity,
            Units = ordered,
            Value = canonical is { } value ? Rounded(value * ordered[0].PerCanonical) : null,
        };
    }

    public static DayField Choice<T>(string name, string label, string path, T? value, Func<T, string> words)
        where T : struct, Enum =>
        new(name, label, path) { Kind = DayFieldKind.Choice, Value = value is { } v ? NamesOf<T>.Of(v) : null, Choices = [.. Enum.GetValues<T>().Select(v => (NamesOf<T>.Of(v), words(v)))] };

    /// <summary>Four significant figures, more than a scale or a jug can show.</summary>
    private static string Rounded(double value)
    {
        var decimals = value == 0.0 ? 0 : Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return Math.Round(value, decimals).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);
    }
}

public enum DayFieldKind
{
    Text,
    Words,
    Quantity,
    Choice,
    Instant,
}

/// <summary>The units of the phone's forms.</summary>
internal static class DayUnits
{
    private const UnitSystem Us = UnitSystem.UsCustomary;
    private const UnitSystem Metric = UnitSystem.Metric;

    public static (UnitSystem, DayUnit)[] Mass(double kilograms) => kilograms < 0.45
        ? [(Us, Oz), (Us, Lb), (Metric, G), (Metric, Kg)]
        : [(Us, Lb), (Us, Oz), (Metric, Kg), (Metric, G)];

    public static (UnitSystem, DayUnit)[] Bulk { get; } = [(Us, new("cu yd", "cu yd", 1.0 / Engine.Units.Volume.FromCubicYards(1.0).Liters)), (Us, new("gal", "gal", 1.0 / Engine.Units.Volume.FromGallons(1.0).Liters)), (Metric, new("L", "L", 1.0))];

    public static (UnitSystem, DayUnit)[] Volume(double liters) => liters < 0.95
        ? [(Us, FlOz), (Us, Gal), (Metric, Ml), (Metric, L)]
        : [(Us, Gal), (Us, FlOz), (Metric, L), (Metric, Ml)];

    public static (UnitSystem, DayUnit)[] Area { get; } = [(Us, new("sq ft", "sq ft", 1.0 / Engine.Units.Area.FromSquareFeet(1.0).SquareMeters)), (Metric, new("m2", "m²", 1.0))];

    public static (UnitSystem, DayUnit)[] Depth { get; } = [(Us, new("in", "in", 1.0 / 25.4)), (Metric, new("mm", "mm", 1.0)), (Metric, new("cm", "cm", 0.1))];

    public static (UnitSystem, DayUnit)[] Speed { get; } = [(Us, new("mph", "mph", 1.0 / Engine.Units.Speed.FromMilesPerHour(1.0).MetersPerSecond)), (Metric, new("km/h", "km/h", 3.6)), (Metric, new("m/s", "m/s", 1.0))];

    public static (UnitSystem, DayUnit)[] Temperature { get; } = [(Us, new("degF", "°F", 0.0)), (Metric, new("degC", "°C", 1.0))];

    public static (UnitSystem, DayUnit)[] Share { get; } = [(Us, new("%", "%", 100.0))];

    public static (UnitSystem, DayUnit)[] Minutes { get; } = [(Us, new("min", "min", 1.0))];

    private static DayUnit Lb { get; } = new("lb", "lb", 1.0 / Engine.Units.Mass.FromPounds(1.0).Kilograms);

    private static DayUnit Oz { get; } = new("oz", "oz", 1.0 / Engine.Units.Mass.FromOunces(1.0).Kilograms);

    private static DayUnit Kg { get; } = new("kg", "kg", 1.0);

    private static DayUnit G { get; } = new("g", "g", 1000.0);

    private static DayUnit Gal { get; } = new("gal", "gal", 1.0 / Engine.Units.Volume.FromGallons(1.0).Liters);

    private static DayUnit FlOz { get; } = new("fl oz", "fl oz", 1.0 / Engine.Units.Volume.FromFluidOunces(1.0).Liters);

    private static DayUnit L { get; } = new("L", "L", 1.0);

    private static DayUnit Ml { get; } = new("mL", "mL", 1000.0);
}
