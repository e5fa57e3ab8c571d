
namespace Seedfall.Exchange.Ground;

/// <summary>The kinds of files outlines come in and go out as.</summary>
public enum OutlineFileKind
{
    GeoJson,
    Gpx,
    Kml,
    Kmz,
}

/// <summary>
/// Outlines and walks from and to GeoJSON, GPX, KML and KMZ. The kind is told from the bytes, not from the name. A file is
/// read whole or refused with its line and column; nothing is half-imported; no link is followed.
/// </summary>
public static class OutlineFiles
{
    /// <summary>Reads a file from a stream, no further than 16 MB.</summary>
    /// <param name="stream">The bytes, read once from here.</param>
    /// <param name="name">Name of the file, for messages.</param>
    public static OutlineReadResult Read(Stream stream, string name)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Bounded.Bytes(stream) is { } bytes
            ? Read(bytes, name)
            : OutlineReadResult.Refused(new(name, 0, 0, $"a file of at most {OutlineLimits.MostBytes >> 20} MB", "more"));
    }

    /// <summary>Reads a file's bytes.</summary>
    public static OutlineReadResult Read(byte[] bytes, string name)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(name);
        var gather = new OutlineGather();
        try
        {
            if (bytes.Length > OutlineLimits.MostBytes)
            {
                throw new RefusedException(default, $"a file of at most {OutlineLimits.MostBytes >> 20} MB", $"{bytes.Length >> 20} MB");
            }

            Take(bytes, gather);
            if (gather.Outlines.Count == 0 && gather.Walks.Count == 0)
            {
                throw new RefusedException(default, "at least one outline or walk", gather.Remarks.Count == 0 ? "none" : $"none ({string.Join("; ", gather.Remarks)})");
            }

            return OutlineReadResult.Read(gather);
        }
        catch (RefusedException refused)
        {
            return OutlineReadResult.Refused(new(name, refused.At.Line, refused.At.Column, refused.Expected, refused.Message));
        }
    }

    /// <summary>The kind a file name's ending stands for; null for another.</summary>
    public static OutlineFileKind? KindOf(string name) => Path.GetExtension(name).ToUpperInvariant() switch
    {
        ".GEOJSON" or ".JSON" => OutlineFileKind.GeoJson,
        ".GPX" => OutlineFileKind.Gpx,
        ".KML" => OutlineFileKind.Kml,
        ".KMZ" => OutlineFileKind.Kmz,
        _ => null,
    };

    /// <summary>
    /// Outlines and walks as a file. Degrees are written to seven places, a centimeter. GPX has no holes: they become routes
    /// of their own. Walks go into GPX only: the other formats leave them out.
    /// </summary>
    public static byte[] Write(OutlineFileKind kind, IReadOnlyList<ImportedOutline> outlines, IReadOnlyList<ImportedWalk> walks) => kind switch
    {
        OutlineFileKind.GeoJson => GeoJsonWriter.Bytes(outlines),
        OutlineFileKind.Gpx => GpxWriter.Bytes(outlines, walks),
        OutlineFileKind.Kml => KmlWriter.Bytes(outlines),
        OutlineFileKind.Kmz => KmlWriter.Packed(outlines),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a known kind of file"),
    };

    /// <summary>A byte order mark and blanks.</summary>
    private static ReadOnlySpan<byte> Blanks => [0xEF, 0xBB, 0xBF, (byte)' ', (byte)'\t', (byte)'\r', (byte)'\n'];

    private static void Take(byte[] bytes, OutlineGather gather)
    {
        if (bytes.AsSpan().StartsWith("PK"u8))
        {
            bytes = KmzReader.Kml(bytes);
            if (bytes.AsSpan().StartsWith("PK"u8))
            {
                throw new RefusedException(default, "KML inside the KMZ", "another zip");
            }
        }

        var start = bytes.AsSpan().TrimStart(Blanks);
        if (start.StartsWith("{"u8))
        {
            new GeoJsonReader(gather).Read(bytes);
        }
        else if (start.StartsWith("<"u8) || bytes is [0xFE, 0xFF, ..] or [0xFF, 0xFE, ..])
        {
            Xml(bytes, gather);
        }
        else
        {
            throw new RefusedException(new(1, 1), "GeoJSON, GPX, KML or KMZ", bytes.Length == 0 ? "an empty file" : "something else");
        }
    }

    private static void Xml(byte[] bytes, OutlineGather gather)
    {
        using var reader = XmlWalk.Open(new MemoryStream(bytes, writable: false));
        var root = XmlWalk.Root(reader);
        Root(bytes, root, XmlWalk.At(reader), gather);
    }

    private static void Root(byte[] bytes, string root, Spot at, OutlineGather gather)
    {
        using var reader = XmlWalk.Open(new MemoryStream(bytes, writable: false));
        switch (root)
        {
            case "gpx":
                new GpxReader(gather, reader).Read();
                break;
            case "kml":
                new KmlReader(gather, reader).Read();
                break;
            default:
                XmlWalk.Each(reader, () => { });
                throw new RefusedException(at, "a <gpx> or <kml> file", $"<{GeoJsonReader.Cut(root)}>");
        }
    }
}
