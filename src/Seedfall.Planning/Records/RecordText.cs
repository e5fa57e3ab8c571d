using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Records;

/// <summary>Parts of a record in words, both unit systems beside each other.</summary>
public static class RecordText
{
    /// <summary>Product, in small liquid measure below a quart.</summary>
    public static string Amount(ProductAmount amount, UnitSystem first)
    {
        ArgumentNullException.ThrowIfNull(amount);
        return amount switch
        {
            { Mass: { } mass } => Both(QuantityKind.Mass, mass.Kilograms, first),
            { Volume: { } volume } => Both(volume.Quarts < 1.0 ? QuantityKind.Dose : QuantityKind.Volume, volume.Liters, first),
            _ => "not written down",
        };
    }

    public static string Area(Application what, UnitSystem first)
    {
        ArgumentNullException.ThrowIfNull(what);
        return Both(QuantityKind.Area, what.Area.SquareMeters, first);
    }

    /// <summary>Water or other carrier; null where none was written down.</summary>
    public static string? Carrier(Application what, UnitSystem first)
    {
        ArgumentNullException.ThrowIfNull(what);
        return what.Carrier is { } carrier ? Both(QuantityKind.Volume, carrier.Liters, first) : null;
    }

    /// <summary>Active ingredients and nutrients with their masses; null where none was written down.</summary>
    public static string? Actives(Application what, UnitSystem first)
    {
        ArgumentNullException.ThrowIfNull(what);
        return what.Actives.Count == 0 ? null : string.Join("; ", what.Actives.Select(active => $"{active.Name} {Both(QuantityKind.Mass, active.Amount.Kilograms, first)}"));
    }

    /// <summary>Weather as read; null where none was.</summary>
    public static string? Weather(FieldWeather? read, UnitSystem first)
    {
        if (read is null)
        {
            return null;
        }

        string[] parts =
        [
            .. read.Wind is { } wind ? [$"wind {Both(QuantityKind.Speed, wind.MetersPerSecond, first)}{(read.From is { } from ? $" from the {From(from)}" : "")}"] : Array.Empty<string>(),
            .. read.Gust is { } gust ? [$"gusts {Both(QuantityKind.Speed, gust.MetersPerSecond, first)}"] : Array.Empty<string>(),
            .. read.Air is { } air ? [$"air {Both(QuantityKind.Temperature, air.Celsius, first)}"] : Array.Empty<string>(),
            .. read.Humidity is { } humidity ? [$"humidity {Both(QuantityKind.Share, humidity.Value, first)}"] : Array.Empty<string>(),
        ];
        return parts.Length == 0 ? null : string.Join(", ", parts);
    }

    /// <summary>Day and hours by the lawn's own clock.</summary>
    public static string When(LogEntry.Applied entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var start = entry.At.ToString("MMM d, yyyy, H:mm", CultureInfo.InvariantCulture);
        return entry.What.Ended is not { } ended ? start
            : ended.DateTime.Date == entry.At.DateTime.Date ? $"{start} to {ended.ToString("H:mm", CultureInfo.InvariantCulture)}"
            : $"{start} to {ended.ToString("MMM d, H:mm", CultureInfo.InvariantCulture)}";
    }

    public static string Kind(ApplicationKind kind) => kind switch
    {
        ApplicationKind.Pesticide => "pesticide",
        ApplicationKind.Fertilizer => "fertilizer",
        ApplicationKind.Seed => "seed",
        ApplicationKind.Other => "other",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of application"),
    };

    public static string From(WindFrom from) => from switch
    {
        WindFrom.North => "north",
        WindFrom.NorthEast => "north-east",
        WindFrom.East => "east",
        WindFrom.SouthEast => "south-east",
        WindFrom.South => "south",
        WindFrom.SouthWest => "south-west",
        WindFrom.West => "west",
        WindFrom.NorthWest => "north-west",
        _ => throw new ArgumentOutOfRangeException(nameof(from), from, "is not a point of the compass"),
    };

    /// <summary>Mass per area, kg/m2, in both systems.</summary>
    internal static string Rate(double kilogramsPerSquareMeter) => Both(QuantityKind.MassPerArea, kilogramsPerSquareMeter, UnitSystem.UsCustomary);

    private static string Both(QuantityKind kind, double value, UnitSystem first) =>
        FigureText.Both(new Figure("record.value", "as recorded", kind, value, AsRecorded), first)
            .Replace("deg", "°", StringComparison.Ordinal).Replace("m2", "m²", StringComparison.Ordinal);

    private static Working AsRecorded { get; } = new("as recorded", [], "record of applications", Sureness.Measured);
}
