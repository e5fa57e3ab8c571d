using Seedfall.Weather.Input;

namespace Seedfall.Weather.Csv;

/// <summary>
/// Records of separated fields (RFC 4180: fields may be quoted, a quote inside is doubled, a quoted field may hold a line
/// break), one at a time in fixed buffers. Lines that start with '#' and blank lines are passed over, the former handed to
/// <paramref name="onComment"/>.
/// </summary>
internal sealed class CsvReader(LineReader lines, byte separator, Action<string>? onComment = null)
{
    private const int MostFields = 1024;

    private readonly byte[] _text = new byte[lines.Limits.LineBytes + 1];
    private readonly int[] _ends = new int[MostFields];
    private int _length;

    /// <summary>Line the record begins on, from 1.</summary>
    internal int Line { get; private set; }

    internal int Count { get; private set; }

    internal byte Separator => separator;

    /// <summary>The field's text, quotes taken away; good until the next record.</summary>
    internal ReadOnlySpan<byte> this[int i] => _text.AsSpan(i == 0 ? 0 : _ends[i - 1], _ends[i] - (i == 0 ? 0 : _ends[i - 1]));

    /// <summary>The next record.</summary>
    internal bool TryRead()
    {
        while (lines.TryRead(out var line))
        {
            if (line.StartsWith("#"u8))
            {
                onComment?.Invoke(FieldText.Decode(line[1..]));
            }
            else if (!line.Trim(" \t"u8).IsEmpty)
            {
                (Line, Count, _length) = (lines.Line, 0, 0);
                Split(line);
                return true;
            }
        }

        return false;
    }

    private void Split(ReadOnlySpan<byte> line)
    {
        if (line.IndexOf((byte)'"') >= 0)
        {
            SplitQuoted(line);
            return;
        }

        while (true)
        {
            var at = line.IndexOf(separator);
            Append(at < 0 ? line : line[..at]);
            EndField();
            if (at < 0)
            {
                return;
            }

            line = line[(at + 1)..];
        }
    }

    private void SplitQuoted(ReadOnlySpan<byte> line)
    {
        var at = 0;
        while (true)
        {
            if (at < line.Length && line[at] == '"')
            {
                line = Quoted(line, at + 1, out at);
            }

            var rest = line[at..];
            var end = rest.IndexOf(separator);
            Append(end < 0 ? rest : rest[..end]);
            EndField();
            if (end < 0)
            {
                return;
            }

            at += end + 1;
        }
    }

    /// <summary>Takes a quoted field from after its opening quote; returns the line it ends on and where.</summary>
    private ReadOnlySpan<byte> Quoted(ReadOnlySpan<byte> line, int at, out int after)
    {
        while (true)
        {
            var quote = line[at..].IndexOf((byte)'"');
            if (quote < 0)
            {
                Append(line[at..]);
                Append("\n"u8);
                line = NextLine();
                at = 0;
                continue;
            }

            Append(line.Slice(at, quote));
            at += quote + 1;
            if (at < line.Length && line[at] == '"')
            {
                Append("\""u8);
                at++;
                continue;
            }

            if (at < line.Length && line[at] != separator)
            {
                throw new RefusedException(lines.Line, Count + 1, "a separator after a closing quote", FieldText.Quote(line[at..]));
            }

            after = at;
            return line;
        }
    }

    private ReadOnlySpan<byte> NextLine() => lines.TryRead(out var next)
        ? next
        : throw new RefusedException(Line, Count + 1, "a closing quote", "the end of the file");

    private void Append(ReadOnlySpan<byte> part)
    {
        if (_length + part.Length > _text.Length)
        {
            throw new RefusedException(Line, Count + 1, FormattableString.Invariant($"a record of at most {lines.Limits.LineBytes} bytes"), "a longer one");
        }

        part.CopyTo(_text.AsSpan(_length));
        _length += part.Length;
    }

    private void EndField()
    {
        if (Count == MostFields)
        {
            throw new RefusedException(Line, 0, FormattableString.Invariant($"at most {MostFields} fields"), "more");
        }

        _ends[Count++] = _length;
    }
}
