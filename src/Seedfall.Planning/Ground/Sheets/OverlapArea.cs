using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Sheets;

/// <summary>Ground two outlines share.</summary>
public static class OverlapArea
{
    /// <summary>
    /// m2, exact for straight sides: the sheet is cut into level bands at every corner and every crossing; within a band no two
    /// sides cross, so the shared width at its middle times its height is the shared area. Points inside by the even-odd rule.
    /// </summary>
    /// <param name="first">A sound outline.</param>
    /// <param name="second">Another.</param>
    public static Area Of(PatchShape.Outline first, PatchShape.Outline second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var (one, two) = (Sides(first), Sides(second));
        var levelsM = Levels(one, two);
        var sumM2 = 0.0;
        for (var i = 1; i < levelsM.Count; i++)
        {
            var heightM = levelsM[i] - levelsM[i - 1];
            if (heightM > 0.0)
            {
                sumM2 += heightM * SharedM(one, two, 0.5 * (levelsM[i] + levelsM[i - 1]));
            }
        }

        return Area.FromSquareMeters(sumM2);
    }

    private static List<RingSide> Sides(PatchShape.Outline outline) => [.. outline.Holes.Prepend(outline.Ring).SelectMany(RingSides.Of)];

    private static List<double> Levels(List<RingSide> one, List<RingSide> two)
    {
        var (southM, northM) = (Math.Max(South(one), South(two)), Math.Min(North(one), North(two)));
        var levelsM = new List<double>();
        if (!(northM > southM))
        {
            return levelsM;
        }

        levelsM.AddRange([southM, northM]);
        levelsM.AddRange(one.Concat(two).Select(s => s.From.NorthM).Where(n => n > southM && n < northM));
        RingSides.Near(one, two, (i, j) =>
        {
            if (Segments.Meet(one[i].From, one[i].To, two[j].From, two[j].To) is { } at && at.NorthM > southM && at.NorthM < northM)
            {
                levelsM.Add(at.NorthM);
            }

            return true;
        });
        levelsM.Sort();
        return levelsM;
    }

    /// <summary>Width at a level that lies in both, m.</summary>
    private static double SharedM(List<RingSide> one, List<RingSide> two, double levelM)
    {
        var (a, b) = (Cuts(one, levelM), Cuts(two, levelM));
        var (i, j, sumM) = (0, 0, 0.0);
        while (i + 1 < a.Count && j + 1 < b.Count)
        {
            sumM += Math.Max(0.0, Math.Min(a[i + 1], b[j + 1]) - Math.Max(a[i], b[j]));
            (i, j) = a[i + 1] < b[j + 1] ? (i + 2, j) : (i, j + 2);
        }

        return sumM;
    }

    private static List<double> Cuts(List<RingSide> sides, double levelM)
    {
        var cuts = new List<double>();
        foreach (var (_, a, b) in sides)
        {
            if (a.NorthM > levelM != b.NorthM > levelM)
            {
                cuts.Add(a.EastM + (levelM - a.NorthM) / (b.NorthM - a.NorthM) * (b.EastM - a.EastM));
            }
        }

        cuts.Sort();
        return cuts;
    }

    private static double South(List<RingSide> sides) => sides.Min(s => Math.Min(s.From.NorthM, s.To.NorthM));

    private static double North(List<RingSide> sides) => sides.Max(s => Math.Max(s.From.NorthM, s.To.NorthM));
}
