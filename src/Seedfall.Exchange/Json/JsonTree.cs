using System.Text;
using System.Text.Json;

namespace Seedfall.Exchange.Json;

/// <summary>Reads JSON text into a tree that remembers lines and columns. Strict: no comments, no trailing commas, no key twice.</summary>
internal static class JsonTree
{
    public const int MaxDepth = 32;

    public const int MaxBytes = 16 << 20;

    /// <summary>The document, or null with at least one problem.</summary>
    public static JsonSpot? Read(ReadOnlySpan<byte> utf8, ProblemList problems)
    {
        if (utf8.Length > MaxBytes)
        {
            problems.Add("", 1, 1, $"at most {MaxBytes >> 20} MB", $"{utf8.Length >> 20} MB");
            return null;
        }

        utf8 = utf8.StartsWith(Encoding.UTF8.Preamble) ? utf8[3..] : utf8;
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = MaxDepth });
        var places = new LinePlaces(utf8);
        try
        {
            reader.Read();
            var root = Value(ref reader, ref places, "", problems);
            reader.Read();
            return problems.Any ? null : root;
        }
        catch (JsonException broken)
        {
            var (line, column) = ((int)(broken.LineNumber ?? 0) + 1, (int)(broken.BytePositionInLine ?? 0) + 1);
            problems.Add("", line, column, Expected(broken, utf8), Found(utf8, line, column));
        }
        catch (InvalidOperationException)
        {
            var (line, column) = places.At((int)reader.TokenStartIndex);
            problems.Add("", line, column, "text in UTF-8", "bytes that are none");
        }

        return null;
    }

    private static JsonSpot Value(ref Utf8JsonReader reader, ref LinePlaces places, string path, ProblemList problems)
    {
        var (line, column) = places.At((int)reader.TokenStartIndex);
        var spot = new JsonSpot
        {
            Kind = Kind(reader.TokenType),
            Path = path,
            Line = line,
            Column = column,
            Text = reader.TokenType switch
            {
                JsonTokenType.String => reader.GetString()!,
                JsonTokenType.Number => Encoding.ASCII.GetString(reader.ValueSpan),
                _ => "",
            },
        };
        if (spot.Kind == JsonSpotKind.Object)
        {
            Members(ref reader, ref places, spot, problems);
        }
        else if (spot.Kind == JsonSpotKind.Array)
        {
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                spot.Items.Add(Value(ref reader, ref places, $"{path}[{spot.Items.Count}]", problems));
            }
        }

        return spot;
    }

    private static void Members(ref Utf8JsonReader reader, ref LinePlaces places, JsonSpot spot, ProblemList problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            var path = spot.Path.Length == 0 ? name : $"{spot.Path}.{name}";
            if (!seen.Add(name))
            {
                var (line, column) = places.At((int)reader.TokenStartIndex);
                problems.Add(path, line, column, "each field once", "the field a second time");
            }

            reader.Read();
            spot.Members.Add(new(name, Value(ref reader, ref places, path, problems)));
        }
    }

    private static JsonSpotKind Kind(JsonTokenType token) => token switch
    {
        JsonTokenType.StartObject => JsonSpotKind.Object,
        JsonTokenType.StartArray => JsonSpotKind.Array,
        JsonTokenType.String => JsonSpotKind.Text,
        JsonTokenType.Number => JsonSpotKind.Number,
        JsonTokenType.True => JsonSpotKind.True,
        JsonTokenType.False => JsonSpotKind.False,
        _ => JsonSpotKind.Null,
    };

    private static string Expected(JsonException broken, ReadOnlySpan<byte> utf8) =>
        utf8.Trim(" \t\r\n"u8).IsEmpty ? "a JSON object"
        : broken.Message.Contains("depth", StringComparison.Ordinal) ? $"at most {MaxDepth} levels of nesting"
        : "JSON (RFC 8259: no comments, no trailing commas, no NaN or Infinity)";

    private static string Found(ReadOnlySpan<byte> utf8, int line, int column)
    {
        for (; line > 1; line--)
        {
            var end = utf8.IndexOf((byte)'\n');
            utf8 = utf8[(end + 1)..];
        }

        var rest = utf8[Math.Min(column - 1, utf8.Length)..];
        if (rest.IsEmpty)
        {
            return "the end of the file";
        }

        var shown = Encoding.UTF8.GetString(rest[..Math.Min(rest.Length, 16)]);
        return $"\"{string.Concat(shown.TakeWhile(c => !char.IsControl(c)))}\"";
    }
}
