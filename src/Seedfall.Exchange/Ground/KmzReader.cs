using System.IO.Compression;

namespace Seedfall.Exchange.Ground;

/// <summary>KMZ: a zip with one KML file that counts. Nothing is ever written to disk; other entries are never opened.</summary>
internal static class KmzReader
{
    /// <summary>The unpacked KML, bounded whatever the entry claims.</summary>
    internal static byte[] Kml(byte[] zip)
    {
        try
        {
            using var archive = new ZipArchive(new MemoryStream(zip, writable: false), ZipArchiveMode.Read);
            if (archive.Entries.Count > OutlineLimits.MostZipEntries)
            {
                throw new RefusedException(default, $"a KMZ with at most {OutlineLimits.MostZipEntries} entries", $"{archive.Entries.Count}");
            }

            foreach (var entry in archive.Entries)
            {
                Name(entry.FullName);
            }

            var kml = archive.Entries.FirstOrDefault(e => e.FullName == "doc.kml")
                ?? archive.Entries.FirstOrDefault(e => e.FullName.EndsWith(".kml", StringComparison.OrdinalIgnoreCase))
                ?? throw new RefusedException(default, "a KMZ with doc.kml in it", "none");
            return Unpacked(kml);
        }
        catch (Exception broken) when (broken is InvalidDataException or IOException or NotSupportedException or ArgumentException or OverflowException)
        {
            throw new RefusedException(default, "a KMZ: a sound, unencrypted zip", "a broken one");
        }
    }

    private static void Name(string name)
    {
        if (name.Length is 0 or > 200 || name.StartsWith('/') || name.Contains('\\') || name.Contains(':') || name.Split('/').Contains("..") || name.Any(char.IsControl))
        {
            throw new RefusedException(default, "plain entry names in a KMZ", $"\"{GeoJsonReader.Cut(name)}\"");
        }
    }

    private static byte[] Unpacked(ZipArchiveEntry entry)
    {
        if (entry.Length > OutlineLimits.MostBytes || entry.Length > OutlineLimits.MostZipRatio * Math.Max(1L, entry.CompressedLength))
        {
            throw new RefusedException(default, $"a KML of at most {OutlineLimits.MostBytes >> 20} MB, packed no tighter than 1 to {OutlineLimits.MostZipRatio}", $"{entry.Length:N0} bytes out of {entry.CompressedLength:N0}");
        }

        using var packed = entry.Open();
        return Bounded.Bytes(packed) ?? throw new RefusedException(default, $"a KML of at most {OutlineLimits.MostBytes >> 20} MB", "more than the entry claims");
    }
}

/// <summary>Streams read no further than the limit.</summary>
internal static class Bounded
{
    /// <summary>All bytes, or null where there are more than the limit.</summary>
    internal static byte[]? Bytes(Stream stream)
    {
        var kept = new MemoryStream();
        var chunk = new byte[65536];
        int count;
        while ((count = stream.Read(chunk)) > 0)
        {
            if (kept.Length + count > OutlineLimits.MostBytes)
            {
                return null;
            }

            kept.Write(chunk, 0, count);
        }

        return kept.ToArray();
    }
}
