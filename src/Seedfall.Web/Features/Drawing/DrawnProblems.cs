using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>Something on the sheet that cannot be right.</summary>
/// <param name="Text">What and where, in one sentence.</param>
/// <param name="At">The very point; null where it is no matter of one point.</param>
public sealed record DrawnProblem(string Text, GroundPoint? At);

/// <summary>Judges a drawing in the words the page shows while one draws.</summary>
internal static class DrawnProblems
{
    private const int MostCorners = 4000;

    /// <summary>Shape by shape, then between the shapes that are sound in themselves.</summary>
    public static IReadOnlyList<DrawnProblem> Of(Drawn drawn, UnitSystem system)
    {
        var found = new List<DrawnProblem>();
        var sound = new List<DrawnShape>();
        foreach (var shape in drawn.Shapes)
        {
            var own = Own(shape, system);
            found.AddRange(own);
            if (own.Count == 0 && shape.IsDrawn)
            {
                sound.Add(shape);
            }
        }

        Between(sound, system, found);
        return found;
    }

    /// <summary>A point in the viewer's unit, for example <c>12.5 ft east, 3.0 ft south</c>.</summary>
    public static string Place(GroundPoint point, UnitSystem system) => $"{Part(point.EastM, "east", "west", system)}, {Part(point.NorthM, "north", "south", system)}";

    private static List<DrawnProblem> Own(DrawnShape shape, UnitSystem system)
    {
        if (shape.Ring.Count == 0)
        {
            return [];
        }

        if (shape.Ring.Count > MostCorners)
        {
            return [new(string.Create(CultureInfo.InvariantCulture, $"{shape.Name}: at most {MostCorners:#,##0} corners are taken, {shape.Ring.Count:#,##0} set."), null)];
        }

        var different = shape.Ring.Distinct().Count();
        return different < 3
            ? [new(string.Create(CultureInfo.InvariantCulture, $"{shape.Name}: at least three corners are needed, {different} set."), null)]
            : [.. RingCrossings.Within(shape.Ring).Select(c => new DrawnProblem($"{shape.Name}: side {c.FirstSide} crosses or touches side {c.SecondSide} at {Place(c.At, system)}.", c.At))];
    }

    private static void Between(List<DrawnShape> sound, UnitSystem system, List<DrawnProblem> found)
    {
        void Note(string text, GroundPoint? at)
        {
            if (at is { } point)
            {
                found.Add(new($"{text} {Place(point, system)}.", point));
            }
        }

        var edge = sound.Find(s => s.Kind == DrawnKind.Edge);
        var (holes, patches) = (sound.FindAll(s => s.Kind == DrawnKind.Hole), sound.FindAll(s => s.Kind == DrawnKind.Patch));
        for (var i = 0; i < patches.Count; i++)
        {
            var patch = patches[i];
            Note($"{patch.Name} leaves the {Drawn.EdgeName.ToLowerInvariant()} at", edge is null ? null : RingRelation.Leaves(patch.Ring, edge.Ring));
            foreach (var other in patches.Take(i))
            {
                Note($"{patch.Name} and {other.Name} take the same ground at", RingRelation.Overlaps(patch.Ring, other.Ring));
            }

            foreach (var hole in holes.Where(h => !RingRelation.LiesIn(h.Ring, patch.Ring)))
            {
                Note($"{hole.Name} lies only partly in {patch.Name}: it crosses the edge at", RingRelation.Overlaps(hole.Ring, patch.Ring));
            }
        }

        for (var i = 0; i < holes.Count; i++)
        {
            if (edge is not null && !RingRelation.LiesIn(holes[i].Ring, edge.Ring))
            {
                Note($"{holes[i].Name} lies only partly in the {Drawn.EdgeName.ToLowerInvariant()}: it crosses it at", RingRelation.Overlaps(holes[i].Ring, edge.Ring));
            }

            foreach (var other in holes.Take(i))
            {
                Note($"{holes[i].Name} and {other.Name} take the same ground at", RingRelation.Overlaps(holes[i].Ring, other.Ring));
            }
        }
    }

    private static string Part(double meters, string above, string below, UnitSystem system)
    {
        var us = system == UnitSystem.UsCustomary;
        var value = us ? Length.FromMeters(meters).Feet : meters;
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(value):0.0} {(us ? "ft" : "m")} {(value < 0.0 ? below : above)}");
    }
}
