namespace Seedfall.Photos.Reading;

/// <summary>What the boxes of an HEIC file declare (ISO/IEC 14496-12 and 23008-12), without decoding.</summary>
/// <param name="Width">Widest image declared, pixels; 0 where none is.</param>
/// <param name="Height">Highest image declared, pixels.</param>
/// <param name="IsWhole">The boxes end where the file does.</param>
internal readonly record struct HeifBoxes(long Width, long Height, bool IsWhole)
{
    private const int HeaderBytes = 8;
    private const int MostDepth = 6;
    private const int MostBoxes = 20_000;

    internal static HeifBoxes Of(ReadOnlySpan<byte> bytes)
    {
        var (width, height, left) = (0L, 0L, MostBoxes);
        var whole = Walk(bytes, 0, ref width, ref height, ref left);
        return new HeifBoxes(width, height, whole);
    }

    private static bool Walk(ReadOnlySpan<byte> bytes, int depth, ref long width, ref long height, ref int left)
    {
        while (bytes.Length >= HeaderBytes)
        {
            var (size, header) = ((long)BigEndian.UInt32(bytes), HeaderBytes);
            if (size == 1 && bytes.Length >= 16)
            {
                (size, header) = (((long)BigEndian.UInt32(bytes[8..]) << 32) | BigEndian.UInt32(bytes[12..]), 16);
            }

            size = size == 0 ? bytes.Length : size;
            if (size < header || size > bytes.Length || --left < 0)
            {
                return false;
            }

            var type = bytes[4..8];
            var body = bytes[header..(int)size];
            if (type.SequenceEqual("ispe"u8) && body.Length >= 12)
            {
                width = Math.Max(width, BigEndian.UInt32(body[4..]));
                height = Math.Max(height, BigEndian.UInt32(body[8..]));
            }
            else if (Holds(type, out var skip) && depth < MostDepth && body.Length >= skip && !Walk(body[skip..], depth + 1, ref width, ref height, ref left))
            {
                return false;
            }

            bytes = bytes[(int)size..];
        }

        return bytes.IsEmpty;
    }

    /// <summary>True for a box of boxes on the way to the sizes; <paramref name="skip"/> bytes of it come first.</summary>
    private static bool Holds(ReadOnlySpan<byte> type, out int skip)
    {
        skip = type.SequenceEqual("meta"u8) ? 4 : 0;
        return skip > 0 || type.SequenceEqual("iprp"u8) || type.SequenceEqual("ipco"u8);
    }
}
