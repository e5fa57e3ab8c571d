namespace Seedfall.Exchange.Json;

/// <summary>Words the answer to an unknown name: the one probably meant, or all that are known.</summary>
internal static class NearNames
{
    public static string Expected(string given, IEnumerable<string> known)
    {
        var names = known.ToList();
        var near = names.Select(n => (Name: n, Distance: Distance(given, n))).Where(n => n.Distance <= 2).OrderBy(n => n.Distance).FirstOrDefault();
        return near.Name is not null ? $"\"{near.Name}\"" : $"one of {string.Join(", ", names)}";
    }

    /// <summary>Edit distance (insert, delete, replace), letter case ignored.</summary>
    private static int Distance(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 2)
        {
            return 3;
        }

        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = corner + (char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(replace, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
