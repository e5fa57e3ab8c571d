using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>An object with exactly one field, whose name says which of several kinds the value is.</summary>
internal abstract class ChoiceFormat<T>(string name) : JsonFormat<T>
    where T : class
{
    private readonly List<Choice> _choices = [];

    /// <summary>Adds one kind. <paramref name="part"/> takes the value apart; null where it is of another kind.</summary>
    protected void Kind<TPart>(string key, JsonFormat<TPart> format, Func<T, TPart?> part, Func<TPart, T> whole, string about)
        where TPart : class =>
        _choices.Add(new Choice<TPart>(key, format, part, whole, about));

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (at.Kind != JsonSpotKind.Object || at.Members.Count != 1)
        {
            problems.Add(at, $"an object with one field out of {string.Join(", ", _choices.Select(c => c.Key))}", at.Kind == JsonSpotKind.Object ? $"{at.Members.Count} fields" : at.Shown);
            return false;
        }

        var (key, spot) = at.Members[0];
        if (_choices.Find(c => c.Key == key) is { } choice)
        {
            return choice.TryRead(spot, problems, out value);
        }

        problems.Add(spot, NearNames.Expected(key, _choices.Select(c => c.Key)), $"the unknown field \"{key}\"");
        return false;
    }

    public override void Write(Utf8JsonWriter writer, T value)
    {
        writer.WriteStartObject();
        _choices.Find(c => c.TryWrite(writer, value));
        writer.WriteEndObject();
    }

    public override JsonObject Schema(SchemaBook book) => book.Refer(name, () => new JsonObject
    {
        ["oneOf"] = new JsonArray([.. _choices.Select(c => new JsonObject
        {
            ["type"] = "object",
            ["description"] = c.About,
            ["additionalProperties"] = false,
            ["required"] = new JsonArray(c.Key),
            ["properties"] = new JsonObject { [c.Key] = c.Schema(book) },
        })]),
    });

    private abstract class Choice(string key, string about)
    {
        public string Key { get; } = key;

        public string About { get; } = about;

        public abstract bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value);

        public abstract bool TryWrite(Utf8JsonWriter writer, T value);

        public abstract JsonObject Schema(SchemaBook book);
    }

    private sealed class Choice<TPart>(string key, JsonFormat<TPart> format, Func<T, TPart?> part, Func<TPart, T> whole, string about) : Choice(key, about)
        where TPart : class
    {
        public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value)
        {
            value = format.TryRead(at, problems, out var read) ? whole(read) : null;
            return value is not null;
        }

        public override bool TryWrite(Utf8JsonWriter writer, T value)
        {
            if (part(value) is not { } taken)
            {
                return false;
            }

            writer.WritePropertyName(Key);
            format.Write(writer, taken);
            return true;
        }

        public override JsonObject Schema(SchemaBook book) => format.Schema(book);
    }
}
