using System.Collections;
using System.Reflection;

namespace Seedfall.Exchange.Tests.Support;

/// <summary>Compares records through their lists and dictionaries, which record equality does not do.</summary>
internal static class Same
{
    /// <summary>Null where both are the same, else the path of the first difference.</summary>
    public static string? Difference(object? a, object? b, string path = "$")
    {
        if (a is null || b is null)
        {
            return a is null && b is null ? null : $"{path}: {a ?? "null"} / {b ?? "null"}";
        }

        if (a is IEnumerable one and not string && b is IEnumerable other)
        {
            return Items([.. one.Cast<object?>()], [.. other.Cast<object?>()], path);
        }

        if (a.GetType() != b.GetType())
        {
            return $"{path}: {a.GetType().Name} / {b.GetType().Name}";
        }

        var type = a.GetType();
        if (type.IsPrimitive || type.IsEnum || type.Namespace == "System" || type.IsValueType)
        {
            return a.Equals(b) ? null : $"{path}: {a} / {b}";
        }

        return type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0 && p.Name != "EqualityContract")
            .Select(p => Difference(p.GetValue(a), p.GetValue(b), $"{path}.{p.Name}"))
            .FirstOrDefault(d => d is not null);
    }

    private static string? Items(List<object?> a, List<object?> b, string path) =>
        a.Count != b.Count
            ? $"{path}: {a.Count} / {b.Count} items"
            : a.Select((x, i) => Difference(x, b[i], $"{path}[{i}]")).FirstOrDefault(d => d is not null);
}
