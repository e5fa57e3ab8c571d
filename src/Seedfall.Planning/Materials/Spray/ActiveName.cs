namespace Seedfall.Planning.Materials;

/// <summary>Whether two names as people write them mean the same active ingredient.</summary>
internal static class ActiveName
{
    /// <summary>True where one name stands whole within the other, letters' case aside: <c>mesotrione</c> and <c>Mesotrione 4 lb/gal</c>, but not <c>2,4-D</c> and <c>2,4-DB</c>.</summary>
    internal static bool Same(string a, string b)
    {
        var (x, y) = (a.Trim(), b.Trim());
        return x.Length > 0 && y.Length > 0 && (x.Length <= y.Length ? StandsIn(x, y) : StandsIn(y, x));
    }

    private static bool StandsIn(string part, string whole)
    {
        for (var at = whole.IndexOf(part, StringComparison.OrdinalIgnoreCase); at >= 0; at = whole.IndexOf(part, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var end = at + part.Length;
            if ((at == 0 || !char.IsLetterOrDigit(whole[at - 1])) && (end == whole.Length || !char.IsLetterOrDigit(whole[end])))
            {
                return true;
            }
        }

        return false;
    }
}
