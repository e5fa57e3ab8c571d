using System.Security.Cryptography;

namespace Seedfall.Weather.Input;

/// <summary>
/// The file as it lies on disk: counts and hashes what passes, tells the progress, heeds cancellation, and gives the first
/// two bytes back to whoever looked whether the file is packed.
/// </summary>
internal sealed class RawBytes(Stream inner, Action<long> onBytes, CancellationToken cancellation) : ReadOnlyStream
{
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly byte[] _head = new byte[2];
    private int _headLength;
    private int _headTaken;

    internal long Count { get; private set; }

    /// <summary>True where the file begins with the two bytes of gzip (RFC 1952, section 2.3.1).</summary>
    internal bool LooksPacked()
    {
        while (_headLength < 2)
        {
            var n = ReadInner(_head.AsSpan(_headLength));
            if (n == 0)
            {
                break;
            }

            _headLength += n;
        }

        return _headLength == 2 && _head[0] == 0x1F && _head[1] == 0x8B;
    }

    public override int Read(Span<byte> buffer)
    {
        if (_headTaken < _headLength)
        {
            var n = Math.Min(buffer.Length, _headLength - _headTaken);
            _head.AsSpan(_headTaken, n).CopyTo(buffer);
            _headTaken += n;
            return n;
        }

        return ReadInner(buffer);
    }

    /// <summary>Hash of everything read so far, lower-case hex.</summary>
    internal string Sha256() => Convert.ToHexStringLower(_hash.GetCurrentHash());

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _hash.Dispose();
            inner.Dispose();
        }

        base.Dispose(disposing);
    }

    private int ReadInner(Span<byte> buffer)
    {
        cancellation.ThrowIfCancellationRequested();
        var n = inner.Read(buffer);
        _hash.AppendData(buffer[..n]);
        Count += n;
        onBytes(n);
        return n;
    }
}
