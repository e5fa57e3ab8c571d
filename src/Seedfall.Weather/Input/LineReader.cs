using System.Buffers;
using System.Text;

namespace Seedfall.Weather.Input;

/// <summary>
/// Text lines as bytes out of one fixed buffer. A line longer than the limit, a file bigger than the limit and bytes that
/// no text holds are refused, so memory stays bounded whatever the file is.
/// </summary>
internal sealed class LineReader : IDisposable
{
    private readonly Stream _stream;
    private readonly WeatherReadLimits _limits;
    private readonly Func<int, bool> _mayTake;
    private readonly byte[] _buffer;
    private long _bytes;
    private int _start;
    private int _end;
    private bool _ended;

    /// <param name="stream">Unpacked content.</param>
    /// <param name="limits">The walls.</param>
    /// <param name="mayTake">Asked for every block of bytes; false where the reading as a whole has become too big.</param>
    internal LineReader(Stream stream, WeatherReadLimits limits, Func<int, bool> mayTake)
    {
        (_limits, _mayTake) = (limits, mayTake);
        _buffer = ArrayPool<byte>.Shared.Rent(limits.LineBytes + 65_536);
        _stream = stream;
        Fill();
        var wide = WideEncoding();
        if (wide is not null)
        {
            _stream = Encoding.CreateTranscodingStream(new HeadedStream(_buffer[.._end], stream), wide, Encoding.UTF8);
            (_start, _end, _bytes, _ended) = (0, 0, 0, false);
            Fill();
        }

        if (_buffer.AsSpan(_start, _end - _start).StartsWith("\uFEFF"u8))
        {
            _start += 3;
        }
    }

    /// <summary>Number of the line last read, from 1.</summary>
    internal int Line { get; private set; }

    internal WeatherReadLimits Limits => _limits;

    /// <summary>The beginning of the file, at most one buffer, without reading past it.</summary>
    internal ReadOnlySpan<byte> Peek() => _buffer.AsSpan(_start, _end - _start);

    /// <summary>True where <see cref="Peek"/> shows the whole file.</summary>
    internal bool PeekIsWhole => _ended;

    /// <summary>The next line without its end; the span is good until the next call.</summary>
    internal bool TryRead(out ReadOnlySpan<byte> line)
    {
        var searched = 0;
        while (true)
        {
            var at = _buffer.AsSpan(_start + searched, _end - _start - searched).IndexOf((byte)'\n');
            if (at >= 0)
            {
                line = Checked(_buffer.AsSpan(_start, searched + at));
                _start += searched + at + 1;
                return true;
            }

            searched = _end - _start;
            if (searched > _limits.LineBytes)
            {
                throw TooLong();
            }

            if (_ended)
            {
                line = searched > 0 ? Checked(_buffer.AsSpan(_start, searched)) : default;
                _start = _end;
                return searched > 0;
            }

            Fill();
        }
    }

    /// <summary>Everything that is left, for formats held whole.</summary>
    internal ReadOnlyMemory<byte> ReadRest(int limit)
    {
        var all = new MemoryStream();
        while (true)
        {
            all.Write(_buffer, _start, _end - _start);
            _start = _end;
            if (all.Length > limit)
            {
                throw new RefusedException(0, 0, FormattableString.Invariant($"at most {limit} bytes of JSON"), "more");
            }

            if (_ended)
            {
                return all.GetBuffer().AsMemory(0, (int)all.Length);
            }

            Fill();
        }
    }

    /// <summary>Gives the buffer back; spans handed out before are no longer good.</summary>
    public void Dispose() => ArrayPool<byte>.Shared.Return(_buffer);

    private ReadOnlySpan<byte> Checked(ReadOnlySpan<byte> line)
    {
        Line++;
        if (line.Length > _limits.LineBytes)
        {
            Line--;
            throw TooLong();
        }

        var at = line.IndexOfAnyInRange((byte)0, (byte)8);
        if (at >= 0)
        {
            throw new RefusedException(Line, at + 1, "text", FormattableString.Invariant($"the byte 0x{line[at]:X2}: this is a binary file or damaged"));
        }

        return line.EndsWith("\r"u8) ? line[..^1] : line;
    }

    private RefusedException TooLong() =>
        new(Line + 1, 0, FormattableString.Invariant($"a line of at most {_limits.LineBytes} bytes"), "a longer one");

    /// <summary>Moves what is left to the front and reads until the buffer is full or the file ends.</summary>
    private void Fill()
    {
        _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
        (_start, _end) = (0, _end - _start);
        while (!_ended && _end < _buffer.Length)
        {
            var n = _stream.Read(_buffer, _end, _buffer.Length - _end);
            _ended = n == 0;
            _end += n;
            _bytes += n;
            if (_bytes > _limits.FileBytes || !_mayTake(n))
            {
                throw new RefusedException(
                    Line + 1, 0, FormattableString.Invariant($"at most {_limits.FileBytes} bytes in a file and {_limits.TotalBytes} in all, unpacked"), "more");
            }
        }
    }

    private Encoding? WideEncoding()
    {
        var head = Peek();
        return head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) ? Encoding.Unicode
            : head.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? Encoding.BigEndianUnicode
            : null;
    }

    /// <summary>Bytes already taken, then the rest of the stream they came from.</summary>
    private sealed class HeadedStream(byte[] head, Stream rest) : ReadOnlyStream
    {
        private int _taken;

        public override int Read(Span<byte> buffer)
        {
            if (_taken >= head.Length)
            {
                return rest.Read(buffer);
            }

            var n = Math.Min(buffer.Length, head.Length - _taken);
            head.AsSpan(_taken, n).CopyTo(buffer);
            _taken += n;
            return n;
        }
    }
}
