using System.Buffers.Binary;

namespace Seedfall.Photos.Reading;

/// <summary>What a file tells beside its pixels, read only as far as it is needed; damaged metadata tells nothing.</summary>
/// <param name="TakenAt">The camera's clock, without a zone.</param>
/// <param name="HadLocation">A position is in the file.</param>
internal readonly record struct PhotoMetadata(DateTime? TakenAt, bool HadLocation)
{
    internal static PhotoMetadata Of(ReadOnlySpan<byte> bytes, PhotoFormat format) => format switch
    {
        PhotoFormat.Jpeg => OfJpeg(bytes),
        PhotoFormat.Png => OfPng(bytes),
        PhotoFormat.WebP => OfWebP(bytes),
        _ => default,
    };

    /// <summary>From an Exif block, with or without the six bytes before it in JPEG.</summary>
    internal static PhotoMetadata OfExif(ReadOnlySpan<byte> block)
    {
        var tiff = block.StartsWith("Exif\0\0"u8) ? block[6..] : block;
        return new PhotoMetadata(ExifBlock.TakenAt(tiff), ExifBlock.HasLocation(tiff));
    }

    private PhotoMetadata And(PhotoMetadata other) => new(TakenAt ?? other.TakenAt, HadLocation || other.HadLocation);

    private static PhotoMetadata OfXmp(ReadOnlySpan<byte> packet) => new(null, packet.IndexOf("GPSLatitude"u8) >= 0);

    /// <summary>Walks the marker segments before the picture data (ITU-T T.81, annex B).</summary>
    private static PhotoMetadata OfJpeg(ReadOnlySpan<byte> bytes)
    {
        var found = default(PhotoMetadata);
        for (var at = 2; at + 4 <= bytes.Length && bytes[at] == 0xFF && bytes[at + 1] is not (0xDA or 0xD9);)
        {
            var (marker, length) = (bytes[at + 1], BigEndian.UInt16(bytes[(at + 2)..]));
            if (length < 2 || at + 2 + length > bytes.Length)
            {
                break;
            }

            var segment = bytes.Slice(at + 4, length - 2);
            if (marker == 0xE1)
            {
                found = found.And(segment.StartsWith("Exif\0\0"u8) ? OfExif(segment) : OfXmp(segment));
            }

            at += 2 + length;
        }

        return found;
    }

    /// <summary>Walks the chunks (PNG third edition: eXIf, and XMP in iTXt).</summary>
    private static PhotoMetadata OfPng(ReadOnlySpan<byte> bytes)
    {
        var found = default(PhotoMetadata);
        for (long at = 8; at + 12 <= bytes.Length;)
        {
            var length = BigEndian.UInt32(bytes[(int)at..]);
            var type = bytes.Slice((int)at + 4, 4);
            if (at + 12 + length > bytes.Length)
            {
                break;
            }

            var chunk = bytes.Slice((int)at + 8, (int)length);
            found = type.SequenceEqual("eXIf"u8) ? found.And(OfExif(chunk)) : type.SequenceEqual("iTXt"u8) ? found.And(OfXmp(chunk)) : found;
            at += 12 + length;
        }

        return found;
    }

    /// <summary>Walks the RIFF chunks (RFC 9649: EXIF and XMP).</summary>
    private static PhotoMetadata OfWebP(ReadOnlySpan<byte> bytes)
    {
        var found = default(PhotoMetadata);
        for (long at = 12; at + 8 <= bytes.Length;)
        {
            var type = bytes.Slice((int)at, 4);
            var length = BinaryPrimitives.ReadUInt32LittleEndian(bytes[((int)at + 4)..]);
            if (at + 8 + length > bytes.Length)
            {
                break;
            }

            var chunk = bytes.Slice((int)at + 8, (int)length);
            found = type.SequenceEqual("EXIF"u8) ? found.And(OfExif(chunk)) : type.SequenceEqual("XMP "u8) ? found.And(OfXmp(chunk)) : found;
            at += 8 + length + (length & 1);
        }

        return found;
    }
}
