using System.Buffers.Binary;
using System.Text;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Web.Tests.Photos;

/// <summary>Pictures composed in code: invented ground, taken by nobody.</summary>
internal static class ComposedPhoto
{
    private static readonly (byte R, byte G, byte B) Grass = (52, 128, 40);
    private static readonly (byte R, byte G, byte B) Soil = (140, 112, 80);
    private static readonly (byte R, byte G, byte B) Sky = (160, 190, 230);

    /// <summary>Ground straight down: green tufts of 12 pixels over so much of it.</summary>
    public static byte[] Quadrat(double cover, int width = 800, int height = 600) => Jpeg(width, height, (x, y) => Noise(x / 12, y / 12) < cover ? Grass : Soil);

    /// <summary>
    /// A lawn 8 m across and 6 m away, seen from 3 m height, as from a porch, and 4 m before it, with bare circles in it. Its corners lie where
    /// <see cref="Corner"/> says.
    /// </summary>
    public static byte[] Overview(params (double AcrossM, double AwayM, double RadiusM)[] bare) => Jpeg(1200, 900, (x, y) =>
    {
        if (Ground(x + 0.5, y + 0.5) is not var (across, away))
        {
            return Sky;
        }

        return bare.Any(b => double.Hypot(b.AcrossM - across, b.AwayM - away) < b.RadiusM) ? Soil : Grass;
    });

    /// <summary>Where ground lies in the overview, in shares of width and height: a pinhole camera, by similar triangles.</summary>
    public static (double X, double Y) Corner(double acrossM, double awayM)
    {
        var (ahead, down) = (Cos * (awayM + Before) + Sin * Height, Cos * Height - Sin * (awayM + Before));
        return (0.5 + Focal * (acrossM - 4.0) / ahead / 1200.0, 0.5 + Focal * down / ahead / 900.0);
    }

    /// <summary>The JPEG with an EXIF block put in: taken 2026-09-20 at 48.2 north, 11.6 east.</summary>
    public static byte[] WithPlace(byte[] jpeg)
    {
        var exif = Exif();
        var segment = new byte[4 + exif.Length];
        (segment[0], segment[1]) = (0xFF, 0xE1);
        BinaryPrimitives.WriteUInt16BigEndian(segment.AsSpan(2), (ushort)(2 + exif.Length));
        exif.CopyTo(segment.AsSpan(4));
        return [.. jpeg[..2], .. segment, .. jpeg[2..]];
    }

    private const double Height = 3.0;
    private const double Before = 4.0;
    private const double Focal = 700.0;

    private static double Sin => Math.Sin(Math.PI / 6.0);

    private static double Cos => Math.Cos(Math.PI / 6.0);

    private static (double Across, double Away)? Ground(double x, double y)
    {
        var (a, b) = ((x - 600.0) / Focal, (y - 450.0) / Focal);
        var (down, ahead) = (Sin + b * Cos, Cos - b * Sin);
        return down <= 1e-6 ? null : (4.0 + a * Height / down, ahead * Height / down - Before);
    }

    private static byte[] Jpeg(int width, int height, Func<int, int, (byte R, byte G, byte B)> color)
    {
        var rgb = new byte[3 * width * height];
        for (var i = 0; i < width * height; i++)
        {
            var grain = (int)(16.0 * (Noise(i % width, i / width) - 0.5));
            var (r, g, b) = color(i % width, i / width);
            (rgb[3 * i], rgb[3 * i + 1], rgb[3 * i + 2]) = ((byte)(r + grain), (byte)(g + grain), (byte)(b + grain));
        }

        return PhotoFile.Store(new PixelImage(width, height, rgb));
    }

    private static double Noise(int x, int y)
    {
        var hash = unchecked(((uint)x * 374761393u) ^ ((uint)y * 668265263u));
        hash = unchecked((hash ^ (hash >> 13)) * 1274126177u);
        return (hash ^ (hash >> 16)) / (double)uint.MaxValue;
    }

    /// <summary>TIFF, big-endian: date and time in the EXIF directory, latitude and longitude in the GPS directory (EXIF 2.32, sections 4.6.2, 4.6.6; from memory).</summary>
    private static byte[] Exif()
    {
        var block = new byte[400];
        Encoding.ASCII.GetBytes("Exif\0\0MM\0*").CopyTo(block, 0);
        var tiff = block.AsSpan(6);
        BinaryPrimitives.WriteUInt32BigEndian(tiff[4..], 8);
        Directory(tiff, 8, (0x8769, 4, 1, 40), (0x8825, 4, 1, 90));
        Directory(tiff, 40, (0x9003, 2, 20, 200));
        Encoding.ASCII.GetBytes("2026:09:20 14:05:00\0").CopyTo(tiff[200..]);
        Directory(tiff, 90, (1, 2, 2, 0x4E000000), (2, 5, 3, 230), (3, 2, 2, 0x45000000), (4, 5, 3, 260));
        Rationals(tiff, 230, 48, 12, 0);
        Rationals(tiff, 260, 11, 36, 0);
        return block;
    }

    private static void Directory(Span<byte> tiff, int at, params (ushort Tag, ushort Type, uint Count, uint Value)[] entries)
    {
        BinaryPrimitives.WriteUInt16BigEndian(tiff[at..], (ushort)entries.Length);
        foreach (var (entry, i) in entries.Select((e, i) => (e, i)))
        {
            var to = tiff[(at + 2 + 12 * i)..];
            BinaryPrimitives.WriteUInt16BigEndian(to, entry.Tag);
            BinaryPrimitives.WriteUInt16BigEndian(to[2..], entry.Type);
            BinaryPrimitives.WriteUInt32BigEndian(to[4..], entry.Count);
            BinaryPrimitives.WriteUInt32BigEndian(to[8..], entry.Value);
        }
    }

    private static void Rationals(Span<byte> tiff, int at, params uint[] values)
    {
        foreach (var (value, i) in values.Select((v, i) => (v, i)))
        {
            BinaryPrimitives.WriteUInt32BigEndian(tiff[(at + 8 * i)..], value);
            BinaryPrimitives.WriteUInt32BigEndian(tiff[(at + 8 * i + 4)..], 1);
        }
    }
}
