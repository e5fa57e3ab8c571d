using System.Buffers.Binary;
using System.Text;
using Seedfall.Photos.Pixels;
using SkiaSharp;

namespace Seedfall.Photos.Tests.Reading;

/// <summary>Files composed byte by byte where an encoder would not write them.</summary>
internal static class Composed
{
    internal static byte[] Encode(PixelImage image, SKEncodedImageFormat format, int quality)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(image.Width, image.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        for (var i = 0; i < image.Width * image.Height; i++)
        {
            bitmap.SetPixel(i % image.Width, i / image.Width, new SKColor(image.Rgb[3 * i], image.Rgb[(3 * i) + 1], image.Rgb[(3 * i) + 2]));
        }

        using var data = bitmap.Encode(format, quality);
        return data.ToArray();
    }

    /// <summary>The JPEG with an Exif segment behind its first marker.</summary>
    internal static byte[] WithExif(byte[] jpeg, byte[] tiff)
    {
        var segment = new byte[4 + 6 + tiff.Length];
        (segment[0], segment[1]) = (0xFF, 0xE1);
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(segment.Length - 2));
        "Exif\0\0"u8.CopyTo(segment.AsSpan(4));
        tiff.CopyTo(segment, 10);
        return [.. jpeg.AsSpan(0, 2), .. segment, .. jpeg.AsSpan(2)];
    }

    /// <summary>An Exif block, little-endian (Exif 2.32): orientation, time taken, and a latitude where asked for.</summary>
    internal static byte[] Exif(ushort orientation, string takenAt, bool location)
    {
        var block = new byte[160];
        void Entry(int at, ushort tag, ushort type, uint count, uint value)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(block.AsSpan(at), tag);
            BinaryPrimitives.WriteUInt16LittleEndian(block.AsSpan(at + 2), type);
            BinaryPrimitives.WriteUInt32LittleEndian(block.AsSpan(at + 4), count);
            BinaryPrimitives.WriteUInt32LittleEndian(block.AsSpan(at + 8), value);
        }

        "II*\0"u8.CopyTo(block);
        block[4] = 8;
        block[8] = (byte)(location ? 3 : 2);
        Entry(10, 0x0112, 3, 1, orientation);
        Entry(22, 0x8769, 4, 1, 60);
        Entry(34, location ? (ushort)0x8825 : (ushort)0, 4, 1, 100);
        block[60] = 1;
        Entry(62, 0x9003, 2, 20, 80);
        Encoding.ASCII.GetBytes(takenAt).CopyTo(block, 80);
        block[100] = 1;
        Entry(102, 0x0002, 5, 3, 120);
        return block;
    }

    /// <summary>A PNG that declares a size and holds next to nothing.</summary>
    internal static byte[] PngOf(uint width, uint height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteUInt32BigEndian(header, width);
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2);
        return [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. Chunk("IHDR", header), .. Chunk("IDAT", [0x78, 0x9C, 0x03, 0, 0, 0, 0, 1]), .. Chunk("IEND", [])];
    }

    /// <summary>The bytes with the big-endian pair at the first place of a marker replaced.</summary>
    internal static byte[] Patch(byte[] bytes, ReadOnlySpan<byte> after, int skip, ReadOnlySpan<byte> with)
    {
        var at = bytes.AsSpan().IndexOf(after);
        Assert.True(at >= 0, "the marker is in the file");
        var patched = bytes.ToArray();
        with.CopyTo(patched.AsSpan(at + after.Length + skip));
        return patched;
    }

    private static byte[] Chunk(string type, byte[] body)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(type), .. body];
        var chunk = new byte[named.Length + 8];
        BinaryPrimitives.WriteUInt32BigEndian(chunk, (uint)body.Length);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(named.Length + 4), Crc(named));
        return chunk;
    }

    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var k = 0; k < 8; k++)
            {
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
            }
        }

        return ~crc;
    }
}
