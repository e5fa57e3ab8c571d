using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>The kebab-case names of an enum's values: <c>TallFescue</c> stands as <c>tall-fescue</c>.</summary>
public static class NamesOf<T>
    where T : struct, Enum
{
    private static readonly Dictionary<T, string> ByValue = Enum.GetValues<T>().ToDictionary(v => v, v => JsonNamingPolicy.KebabCaseLower.ConvertName(v.ToString()));
    private static readonly Dictionary<string, T> ByName = ByValue.ToDictionary(p => p.Value, p => p.Key, StringComparer.Ordinal);

    /// <summary>All names, in the order of declaration.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Enum.GetValues<T>().Select(v => ByValue[v])];

    /// <summary>The name of a value; throws for a value the enum does not declare.</summary>
    public static string Of(T value) =>
        ByValue.TryGetValue(value, out var name) ? name : throw new ArgumentOutOfRangeException(nameof(value), value, $"is not a {typeof(T).Name}");

    /// <summary>The value of a name, or null.</summary>
    public static T? Value(string name) => ByName.TryGetValue(name, out var value) ? value : null;

    internal static readonly JsonFormat<T> Format = new TextFormat<T>(
        t => Value(t) is { } v ? new(v) : null,
        Of,
        $"one of {string.Join(", ", All)}",
        () => new JsonObject { ["enum"] = new JsonArray([.. All.Select(n => JsonValue.Create(n))]) });
}
