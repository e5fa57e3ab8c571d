using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Ground;
using Seedfall.Exchange.Lawns;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Cli.Commands;

/// <summary>One outline of a file as the command tells it.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Kind">How it came: an outline drawn elsewhere, or a walk.</param>
/// <param name="AreaM2">Area; null where it has faults.</param>
/// <param name="LowM2">Lower end of the 90 % range.</param>
/// <param name="HighM2">Upper end.</param>
/// <param name="EdgeM">Outer edge.</param>
/// <param name="BedEdgeM">Edge round holes; null without any.</param>
/// <param name="Shape">The shape as lawn.json holds it.</param>
/// <param name="Measured">How it was measured, as lawn.json holds it.</param>
/// <param name="Problems">Faults with their places.</param>
/// <param name="Remarks">What was dropped, cut or closed.</param>
internal sealed record OutlineReport(
    string Name, string Kind, double? AreaM2, double? LowM2, double? HighM2, double? EdgeM, double? BedEdgeM,
    JsonElement? Shape, JsonElement? Measured, IReadOnlyList<string> Problems, IReadOnlyList<string> Remarks)
{
    /// <summary>The outline as it can be written again; null where it has faults.</summary>
    [JsonIgnore]
    public ImportedOutline? Drawn { get; private init; }

    public bool Sound => Problems.Count == 0;

    internal static OutlineReport Of(ImportedOutline outline)
    {
        var plane = new LocalPlane(outline.Ring[0]);
        var shape = outline.OnSheet(plane);
        var faults = OutlineFaults.Of(shape);
        if (faults.Count > 0)
        {
            return Faulty(outline.Name ?? "outline", "outline", [.. faults.Select(f => Words(f, plane))], []);
        }

        var measured = new Measuring(MeasuredBy.File, null);
        return Sized(outline.Name ?? "outline", "outline", shape, measured, []) with { Drawn = outline };
    }

    internal static OutlineReport Of(ImportedWalk walk)
    {
        var name = walk.Name ?? "walk";
        switch (EdgeWalk.Outline(walk.Fixes))
        {
            case WalkResult.Walked walked:
                var plane = new LocalPlane(walked.Origin);
                return Sized(name, "walk", walked.Outline, walked.Measured, walked.Remarks) with { Drawn = new(walk.Name, plane.ToEarth(walked.Outline.Ring), []) };
            case WalkResult.Refused refused:
                return Faulty(name, "walk", [$"expected {refused.Expected}, found {refused.Found}", .. refused.Crossings.Select(c => $"it crosses itself at {Place(new LocalPlane(refused.Origin!.Value).ToEarth(c.At))}")], []);
            default:
                throw new InvalidOperationException("a walk gives an outline or a refusal");
        }
    }

    /// <summary>The report as lines for a reader.</summary>
    internal IEnumerable<string> Lines()
    {
        if (AreaM2 is { } area && LowM2 is { } low && HighM2 is { } high && EdgeM is { } edge)
        {
            yield return $"{Name} ({Kind}): {Both(area)}; nine times in ten {Both(low)} to {Both(high)}; edge {Ft(edge)}{(BedEdgeM is { } beds ? $", round beds {Ft(beds)}" : "")}.";
        }

        foreach (var remark in Remarks)
        {
            yield return $"  {remark}.";
        }
    }

    private static OutlineReport Sized(string name, string kind, PatchShape.Outline shape, Measuring measured, IReadOnlyList<string> remarks)
    {
        var (area, band) = (PatchArea.Of(shape), AreaBand.Of(shape, measured).Value);
        return new(
            name, kind, area.SquareMeters, area.SquareMeters * (1.0 - band), area.SquareMeters * (1.0 + band),
            ShapeEdge.Outer(shape)?.Meters, ShapeEdge.Beds(shape)?.Meters, Element(LawnParts.Shape(shape)), Element(LawnParts.Measured(measured)), [], remarks);
    }

    private static OutlineReport Faulty(string name, string kind, IReadOnlyList<string> problems, IReadOnlyList<string> remarks) =>
        new(name, kind, null, null, null, null, null, null, null, problems, remarks);

    private static JsonElement Element(byte[] json)
    {
        using var document = JsonDocument.Parse(json);
        return document.RootElement.Clone();
    }

    private static string Words(OutlineFault fault, LocalPlane plane)
    {
        var ring = fault.Ring == 0 ? "the outer ring" : string.Create(CultureInfo.InvariantCulture, $"hole {fault.Ring}");
        var at = Place(plane.ToEarth(fault.At));
        return fault.Kind switch
        {
            OutlineFaultKind.TooFewPoints => $"{ring} has fewer than three different points",
            OutlineFaultKind.CrossesItself => $"{ring} crosses itself: side {fault.Side} meets side {fault.OtherSide} at {at}",
            OutlineFaultKind.HoleMeetsEdge => $"{ring} meets the outer edge at {at}",
            OutlineFaultKind.HoleOutside => $"{ring} lies outside the outer ring at {at}",
            OutlineFaultKind.HolesOverlap => $"{ring} overlaps hole {fault.Other} at {at}",
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "is not a known fault"),
        };
    }

    private static string Place(GeoPoint at) => string.Create(CultureInfo.InvariantCulture, $"latitude {at.LatitudeDeg:0.000000}, longitude {at.LongitudeDeg:0.000000}");

    private static string Both(double areaM2) => string.Create(CultureInfo.InvariantCulture, $"{Area.FromSquareMeters(areaM2).SquareFeet:#,##0} sq ft ({areaM2:#,##0} m2)");

    private static string Ft(double lengthM) => string.Create(CultureInfo.InvariantCulture, $"{Length.FromMeters(lengthM).Feet:#,##0} ft ({lengthM:#,##0.#} m)");
}
