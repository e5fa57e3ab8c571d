namespace Seedfall.Exchange.Json;

internal enum JsonSpotKind
{
    Object,
    Array,
    Text,
    Number,
    True,
    False,
    Null,
}

/// <summary>One value of a JSON document with the place it stands at, so that any later check can point to it.</summary>
internal sealed class JsonSpot
{
    public required JsonSpotKind Kind { get; init; }

    /// <summary>Place in the document, for example <c>patches[0].name</c>.</summary>
    public required string Path { get; init; }

    public required int Line { get; init; }

    public required int Column { get; init; }

    /// <summary>The characters of a text, or the digits of a number as written.</summary>
    public string Text { get; init; } = "";

    public List<KeyValuePair<string, JsonSpot>> Members { get; } = [];

    public List<JsonSpot> Items { get; } = [];

    /// <summary>The value as a message quotes it, shortened.</summary>
    public string Shown => Kind switch
    {
        JsonSpotKind.Object => "an object",
        JsonSpotKind.Array => "a list",
        JsonSpotKind.Text => $"\"{Short(Text)}\"",
        JsonSpotKind.Number => Short(Text),
        JsonSpotKind.True => "true",
        JsonSpotKind.False => "false",
        _ => "null",
    };

    /// <summary>The value at a path, or the deepest one on the way to it.</summary>
    public JsonSpot Nearest(string path)
    {
        var inner = Members.Select(m => m.Value).Concat(Items).FirstOrDefault(i =>
            path.StartsWith(i.Path, StringComparison.Ordinal) && (path.Length == i.Path.Length || path[i.Path.Length] is '.' or '['));
        return inner?.Nearest(path) ?? this;
    }

    private static string Short(string text)
    {
        var clean = string.Concat(text.Take(48).Select(c => char.IsControl(c) ? ' ' : c));
        return text.Length > 48 ? clean + "..." : clean;
    }
}
