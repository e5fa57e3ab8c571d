namespace Seedfall.Photos.Reading;

/// <summary>What a file is, by its first bytes; names and declared types are not believed.</summary>
internal static class PhotoSniff
{
    private const int MostBrands = 32;

    /// <summary>The format, or null for anything that is not read.</summary>
    internal static PhotoFormat? Format(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
        {
            return PhotoFormat.Jpeg;
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]))
        {
            return PhotoFormat.Png;
        }

        if (bytes.Length >= 12 && bytes.StartsWith("RIFF"u8) && bytes[8..12].SequenceEqual("WEBP"u8))
        {
            return PhotoFormat.WebP;
        }

        return IsHeic(bytes) ? PhotoFormat.Heic : null;
    }

    /// <summary>A <c>ftyp</c> box with a brand of a still HEVC picture (ISO/IEC 23008-12, annex B).</summary>
    private static bool IsHeic(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < 16 || !bytes[4..8].SequenceEqual("ftyp"u8))
        {
            return false;
        }

        var size = (int)Math.Min(BigEndian.UInt32(bytes), 16 + (4 * MostBrands));
        for (var at = 8; at + 4 <= Math.Min(size, bytes.Length); at += at == 8 ? 8 : 4)
        {
            var brand = bytes.Slice(at, 4);
            if (brand.SequenceEqual("heic"u8) || brand.SequenceEqual("heix"u8) || brand.SequenceEqual("heim"u8) || brand.SequenceEqual("heis"u8))
            {
                return true;
            }
        }

        return false;
    }
}
