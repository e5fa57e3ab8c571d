using System.Runtime.InteropServices;

namespace Seedfall.Photos.Cover;

/// <summary>
/// Points to ask about, spread over the picture and over its doubt: as many above as below the evidence at which half of all doubt
/// lies, and so on by halves (van der Corput 1935). Sharp edges are passed over, but not for the evenest places: those would be the ones
/// most surely right. What is left to choice is left to a shuffle, the same each time.
/// </summary>
internal static class WorthTapping
{
    private const int Points = 10;
    private const int Grid = 97;
    private const int Around = 2;
    private const double Apart = 0.08;
    private const double Even = 4.0;
    private const double Near = 0.5;

    internal static IReadOnlyList<PicturePoint> Of(float[] evidence, int width, int height, EvidenceCounts counts, PictureBias bias, IReadOnlyList<CoverTap> taps, PixelArea? leftOut, int shuffle)
    {
        var reading = bias.Mean;
        var candidates = Candidates(evidence, width, height, leftOut);
        new Random(shuffle).Shuffle(CollectionsMarshal.AsSpan(candidates));
        var chosen = new List<PicturePoint>();
        var avoid = taps.Select(t => new PicturePoint(t.X, t.Y)).ToList();
        for (var k = 0; k < Points; k++)
        {
            var wanted = counts.DoubtQuantile(reading, Halves(taps.Count + k + 1));
            var free = candidates.Where(c => avoid.All(p => Math.Abs(p.X - c.Point.X) > Apart || Math.Abs(p.Y - c.Point.Y) > Apart));
            if (free.Select(c => (Cost: Math.Max(0.0, Math.Abs(c.Evidence - wanted) - Near) + c.Cost, c.Point)).DefaultIfEmpty().MinBy(c => c.Cost) is { Point.X: > 0.0 } best)
            {
                chosen.Add(best.Point);
                avoid.Add(best.Point);
            }
        }

        return chosen;
    }

    private static List<(double Evidence, double Cost, PicturePoint Point)> Candidates(float[] evidence, int width, int height, PixelArea? leftOut)
    {
        var candidates = new List<(double Evidence, double Cost, PicturePoint Point)>();
        for (var gy = 0; gy < Grid; gy++)
        {
            for (var gx = 0; gx < Grid; gx++)
            {
                var (x, y) = (((2 * gx) + 1) * width / (2 * Grid), ((2 * gy) + 1) * height / (2 * Grid));
                if (x >= Around && y >= Around && x < width - Around && y < height - Around && leftOut?.Holds(x, y) != true)
                {
                    candidates.Add((evidence[(y * width) + x], Math.Max(0.0, Unevenness(evidence, width, x, y) - Even), new PicturePoint((x + 0.5) / width, (y + 0.5) / height)));
                }
            }
        }

        return candidates;
    }

    /// <summary>1/2, 1/4, 3/4, 1/8, 5/8 ...: the binary digits of the count mirrored about the point.</summary>
    private static double Halves(int count)
    {
        var (value, digit) = (0.0, 0.5);
        for (; count > 0; count >>= 1, digit /= 2.0)
        {
            value += (count & 1) * digit;
        }

        return value;
    }

    private static double Unevenness(float[] evidence, int width, int x, int y)
    {
        var (least, most) = (float.MaxValue, float.MinValue);
        for (var dy = -Around; dy <= Around; dy += Around)
        {
            for (var dx = -Around; dx <= Around; dx += Around)
            {
                var z = evidence[((y + dy) * width) + x + dx];
                (least, most) = (Math.Min(least, z), Math.Max(most, z));
            }
        }

        return most - least;
    }
}
