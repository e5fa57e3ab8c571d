using System.Reflection;
using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Tests.Support;

/// <summary>
/// Records filled with any allowed values, every property of them, so that a property added to a record and forgotten in a
/// file format fails a round trip.
/// </summary>
internal sealed class AnyRecord(Random random)
{
    private Guid Fresh()
    {
        var bytes = new byte[16];
        random.NextBytes(bytes);
        return new Guid(bytes);
    }

    private static readonly NullabilityInfoContext Nullability = new();

    private static readonly Dictionary<string, (double Low, double High)> Ranges = new()
    {
        ["LatitudeDeg"] = (-90.0, 90.0),
        ["LongitudeDeg"] = (-180.0, 180.0),
        ["ElevationM"] = (-430.0, 9000.0),
        ["Ph"] = (0.0, 14.0),
        ["BufferPh"] = (0.0, 14.0),
        ["SunHours"] = (0.0, 24.0),
        ["AspectDeg"] = (0.0, 360.0),
        ["FromDeg"] = (0.0, 360.0),
        ["ToDeg"] = (0.0, 360.0),
        ["ArcFromDeg"] = (0.0, 360.0),
        ["ArcDeg"] = (1.0, 360.0),
        ["HeightAngleDeg"] = (0.0, 90.0),
        ["SlopePercent"] = (0.0, 200.0),
        ["Positions"] = (1.0, 100.0),
        ["SeedingIntervalDays"] = (0.0, 730.0),
        ["RepeatAfterEmergenceDays"] = (0.0, 730.0),
        ["MowingsBeforeSeedlings"] = (0.0, 10.0),
        ["LabelSeedingIntervalDays"] = (0.0, 730.0),
        ["RainFreeHours"] = (0.0, 168.0),
        ["Celsius"] = (-90.0, 900.0),
        ["DaysAfterSeedDown"] = (-366.0, 366.0),
    };

    private static readonly string[] WordList = ["Front yard", "Vorgarten – süd", "芝生", "a\"b\\c/<d>&'e'", "x, y; z", "two\nlines", "=1+1"];

    private int _figures;

    /// <summary>A generator of such records, seeded so that a failure can be repeated.</summary>
    public static Gen<T> Gen<T>() => CsCheck.Gen.Int.Select(One<T>);

    /// <summary>The record of one seed.</summary>
    public static T One<T>(int seed) => (T)new AnyRecord(new Random(seed)).Make(typeof(T), "");

    private object Make(Type type, string name)
    {
        if (type == typeof(Figure))
        {
            return Figure();
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            return List(type.GetGenericArguments()[0], name);
        }

        return Plain(type, name) ?? (type.IsAbstract ? Make(Pick((type.DeclaringType ?? type).GetNestedTypes().Where(t => !t.IsAbstract && t.IsSubclassOf(type)).ToArray()), name) : Record(type));
    }

    private object? Plain(Type type, string name) => type switch
    {
        _ when type == typeof(string) => name.EndsWith("Id", StringComparison.Ordinal) || name is "RulePack" or "PatchIds" ? Id() : name == "Currency" ? Pick(["USD", "EUR"]) : Pick(WordList),
        _ when type == typeof(bool) => random.Next(2) == 0,
        _ when type == typeof(int) => (int)Within(name, 0.0, 4000.0),
        _ when type == typeof(double) => Within(name, name is "EastM" or "NorthM" or "Value" ? -1.0e3 : 0.0, 1.0e4),
        _ when type == typeof(decimal) => random.Next(1_000_000) / 100m,
        _ when type == typeof(Guid) => Fresh(),
        _ when type == typeof(DateOnly) => DateOnly.FromDayNumber(random.Next(700_000, 740_000)),
        _ when type == typeof(TimeOnly) => new TimeOnly(random.Next(24), random.Next(60)),
        _ when type == typeof(Fraction) => Fraction.Of(Within(name, 0.0, 1.0)),
        _ when type == typeof(ProductRate) => random.Next(2) == 0
            ? ProductRate.FromVolumePerArea(VolumePerArea.FromLitersPerSquareMeter(Within(name, 0.0, 1.0)))
            : ProductRate.FromMassPerArea(MassPerArea.FromKilogramsPerSquareMeter(Within(name, 0.0, 1.0))),
        _ when type == typeof(ProductStrength) => random.Next(2) == 0 ? ProductStrength.PerLiter(Within(name, 0.001, 2.0)) : ProductStrength.Percent(Fraction.Of(Within(name, 0.001, 1.0))),
        _ when type.IsEnum => type.GetCustomAttribute<FlagsAttribute>() is null ? Pick(Enum.GetValues(type).Cast<object>().ToArray()) : Enum.ToObject(type, random.Next(128)),
        _ => null,
    };

    private object Record(Type type)
    {
        var maker = type.GetConstructors().OrderByDescending(c => c.GetParameters().Length).First(c => c.GetParameters() is not [{ ParameterType: var only }] || only != type);
        var made = maker.Invoke([.. maker.GetParameters().Select(p => Maybe(p.ParameterType, p.Name!, Nullability.Create(p).WriteState))]);
        var given = maker.GetParameters().Select(p => p.Name).ToHashSet();
        foreach (var property in type.GetProperties().Where(p => p.CanWrite && !given.Contains(p.Name)))
        {
            property.SetValue(made, Maybe(property.PropertyType, property.Name, Nullability.Create(property).WriteState));
        }

        return made;
    }

    private object? Maybe(Type type, string name, NullabilityState state)
    {
        var inner = Nullable.GetUnderlyingType(type);
        return (inner is not null || (!type.IsValueType && state == NullabilityState.Nullable)) && random.Next(3) == 0 ? null : Make(inner ?? type, name);
    }

    /// <summary>A figure whose value its kind can show.</summary>
    private Figure Figure()
    {
        var kind = (QuantityKind)Pick(Enum.GetValues<QuantityKind>().Cast<object>().ToArray());
        var value = kind == QuantityKind.Date ? random.Next(700_000, 740_000) : Within("", 0.0, 1.0e4);
        return new Figure($"figure.{_figures++}", Pick(WordList), kind, value, (Working)Make(typeof(Working), ""));
    }

    private Array List(Type item, string name)
    {
        var list = Array.CreateInstance(item, random.Next(item == typeof(Planning.Ground.GroundPoint) || name is "Widths" or "Corners" ? 3 : 1, 5));
        for (var i = 0; i < list.Length; i++)
        {
            list.SetValue(Make(item, name), i);
        }

        return list;
    }

    private string Id() => string.Concat(Enumerable.Range(0, random.Next(1, 9)).Select(_ => "abcdefgh0123456789"[random.Next(18)]));

    /// <summary>Round numbers and numbers of every digit.</summary>
    private double Within(string name, double low, double high)
    {
        (low, high) = Ranges.GetValueOrDefault(name, (low, high));
        var value = low + random.NextDouble() * (high - low);
        return random.Next(3) == 0 ? Math.Clamp(Math.Round(value * 2.0) / 2.0, low, high) : value;
    }

    private T Pick<T>(IReadOnlyList<T> items) => items[random.Next(items.Count)];
}
