using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Site;

/// <summary>What a jar of shaken soil was read to say.</summary>
/// <param name="Times">When to mark it.</param>
/// <param name="Shares">Sand, silt and clay; empty before the marks are entered.</param>
/// <param name="Reading">Classes with their chances; null before the marks are entered.</param>
public sealed record JarAnswer(IReadOnlyList<Figure> Times, IReadOnlyList<Figure> Shares, JarReading? Reading);

/// <summary>The jar test as a form, its answers in the address.</summary>
internal static class JarForm
{
    private static readonly IReadOnlyList<UnitChoice<Length>> Ruler =
    [
        new("in", "in", UnitSystem.UsCustomary, Length.FromInches, l => l.Inches),
        new("mm", "mm", UnitSystem.Metric, v => Length.FromCentimeters(v / 10.0), l => l.Centimeters * 10.0),
        new("cm", "cm", UnitSystem.Metric, Length.FromCentimeters, l => l.Centimeters),
    ];

    private static readonly IReadOnlyList<UnitChoice<Temperature>> Warmth =
    [
        new("F", "°F", UnitSystem.UsCustomary, Temperature.FromFahrenheit, t => t.Fahrenheit),
        new("C", "°C", UnitSystem.Metric, Temperature.FromCelsius, t => t.Celsius),
    ];

    private static readonly Length UsualDepth = Length.FromInches(6.0);
    private static readonly Temperature UsualWarmth = Temperature.FromFahrenheit(68.0);
    private static readonly QuantityField<Length> Depth = new("depth", "Water in the jar, bottom to surface", Ruler, Length.FromCentimeters(3.0), Length.FromCentimeters(60.0)) { Hint = "Blank takes 6 in." };
    private static readonly QuantityField<Temperature> Water = new("water", "Temperature of the water", Warmth, Temperature.FromCelsius(1.0), Temperature.FromCelsius(40.0)) { Hint = "Blank takes 68 °F." };
    private static readonly QuantityField<Length> Sand = Mark("sand", "Top of the sand");
    private static readonly QuantityField<Length> Silt = Mark("silt", "Top of the silt");
    private static readonly QuantityField<Length> Clay = Mark("clay", "Top of the clay");
    private static readonly NumberField After = new("after", "The silt was marked after", 0.1, 200.0, "hours") { Hint = "Blank where it was the time told below." };

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("The jar", [Depth, Water]),
        new("The marks", [Sand, Silt, Clay, After]) { Hint = "Each measured from the bottom of the soil. Leave blank to see only the times." },
    ];

    private static IEnumerable<string> Names => [Depth.Name, Depth.UnitName, Water.Name, Water.UnitName, Sand.Name, Sand.UnitName, Silt.Name, Silt.UnitName, Clay.Name, Clay.UnitName, After.Name];

    /// <summary>The form as the address has it.</summary>
    public static Entries From(IQueryCollection query, UnitSystem system)
    {
        var entries = new Entries(system);
        foreach (var name in Names.Where(query.ContainsKey))
        {
            var text = query[name].ToString();
            entries.Put(name, text.Length > 40 ? text[..40] : text);
        }

        return entries;
    }

    /// <summary>What the answers say; the times alone where there are no marks, or where they are wrong.</summary>
    public static JarAnswer Read(Entries entries)
    {
        var (depth, water) = (Depth.Read(entries) ?? UsualDepth, Water.Read(entries) ?? UsualWarmth);
        var (sand, silt, clay, after) = (Sand.Read(entries), Silt.Read(entries), Clay.Read(entries), After.Read(entries));
        var times = JarTest.Times(depth, water);
        if (sand is null && silt is null && clay is null)
        {
            return new JarAnswer(times, [], null);
        }

        if (sand is not { } s || silt is not { } i || clay is not { } c)
        {
            entries.Wrong((sand is null ? Sand : silt is null ? Silt : Clay).Name, "All three marks are needed; give the same height twice where a layer is missing.");
            return new JarAnswer(times, [], null);
        }

        var layers = new JarLayers(s, i, c);
        if (!entries.Sound || !layers.InOrder)
        {
            entries.Wrong(Silt.Name, "The marks must rise: sand at the bottom, then silt, then clay, with some soil in the jar.");
            return new JarAnswer(times, [], null);
        }

        var reading = layers.Read(JarTest.ReadingError);
        return new JarAnswer(times, JarTest.Shares(layers, reading, after * 60.0, depth, water), reading);
    }

    private static QuantityField<Length> Mark(string name, string label) => new(name, label, Ruler, Length.Zero, Length.FromCentimeters(60.0));
}
