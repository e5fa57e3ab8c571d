using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>A value that stands in JSON as one text.</summary>
/// <param name="parse">The value of a text, or null where the text is none.</param>
/// <param name="write">The text of a value; parsing it gives the value back.</param>
/// <param name="expected">What the text should have been, for messages.</param>
/// <param name="schema">Schema keywords beside the type.</param>
internal sealed class TextFormat<T>(Func<string, Parsed<T>?> parse, Func<T, string> write, string expected, Func<JsonObject> schema) : JsonFormat<T>
{
    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value)
    {
        if (at.Kind == JsonSpotKind.Text && parse(at.Text) is { } parsed)
        {
            value = parsed.Value;
            return true;
        }

        problems.Add(at, expected);
        value = default;
        return false;
    }

    public override void Write(Utf8JsonWriter writer, T value) => writer.WriteStringValue(write(value));

    public override JsonObject Schema(SchemaBook book)
    {
        var described = schema();
        described.Insert(0, "type", "string");
        return described;
    }
}

/// <summary>A parsed value; its absence is the failure.</summary>
internal readonly record struct Parsed<T>(T Value);

/// <summary>A value that stands in JSON as a number.</summary>
internal sealed class NumberFormat<T>(Func<string, Parsed<T>?> parse, Action<Utf8JsonWriter, T> write, string expected, Func<JsonObject> schema) : JsonFormat<T>
{
    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value)
    {
        if (at.Kind == JsonSpotKind.Number && parse(at.Text) is { } parsed)
        {
            value = parsed.Value;
            return true;
        }

        problems.Add(at, expected);
        value = default;
        return false;
    }

    public override void Write(Utf8JsonWriter writer, T value) => write(writer, value);

    public override JsonObject Schema(SchemaBook book) => schema();
}

/// <summary>true or false.</summary>
internal sealed class TruthFormat : JsonFormat<bool>
{
    public override bool TryRead(JsonSpot at, ProblemList problems, out bool value)
    {
        value = at.Kind == JsonSpotKind.True;
        if (at.Kind is JsonSpotKind.True or JsonSpotKind.False)
        {
            return true;
        }

        problems.Add(at, "true or false");
        return false;
    }

    public override void Write(Utf8JsonWriter writer, bool value) => writer.WriteBooleanValue(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "boolean" };
}
