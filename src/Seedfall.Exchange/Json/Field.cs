using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>One field of an object, seen from outside its value's type.</summary>
internal abstract class Field<TOwner>(string name, bool required, string about)
{
    public string Name { get; } = name;

    public bool Required { get; } = required;

    public string About { get; } = about;

    public int Index { get; set; }

    /// <summary>The value when the field is absent.</summary>
    public abstract object? Absent { get; }

    public abstract bool TryRead(JsonSpot at, ProblemList problems, out object? value);

    public abstract void Write(Utf8JsonWriter writer, TOwner owner);

    public abstract JsonObject Schema(SchemaBook book);

    /// <summary>After the object is built: false where the field contradicts it.</summary>
    public virtual bool Agrees(object? read, TOwner owner, out string expected)
    {
        expected = "";
        return true;
    }
}

/// <summary>A field whose value becomes part of the object.</summary>
internal sealed class Field<TOwner, T>(string name, JsonFormat<T> format, Func<TOwner, T?> get, bool required, T? absent, Func<T?, bool> skip, string about)
    : Field<TOwner>(name, required, about)
{
    public override object? Absent => absent;

    public override bool TryRead(JsonSpot at, ProblemList problems, out object? value)
    {
        var read = format.TryRead(at, problems, out var typed);
        value = typed;
        return read;
    }

    public override void Write(Utf8JsonWriter writer, TOwner owner)
    {
        var value = get(owner);
        if (!skip(value))
        {
            writer.WritePropertyName(Name);
            format.Write(writer, value!);
        }
    }

    public override JsonObject Schema(SchemaBook book) => format.Schema(book);
}

/// <summary>A field that follows from the others: written for the reader's sake, and checked when read back.</summary>
internal sealed class DerivedField<TOwner, T>(string name, JsonFormat<T> format, Func<TOwner, T> get, string about) : Field<TOwner>(name, true, about)
{
    public override object? Absent => null;

    public override bool TryRead(JsonSpot at, ProblemList problems, out object? value)
    {
        var read = format.TryRead(at, problems, out var typed);
        value = typed;
        return read;
    }

    public override void Write(Utf8JsonWriter writer, TOwner owner)
    {
        writer.WritePropertyName(Name);
        format.Write(writer, get(owner));
    }

    public override JsonObject Schema(SchemaBook book) => format.Schema(book);

    public override bool Agrees(object? read, TOwner owner, out string expected)
    {
        var right = get(owner);
        expected = $"\"{right}\", which follows from the other fields";
        return Equals(read, right);
    }
}
