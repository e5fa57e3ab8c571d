namespace Seedfall.Photos.Overview;

/// <summary>What is wrong with four marks.</summary>
public enum MarkProblem
{
    /// <summary>Not four, or one is no place in the picture.</summary>
    NotFour,

    /// <summary>Two marks lie on one another.</summary>
    TooClose,

    /// <summary>Three marks lie in one line.</summary>
    InLine,

    /// <summary>The sides between the marks cross: two marks are exchanged.</summary>
    Crossed,

    /// <summary>One mark lies inside the triangle of the others: no four corners of flat ground look so.</summary>
    Dented,

    /// <summary>Marked the other way round: left and right are exchanged.</summary>
    WrongWayRound,

    /// <summary>The horizon runs through what was marked.</summary>
    BeyondHorizon,
}

/// <summary>Whether four points can be the picture of four corners.</summary>
internal static class MarkChecking
{
    /// <summary>Least sine of a triangle's widest angle, about 1.7 degrees from straight.</summary>
    private const double LeastSine = 0.03;

    /// <summary>Null where they can.</summary>
    /// <param name="points">In turn round the quadrilateral.</param>
    /// <param name="counterclockwise">How they must go round in their own axes.</param>
    /// <param name="nearest">Least distance between two of them.</param>
    internal static MarkProblem? Problem(ReadOnlySpan<(double X, double Y)> points, bool counterclockwise, double nearest)
    {
        if (points.Length != 4)
        {
            return MarkProblem.NotFour;
        }

        for (var i = 0; i < 4; i++)
        {
            if (!double.IsFinite(points[i].X) || !double.IsFinite(points[i].Y))
            {
                return MarkProblem.NotFour;
            }

            for (var j = 0; j < i; j++)
            {
                if (!(Distance(points[i], points[j]) >= nearest))
                {
                    return MarkProblem.TooClose;
                }
            }
        }

        Span<double> turns = stackalloc double[4];
        for (var i = 0; i < 4; i++)
        {
            var (a, b, c) = (points[i], points[(i + 1) % 4], points[(i + 2) % 4]);
            turns[i] = (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
            double[] sides = [Distance(a, b), Distance(b, c), Distance(c, a)];
            if (Math.Abs(turns[i]) < LeastSine * sides.Order().Take(2).Aggregate((p, q) => p * q))
            {
                return MarkProblem.InLine;
            }
        }

        var left = 0;
        foreach (var turn in turns)
        {
            left += turn > 0.0 ? 1 : 0;
        }

        return left switch
        {
            2 => MarkProblem.Crossed,
            1 or 3 => MarkProblem.Dented,
            _ => left == 4 == counterclockwise ? null : MarkProblem.WrongWayRound,
        };
    }

    private static double Distance((double X, double Y) a, (double X, double Y) b) => double.Hypot(a.X - b.X, a.Y - b.Y);
}
