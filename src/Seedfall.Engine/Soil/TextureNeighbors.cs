using Seedfall.Engine.Units;

namespace Seedfall.Engine.Soil;

/// <summary>Which classes of the texture triangle share a border.</summary>
public static class TextureNeighbors
{
    // Steps of a half percent: the shortest border of the triangle is a few percent long.
    private const int Steps = 200;

    private static readonly IReadOnlyList<SoilTexture>[] Found = Find();

    /// <summary>The classes next to one, in the order of <see cref="SoilTexture"/>.</summary>
    public static IReadOnlyList<SoilTexture> Of(SoilTexture texture) => Enum.IsDefined(texture)
        ? Found[(int)texture]
        : throw new ArgumentOutOfRangeException(nameof(texture), texture, "one of the twelve USDA classes is needed");

    private static IReadOnlyList<SoilTexture>[] Find()
    {
        var next = new SortedSet<SoilTexture>[Enum.GetValues<SoilTexture>().Length];
        for (var i = 0; i < next.Length; i++)
        {
            next[i] = [];
        }

        for (var sand = 0; sand < Steps; sand++)
        {
            for (var clay = 0; sand + clay < Steps; clay++)
            {
                var here = At(sand, clay);
                Join(next, here, At(sand + 1, clay));
                Join(next, here, At(sand, clay + 1));
            }
        }

        return [.. next.Select(n => (IReadOnlyList<SoilTexture>)[.. n])];
    }

    private static void Join(SortedSet<SoilTexture>[] next, SoilTexture a, SoilTexture b)
    {
        if (a != b)
        {
            next[(int)a].Add(b);
            next[(int)b].Add(a);
        }
    }

    private static SoilTexture At(int sand, int clay) => TextureTriangle.ClassOf(Fraction.Of((double)sand / Steps), Fraction.Of((double)clay / Steps));
}
