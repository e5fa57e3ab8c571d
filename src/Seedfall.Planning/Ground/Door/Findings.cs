using System.Globalization;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Collects what cannot be right, with the checks that recur.</summary>
internal sealed class Findings
{
    internal static readonly DateOnly FirstDate = new(2000, 1, 1);
    internal static readonly DateOnly LastDate = new(2100, 12, 31);

    private readonly List<LawnProblem> _all = [];

    internal IReadOnlyList<LawnProblem> All => _all;

    internal void Add(string path, string found, string expected) => _all.Add(new(path, found, expected));

    /// <summary>A number inside both bounds; NaN and infinities fail. Null passes.</summary>
    internal void Range(string path, double? value, double low, double high, string unit)
    {
        if (value is { } v && !(v >= low && v <= high))
        {
            Add(path, Text(v, unit), $"{Text(low, unit)} to {Text(high, unit)}");
        }
    }

    /// <summary>A number above zero and up to a bound.</summary>
    internal void Above(string path, double? value, double high, string unit)
    {
        if (value is { } v && !(v > 0.0 && v <= high))
        {
            Add(path, Text(v, unit), $"above 0 and up to {Text(high, unit)}");
        }
    }

    internal void Share(string path, Fraction? share)
    {
        if (share is { } s && !(s.Value >= 0.0 && s.Value <= 1.0))
        {
            Add(path, Text(s.Percent, "%"), "0 to 100 %");
        }
    }

    internal void Date(string path, DateOnly? date)
    {
        if (date is { } d && (d < FirstDate || d > LastDate))
        {
            Add(path, d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "a date from 2000 to 2100");
        }
    }

    /// <summary>Words that say something.</summary>
    internal void Words(string path, string? text, int most = 200)
    {
        if (string.IsNullOrWhiteSpace(text) || text.Length > most)
        {
            Add(path, text is null ? "nothing" : text.Length > most ? $"{text.Length} characters" : "blank", $"1 to {most} characters");
        }
    }

    /// <summary>A stable id: lower-case letters, digits and hyphens.</summary>
    internal void Id(string path, string? id)
    {
        if (id is null || id.Length is 0 or > 60 || id.Any(c => !(char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-')))
        {
            Add(path, id is null ? "nothing" : $"'{id}'", "lower-case letters, digits and hyphens, at most 60");
        }
    }

    /// <summary>Each value once; the second and later are named.</summary>
    internal void Once(IReadOnlyList<string> values, Func<int, string> path, string what)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < values.Count; i++)
        {
            if (values[i] is { } value && !seen.Add(value))
            {
                Add(path(i), $"'{value}' a second time", $"each {what} once");
            }
        }
    }

    internal static string Text(double value, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.####}{(unit.Length == 0 ? "" : " ")}{unit}");
}
