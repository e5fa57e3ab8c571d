using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>The values read for one object, by field.</summary>
internal sealed class FieldValues(object?[] values)
{
    public T Get<TOwner, T>(Field<TOwner, T> field) => (T)values[field.Index]!;

    public object? this[int index] => values[index];
}

/// <summary>An object with a fixed set of fields; anything else in it is a problem.</summary>
internal abstract class ObjectFormat<T>(string name) : JsonFormat<T>
    where T : class
{
    private readonly List<Field<T>> _fields = [];

    /// <summary>The names of the fields, in the order they are written.</summary>
    public IEnumerable<string> FieldNames => _fields.Select(f => f.Name);

    protected abstract T Build(FieldValues values);

    /// <summary>A field that must be there.</summary>
    internal Field<T, TValue> Required<TValue>(string field, JsonFormat<TValue> format, Func<T, TValue> get, string about) =>
        Add(new Field<T, TValue>(field, format, get!, true, default, _ => false, about));

    /// <summary>A field that may be missing; null then.</summary>
    internal Field<T, TValue> Optional<TValue>(string field, JsonFormat<TValue> format, Func<T, TValue?> get, string about)
        where TValue : class =>
        Add(new Field<T, TValue>(field, format, get, false, null, v => v is null, about));

    /// <summary>A field that may be missing; null then.</summary>
    internal Field<T, TValue?> Optional<TValue>(string field, JsonFormat<TValue> format, Func<T, TValue?> get, string about)
        where TValue : struct =>
        Add(new Field<T, TValue?>(field, new NullableFormat<TValue>(format), get, false, null, v => v is null, about));

    /// <summary>A field that may be missing and then has a plain meaning.</summary>
    internal Field<T, TValue> Usual<TValue>(string field, JsonFormat<TValue> format, Func<T, TValue> get, TValue usual, string about) =>
        Add(new Field<T, TValue>(field, format, get!, false, usual, v => Equals(v, usual), about));

    /// <summary>A list that may be missing and then is empty.</summary>
    internal Field<T, IReadOnlyList<TValue>> List<TValue>(string field, JsonFormat<TValue> format, Func<T, IReadOnlyList<TValue>> get, string about) =>
        Add(new Field<T, IReadOnlyList<TValue>>(field, new ListFormat<TValue>(format), get!, false, [], v => v!.Count == 0, about));

    /// <summary>A field that follows from the rest.</summary>
    internal void Derived<TValue>(string field, JsonFormat<TValue> format, Func<T, TValue> get, string about) =>
        Add(new DerivedField<T, TValue>(field, format, get, about));

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (at.Kind != JsonSpotKind.Object)
        {
            problems.Add(at, "an object");
            return false;
        }

        var before = problems.Count;
        var values = new object?[_fields.Count];
        var places = new JsonSpot?[_fields.Count];
        foreach (var (key, spot) in at.Members)
        {
            ReadMember(key, spot, values, places, problems);
        }

        foreach (var field in _fields.Where(f => places[f.Index] is null))
        {
            values[field.Index] = field.Absent;
            if (field.Required)
            {
                problems.Add(at, $"the field \"{field.Name}\"", "an object without it");
            }
        }

        if (problems.Count > before)
        {
            return false;
        }

        value = Build(new FieldValues(values));
        return AllAgree(value, values, places, problems);
    }

    public override void Write(Utf8JsonWriter writer, T value)
    {
        writer.WriteStartObject();
        foreach (var field in _fields)
        {
            field.Write(writer, value);
        }

        writer.WriteEndObject();
    }

    public override JsonObject Schema(SchemaBook book) => book.Refer(name, () =>
    {
        var properties = new JsonObject();
        var required = new JsonArray();
        foreach (var field in _fields)
        {
            properties[field.Name] = Described(field.Schema(book), field.About);
            if (field.Required)
            {
                required.Add(field.Name);
            }
        }

        return new JsonObject
        {
            ["type"] = "object",
            ["additionalProperties"] = false,
            ["required"] = required,
            ["properties"] = properties,
        };
    });

    private static JsonObject Described(JsonObject schema, string about)
    {
        if (about.Length == 0)
        {
            return schema;
        }

        if (schema.ContainsKey("$ref"))
        {
            schema = new JsonObject { ["allOf"] = new JsonArray(schema) };
        }

        var own = (string?)schema["description"];
        schema["description"] = own is null ? about : $"{about} {own}";
        return schema;
    }

    private void ReadMember(string key, JsonSpot spot, object?[] values, JsonSpot?[] places, ProblemList problems)
    {
        if (_fields.Find(f => f.Name == key) is not { } field)
        {
            problems.Add(spot, NearNames.Expected(key, _fields.Select(f => f.Name)), $"the unknown field \"{key}\"");
            return;
        }

        places[field.Index] = spot;
        if (field.TryRead(spot, problems, out var value))
        {
            values[field.Index] = value;
        }
    }

    private bool AllAgree(T value, object?[] values, JsonSpot?[] places, ProblemList problems)
    {
        var agree = true;
        foreach (var field in _fields)
        {
            if (!field.Agrees(values[field.Index], value, out var expected))
            {
                problems.Add(places[field.Index]!, expected);
                agree = false;
            }
        }

        return agree;
    }

    private TField Add<TField>(TField field)
        where TField : Field<T>
    {
        field.Index = _fields.Count;
        _fields.Add(field);
        return field;
    }
}
