using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Json;

/// <summary>
/// How values of one type stand in JSON. One declaration reads, writes and describes them, so that the file, the code and
/// the published schema cannot drift apart.
/// </summary>
internal abstract class JsonFormat<T>
{
    /// <summary>Reads the value; false with at least one problem added.</summary>
    public abstract bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out T value);

    public abstract void Write(Utf8JsonWriter writer, T value);

    /// <summary>The JSON Schema of the value; named parts are put into the book and referred to.</summary>
    public abstract JsonObject Schema(SchemaBook book);
}
