using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>Collects the named parts of one JSON Schema (draft 7).</summary>
internal sealed class SchemaBook
{
    private readonly SortedDictionary<string, JsonObject> _definitions = new(StringComparer.Ordinal);

    /// <summary>A reference to the named part, described on first use.</summary>
    public JsonObject Refer(string name, Func<JsonObject> describe)
    {
        if (!_definitions.ContainsKey(name))
        {
            _definitions[name] = [];
            _definitions[name] = describe();
        }

        return new JsonObject { ["$ref"] = $"#/definitions/{name}" };
    }

    /// <summary>The whole schema as text, with stable order and line ends.</summary>
    public static string Text<T>(string title, string description, JsonFormat<T> format)
    {
        var book = new SchemaBook();
        var root = format.Schema(book);
        var reference = (string)root["$ref"]!;
        var schema = new JsonObject
        {
            ["$schema"] = "http://json-schema.org/draft-07/schema#",
            ["title"] = title,
            ["description"] = description,
        };
        var name = reference["#/definitions/".Length..];
        foreach (var (key, value) in book._definitions[name])
        {
            schema[key] = value?.DeepClone();
        }

        var definitions = new JsonObject();
        foreach (var (key, value) in book._definitions.Where(d => d.Key != name))
        {
            definitions[key] = value;
        }

        schema["definitions"] = definitions;
        return schema.ToJsonString(Indented).ReplaceLineEndings("\n") + "\n";
    }

    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        TypeInfoResolver = new System.Text.Json.Serialization.Metadata.DefaultJsonTypeInfoResolver(),
    };
}
