using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Seedfall.Photos.Reading;

/// <summary>The two things wanted from an Exif block (Exif 2.32): when, and whether where. Anything out of bounds is as if absent.</summary>
internal static class ExifBlock
{
    private const ushort DateTimeTag = 0x0132;
    private const ushort ExifDirectoryTag = 0x8769;
    private const ushort LocationDirectoryTag = 0x8825;
    private const ushort DateTimeOriginalTag = 0x9003;
    private const ushort LatitudeTag = 0x0002;
    private const int EntryBytes = 12;
    private const int MostEntries = 512;

    internal static DateTime? TakenAt(ReadOnlySpan<byte> tiff) => First(tiff) is { } first
        ? Time(tiff, Directory(tiff, first, ExifDirectoryTag), DateTimeOriginalTag) ?? Time(tiff, first, DateTimeTag)
        : null;

    internal static bool HasLocation(ReadOnlySpan<byte> tiff) =>
        First(tiff) is { } first && Directory(tiff, first, LocationDirectoryTag) is { } location && Entry(tiff, location, LatitudeTag) is not null;

    private static bool IsLittle(ReadOnlySpan<byte> tiff) => tiff[0] == 'I';

    private static uint? First(ReadOnlySpan<byte> tiff) =>
        tiff.Length >= 8 && (tiff.StartsWith("II*\0"u8) || tiff.StartsWith("MM\0*"u8)) ? UInt32(tiff, 4) : null;

    private static uint? Directory(ReadOnlySpan<byte> tiff, uint parent, ushort tag) =>
        Entry(tiff, parent, tag) is { } entry ? UInt32(tiff, entry + 8) : null;

    /// <summary>Where the entry of a tag begins.</summary>
    private static int? Entry(ReadOnlySpan<byte> tiff, uint directory, ushort tag)
    {
        if (directory > (uint)tiff.Length - 2)
        {
            return null;
        }

        var count = Math.Min((int)UInt16(tiff, (int)directory), MostEntries);
        for (var at = (int)directory + 2; count > 0 && at + EntryBytes <= tiff.Length; at += EntryBytes, count--)
        {
            if (UInt16(tiff, at) == tag)
            {
                return at;
            }
        }

        return null;
    }

    private static DateTime? Time(ReadOnlySpan<byte> tiff, uint? directory, ushort tag)
    {
        const int length = 19;
        if (directory is not { } at || Entry(tiff, at, tag) is not { } entry || UInt32(tiff, entry + 4) < length)
        {
            return null;
        }

        var from = UInt32(tiff, entry + 8);
        return from <= tiff.Length - length
            && DateTime.TryParseExact(Encoding.Latin1.GetString(tiff.Slice((int)from, length)), "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
                ? time
                : null;
    }

    private static ushort UInt16(ReadOnlySpan<byte> tiff, int at) => IsLittle(tiff)
        ? BinaryPrimitives.ReadUInt16LittleEndian(tiff[at..])
        : BinaryPrimitives.ReadUInt16BigEndian(tiff[at..]);

    private static uint UInt32(ReadOnlySpan<byte> tiff, int at) => IsLittle(tiff)
        ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[at..])
        : BinaryPrimitives.ReadUInt32BigEndian(tiff[at..]);
}
