using System.Text.Json;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Formats;

/// <summary>A forward walk through JSON that knows its line, refuses a name given twice in one object, and bounds the depth.</summary>
internal ref struct JsonWalker
{
    private readonly ReadOnlySpan<byte> _json;
    private Utf8JsonReader _reader;
    private int _countedTo;
    private int _lineStart;
    private int _line = 1;

    internal JsonWalker(ReadOnlySpan<byte> json, int depth)
    {
        _json = json;
        _reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = depth });
        _reader.Read();
    }

    internal readonly JsonTokenType Token => _reader.TokenType;

    /// <summary>The name or text at hand; refused where its bytes or escapes are no text.</summary>
    internal string Text()
    {
        try
        {
            return _reader.GetString() ?? string.Empty;
        }
        catch (InvalidOperationException)
        {
            throw Refuse("text in UTF-8", FieldText.Quote(_reader.ValueSpan));
        }
    }

    /// <summary>Moves to the next token.</summary>
    internal void Next() => _reader.Read();

    /// <summary>
    /// Steps to the next member of the object whose opening brace or last value is at hand, and onto its value.
    /// </summary>
    /// <param name="seen">Names met so far in this object.</param>
    /// <param name="name">The member's name.</param>
    /// <returns>False at the closing brace.</returns>
    internal bool TryMember(HashSet<string> seen, out string name)
    {
        _reader.Read();
        if (_reader.TokenType == JsonTokenType.EndObject)
        {
            name = string.Empty;
            return false;
        }

        name = Text();
        if (!seen.Add(name))
        {
            throw Refuse("each name once in an object", FieldText.Quote(_reader.ValueSpan));
        }

        _reader.Read();
        return true;
    }

    /// <summary>The same for an object whose names are stamps YYYYMMDD or YYYYMMDDHH; the caller sees to stamps given twice.</summary>
    internal bool TryEntry(out int stamp)
    {
        stamp = 0;
        _reader.Read();
        if (_reader.TokenType == JsonTokenType.EndObject)
        {
            return false;
        }

        if (_reader.ValueSpan.Length is not (8 or 10) || !FieldText.TryInt(_reader.ValueSpan, out stamp) || stamp < 10_000_000)
        {
            throw Refuse("a name that is a day as YYYYMMDD or an hour as YYYYMMDDHH", FieldText.Quote(_reader.ValueSpan));
        }

        _reader.Read();
        return true;
    }

    /// <summary>Reads on to the end of the text; anything but blanks breaks the grammar.</summary>
    internal void RequireEnd()
    {
        while (_reader.Read())
        {
        }
    }

    /// <summary>Refuses anything but the opening of an object.</summary>
    internal void RequireObject(string what)
    {
        if (_reader.TokenType != JsonTokenType.StartObject)
        {
            throw Refuse($"an object for {what}", Found());
        }
    }

    /// <summary>The number at hand; null for JSON's null; refused for anything else.</summary>
    internal double? Number(string what)
    {
        if (_reader.TokenType == JsonTokenType.Null)
        {
            return null;
        }

        if (_reader.TokenType != JsonTokenType.Number || !_reader.TryGetDouble(out var value) || !double.IsFinite(value))
        {
            throw Refuse($"a number for {what}", Found());
        }

        return value;
    }

    /// <summary>Passes over the value at hand, its names checked all the same.</summary>
    internal void Skip()
    {
        if (_reader.TokenType == JsonTokenType.StartObject)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            while (TryMember(seen, out _))
            {
                Skip();
            }
        }
        else if (_reader.TokenType == JsonTokenType.StartArray)
        {
            for (_reader.Read(); _reader.TokenType != JsonTokenType.EndArray; _reader.Read())
            {
                Skip();
            }
        }
    }

    /// <summary>Line of the token at hand, from 1.</summary>
    internal int Line()
    {
        var at = (int)_reader.TokenStartIndex;
        for (var i = _json[_countedTo..at].IndexOf((byte)'\n'); i >= 0; i = _json[_countedTo..at].IndexOf((byte)'\n'))
        {
            _line++;
            _countedTo += i + 1;
            _lineStart = _countedTo;
        }

        _countedTo = at;
        return _line;
    }

    internal RefusedException Refuse(string expected, string found)
    {
        var line = Line();
        return new RefusedException(line, (int)_reader.TokenStartIndex - _lineStart + 1, expected, found);
    }

    private readonly string Found() => _reader.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "an array",
        JsonTokenType.None => "the end of the file",
        _ => FieldText.Quote(_reader.ValueSpan),
    };
}
