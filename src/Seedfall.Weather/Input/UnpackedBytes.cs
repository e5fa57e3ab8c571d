using System.IO.Compression;

namespace Seedfall.Weather.Input;

/// <summary>
/// A gzip file unpacked, refusing one that was cut off. The framework's reader takes the end of the file for the end of the
/// data, so a half-copied year would pass as a whole one. Here a small packed mark of our own is put behind the file: it
/// comes out at the end only where the member before it was complete, its checksum included. The mark is held back from
/// the caller.
/// </summary>
internal sealed class UnpackedBytes : ReadOnlyStream
{
    private static readonly byte[] Mark = "\0seedfall: end\0\0"u8.ToArray();
    private static readonly byte[] PackedMark = Pack(Mark);

    private readonly GZipStream _gzip;
    private readonly byte[] _buffer = new byte[65_536];
    private int _start;
    private int _end;
    private bool _ended;

    internal UnpackedBytes(Stream packed) => _gzip = new GZipStream(new ChainedStream(packed, PackedMark), CompressionMode.Decompress);

    public override int Read(Span<byte> buffer)
    {
        Fill();
        var n = Math.Min(buffer.Length, _end - _start - Mark.Length);
        if (n <= 0)
        {
            return EndOrNothing();
        }

        _buffer.AsSpan(_start, n).CopyTo(buffer);
        _start += n;
        return n;
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _gzip.Dispose();
        }

        base.Dispose(disposing);
    }

    /// <summary>Reads until more than the mark is at hand, or nothing is left.</summary>
    private void Fill()
    {
        while (!_ended && _end - _start <= Mark.Length)
        {
            _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
            (_start, _end) = (0, _end - _start);
            var n = ReadPacked();
            _ended = n == 0;
            _end += n;
        }
    }

    private int ReadPacked()
    {
        try
        {
            return _gzip.Read(_buffer.AsSpan(_end));
        }
        catch (InvalidDataException)
        {
            throw new RefusedException(0, 0, "a whole gzip file", "packed data that is damaged or cut off");
        }
    }

    private int EndOrNothing() => _buffer.AsSpan(_start, _end - _start).SequenceEqual(Mark)
        ? 0
        : throw new RefusedException(0, 0, "a whole gzip file", "a file that ends in the middle of its packed data");

    private static byte[] Pack(byte[] content)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(content);
        }

        return packed.ToArray();
    }

    /// <summary>One stream, then the bytes of the tail.</summary>
    private sealed class ChainedStream(Stream first, byte[] tail) : ReadOnlyStream
    {
        private int _tailTaken = -1;

        public override int Read(Span<byte> buffer)
        {
            if (_tailTaken < 0)
            {
                var n = first.Read(buffer);
                if (n > 0 || buffer.IsEmpty)
                {
                    return n;
                }

                _tailTaken = 0;
            }

            var rest = tail.AsSpan(_tailTaken);
            var count = Math.Min(rest.Length, buffer.Length);
            rest[..count].CopyTo(buffer);
            _tailTaken += count;
            return count;
        }
    }
}
