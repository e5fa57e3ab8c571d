using System.Globalization;
using Seedfall.Exchange.Ground;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Web.Features.Drawing;

/// <summary>A drawing with a file's outlines taken in, or why the file was refused.</summary>
/// <param name="Drawn">The drawing; as it was where the file was refused.</param>
/// <param name="Problem">Why it was refused; null where it was not.</param>
/// <param name="Remarks">What was left out, closed, moved or guessed.</param>
public sealed record GroundImport(Drawn Drawn, string? Problem, IReadOnlyList<string> Remarks);

/// <summary>Drawings from and to files other programs draw and show.</summary>
internal static class GroundFiles
{
    private static readonly string[] EdgeNames = [Drawn.EdgeName, "lawn", "boundary", "edge", "outline"];

    /// <summary>
    /// Takes a file in. A name the lawn knows (a patch, a bed drawn before, a kind such as “House”) says where an outline
    /// goes; the first without one becomes the shape asked for, what lies in that is no grass.
    /// </summary>
    public static GroundImport Read(byte[] bytes, string name, Drawn drawn, string target)
    {
        var read = OutlineFiles.Read(bytes, name);
        if (!read.IsRead)
        {
            return new(drawn, read.Problem.ToString(), []);
        }

        var remarks = new List<string>(read.Remarks);
        var blank = drawn.IsBlank;
        var plane = new LocalPlane(drawn.Origin ?? read.First!.Value);
        var taken = new ImportedShapes(drawn, target, remarks);
        foreach (var outline in read.Outlines)
        {
            taken.Add(outline.Name, outline.OnSheet(plane), new(MeasuredBy.File, null));
        }

        foreach (var walk in read.Walks)
        {
            switch (EdgeWalk.Outline(walk.Fixes, plane.Origin))
            {
                case WalkResult.Walked walked:
                    remarks.AddRange(walked.Remarks);
                    taken.Add(walk.Name, walked.Outline, walked.Measured);
                    break;
                case WalkResult.Refused refused when read.Outlines.Count == 0:
                    return new(drawn, $"{name}: {refused.Found}; needed: {refused.Expected}", []);
                case WalkResult.Refused refused:
                    remarks.Add($"a walk was left out: {refused.Found}");
                    break;
            }
        }

        return new(drawn.Origin is null && !blank ? taken.LaidInTheMiddle() : taken.Drawn with { Origin = plane.Origin }, null, remarks);
    }

    /// <summary>Everything drawn as a file. A sheet never placed on the earth is laid on the lawn's own place.</summary>
    public static byte[] Write(OutlineFileKind kind, Drawn drawn, Lawn lawn)
    {
        var plane = new LocalPlane(drawn.Origin ?? new(lawn.Place.LatitudeDeg, lawn.Place.LongitudeDeg));
        return OutlineFiles.Write(
            kind,
            [.. drawn.Shapes.Where(s => s.IsDrawn).Select(s => (s.Name, Outline: s.Kind == DrawnKind.Patch ? drawn.OutlineOf(s) : new(s.Ring, [])))
                .Select(s => new ImportedOutline(s.Name, plane.ToEarth(s.Outline.Ring), [.. s.Outline.Holes.Select(plane.ToEarth)]))],
            []);
    }

    /// <summary>True where a name is one of those an outer edge goes by.</summary>
    internal static bool IsEdge(string name) => EdgeNames.Contains(name, StringComparer.OrdinalIgnoreCase);

    /// <summary>The kind of hole a name begins with; null where it tells none.</summary>
    internal static FeatureKind? KindOf(string name)
    {
        var found = DrawnForm.Kinds.FirstOrDefault(k => name.StartsWith(k.Key, StringComparison.OrdinalIgnoreCase) && k.Kind != FeatureKind.Other);
        return found.Key is null ? null : found.Kind;
    }

    internal static string Numbered(string what, int number) => string.Create(CultureInfo.InvariantCulture, $"{what} {number}");
}
