using System.IO.Compression;
using System.Xml;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Ground;

/// <summary>Outlines as polygons with inner boundaries in KML 2.2; packed as KMZ where wanted.</summary>
internal static class KmlWriter
{
    private const string Namespace = "http://www.opengis.net/kml/2.2";
    private static readonly DateTimeOffset ZipTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    internal static byte[] Bytes(IReadOnlyList<ImportedOutline> outlines) => XmlText.Bytes(writer =>
    {
        writer.WriteStartElement("kml", Namespace);
        writer.WriteStartElement("Document", Namespace);
        foreach (var outline in outlines)
        {
            Placemark(writer, outline);
        }

        writer.WriteEndElement();
        writer.WriteEndElement();
    });

    /// <summary>The same bytes every time: the entry bears no clock.</summary>
    internal static byte[] Packed(IReadOnlyList<ImportedOutline> outlines)
    {
        var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            var entry = archive.CreateEntry("doc.kml", CompressionLevel.Optimal);
            entry.LastWriteTime = ZipTime;
            using var inside = entry.Open();
            inside.Write(Bytes(outlines));
        }

        return zip.ToArray();
    }

    private static void Placemark(XmlWriter writer, ImportedOutline outline)
    {
        writer.WriteStartElement("Placemark", Namespace);
        if (outline.Name is { } name)
        {
            writer.WriteElementString("name", Namespace, XmlText.Name(name));
        }

        Polygon(writer, outline);
        writer.WriteEndElement();
    }

    private static void Polygon(XmlWriter writer, ImportedOutline outline)
    {
        writer.WriteStartElement("Polygon", Namespace);
        Boundary(writer, "outerBoundaryIs", RingTurn.Counterclockwise(outline.Ring));
        foreach (var hole in outline.Holes)
        {
            Boundary(writer, "innerBoundaryIs", RingTurn.Clockwise(hole));
        }

        writer.WriteEndElement();
    }

    private static void Boundary(XmlWriter writer, string element, IReadOnlyList<GeoPoint> ring)
    {
        writer.WriteStartElement(element, Namespace);
        writer.WriteStartElement("LinearRing", Namespace);
        writer.WriteElementString("coordinates", Namespace, string.Join(' ', ring.Append(ring[0]).Select(p => $"{Degrees.Text(p.LongitudeDeg)},{Degrees.Text(p.LatitudeDeg)}")));
        writer.WriteEndElement();
        writer.WriteEndElement();
    }
}
