namespace Seedfall.Planning.Ground;

/// <summary>Every place where outlines meet that must not, for a page to show.</summary>
public static class RingCrossings
{
    /// <summary>More than these are not told.</summary>
    public const int Most = 50;

    /// <summary>Where a ring crosses or touches itself, in the order of its sides.</summary>
    public static IReadOnlyList<RingCrossing> Within(IReadOnlyList<GroundPoint> ring)
    {
        var sides = RingSides.Of(ring);
        var found = new List<RingCrossing>();
        RingSides.Near(sides, sides, (i, j) =>
        {
            if (i >= j)
            {
                return true;
            }

            var neighbors = j == i + 1 || (i == 0 && j == sides.Count - 1);
            return Add(found, sides[i], sides[j], neighbors ? RingSides.Fold(sides[i], sides[j]) : Segments.Meet(sides[i].From, sides[i].To, sides[j].From, sides[j].To));
        });
        return [.. found.OrderBy(c => c.FirstSide).ThenBy(c => c.SecondSide)];
    }

    /// <summary>Where two rings cross or touch; the first side is the first ring's.</summary>
    public static IReadOnlyList<RingCrossing> Between(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other)
    {
        var (sides, others) = (RingSides.Of(ring), RingSides.Of(other));
        var found = new List<RingCrossing>();
        RingSides.Near(sides, others, (i, j) => Add(found, sides[i], others[j], Segments.Meet(sides[i].From, sides[i].To, others[j].From, others[j].To)));
        return [.. found.OrderBy(c => c.FirstSide).ThenBy(c => c.SecondSide)];
    }

    private static bool Add(List<RingCrossing> found, RingSide first, RingSide second, GroundPoint? meet)
    {
        if (meet is { } at)
        {
            found.Add(new(first.Number, second.Number, at));
        }

        return found.Count < Most;
    }
}
