using System.Text.Json.Nodes;
using Seedfall.Exchange.Json;

namespace Seedfall.Exchange.Units;

/// <summary>A quantity of one of two kinds as text: its unit says which, so that a file cannot give both.</summary>
/// <param name="first">The first kind; where its units could be read as the second's, the first holds.</param>
/// <param name="second">The second kind.</param>
/// <param name="fromFirst">The value of the first kind; null where it is out of range.</param>
/// <param name="fromSecond">The value of the second kind; null where it is out of range.</param>
/// <param name="write">Writes the value by its kind.</param>
internal sealed class EitherText<TFirst, TSecond, T>(
    QuantityText<TFirst> first, QuantityText<TSecond> second, Func<TFirst, T?> fromFirst, Func<TSecond, T?> fromSecond, Func<T, string> write)
    where TFirst : notnull
    where TSecond : notnull
    where T : struct
{
    /// <summary>What a text should look like, for messages.</summary>
    public string Expected => $"{first.Expected}, or {second.Expected}";

    internal JsonFormat<T> Format => new TextFormat<T>(
        t => Parse(t) is { } value ? new(value) : null,
        write,
        Expected,
        () => new JsonObject { ["pattern"] = $"{first.Pattern}|{second.Pattern}", ["examples"] = new JsonArray(first.Example, second.Example) });

    /// <summary>The value of a text; null where it is neither.</summary>
    public T? Parse(string text) =>
        first.TryParse(text, out var a) ? fromFirst(a) : second.TryParse(text, out var b) ? fromSecond(b) : null;
}
