using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>A list of values of one format, at least <paramref name="least"/> of them.</summary>
internal sealed class ListFormat<T>(JsonFormat<T> item, int least = 0) : JsonFormat<IReadOnlyList<T>>
{
    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = null;
        if (at.Kind != JsonSpotKind.Array)
        {
            problems.Add(at, "a list");
            return false;
        }

        if (at.Items.Count < least)
        {
            problems.Add(at, $"a list of at least {least}", $"{at.Items.Count}");
            return false;
        }

        var items = new List<T>(at.Items.Count);
        foreach (var spot in at.Items)
        {
            if (item.TryRead(spot, problems, out var read))
            {
                items.Add(read);
            }
        }

        value = items;
        return items.Count == at.Items.Count;
    }

    public override void Write(Utf8JsonWriter writer, IReadOnlyList<T> value)
    {
        writer.WriteStartArray();
        foreach (var one in value)
        {
            item.Write(writer, one);
        }

        writer.WriteEndArray();
    }

    public override JsonObject Schema(SchemaBook book)
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Schema(book) };
        if (least > 0)
        {
            schema["minItems"] = least;
        }

        return schema;
    }
}

/// <summary>A value type where null means absent; null itself is never written.</summary>
internal sealed class NullableFormat<T>(JsonFormat<T> inner) : JsonFormat<T?>
    where T : struct
{
    public override bool TryRead(JsonSpot at, ProblemList problems, out T? value)
    {
        var read = inner.TryRead(at, problems, out var plain);
        value = read ? plain : null;
        return read;
    }

    public override void Write(Utf8JsonWriter writer, T? value) => inner.Write(writer, value!.Value);

    public override JsonObject Schema(SchemaBook book) => inner.Schema(book);
}
