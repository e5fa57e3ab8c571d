using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Web.Features.Log;

/// <summary>Entries in words.</summary>
internal static class LogWords
{
    public static string What(LogEntry entry, UnitSystem system) => entry switch
    {
        LogEntry.SeededDown => "Seed went down",
        LogEntry.FirstGreen => "First green",
        LogEntry.SoilReading r => $"Soil {Shown(QuantityKind.Temperature, r.Read.Celsius, system)} at {Shown(QuantityKind.Depth, r.Depth.Millimeters, system)}{(r.HourKnown ? "" : ", hour not known")}",
        LogEntry.CoverSeen c => $"Cover {Shown(QuantityKind.Share, c.Cover.Value, system)}{(c is { Low: { } low, High: { } high } ? $" ({Shown(QuantityKind.Share, low.Value, system)} to {Shown(QuantityKind.Share, high.Value, system)})" : "")}, {How(c.Judged)}",
        LogEntry.Watered w => $"Watered {(w.Given is { } given ? Shown(QuantityKind.Depth, given.Millimeters, system) : string.Create(CultureInfo.InvariantCulture, $"{w.Minutes:0.#} min"))}{(w.Set is { } set ? $", {set}" : "")}",
        LogEntry.Rained r => $"Rain {Shown(QuantityKind.Depth, r.Caught.Millimeters, system)} in the gauge",
        LogEntry.FingerTest f => $"Finger test: {Felt(f.Felt)}{(f.WetTo is { } wet ? $", moist to {Shown(QuantityKind.Depth, wet.Millimeters, system)}" : "")}",
        LogEntry.Mowed m => m.To is { } to ? $"Mowed to {Shown(QuantityKind.Depth, to.Millimeters, system)}" : "Mowed",
        LogEntry.Applied a => $"Put on {a.What.Product}, {Amount(a.What.Amount, system)} on {Shown(QuantityKind.Area, a.What.Area.SquareMeters, system)}{(a.What.Why is { } why ? $" (corrected: {why})" : "")}",
        LogEntry.Note n => n.Text,
        LogEntry.Struck s => $"Struck an entry: {s.Why}",
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry.GetType().Name, "is not a known kind of entry"),
    };

    /// <summary>How much product, in small liquid measure below a quart.</summary>
    public static string Amount(ProductAmount amount, UnitSystem system) => amount switch
    {
        { Mass: { } mass } => Shown(QuantityKind.Mass, mass.Kilograms, system),
        { Volume: { } volume } => Shown(volume.Quarts < 1.0 ? QuantityKind.Dose : QuantityKind.Volume, volume.Liters, system),
        _ => "an amount not written down",
    };

    public static string Where(LogEntry entry, Lawn lawn) =>
        lawn.Patches.FirstOrDefault(p => p.Id == entry.PatchId)?.Name ?? (entry.PatchId is null ? "whole lawn" : "a patch no longer there");

    public static string When(LogEntry entry) => entry.At.ToString("ddd, MMM d, yyyy, HH:mm", CultureInfo.InvariantCulture);

    private static string How(CoverJudged judged) => judged switch
    {
        CoverJudged.ByEye => "by eye",
        CoverJudged.Counted => "counted",
        _ => "from a photograph",
    };

    private static string Felt(FingerFelt felt) => felt switch
    {
        FingerFelt.TooDry => "too dry",
        FingerFelt.Right => "right",
        _ => "soggy",
    };

    private static string Shown(QuantityKind kind, double value, UnitSystem system) =>
        FigureText.Show(kind, value, system).ToString().Replace("deg", "°", StringComparison.Ordinal);
}
