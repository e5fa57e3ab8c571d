using System.Globalization;
using System.Xml;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Ground;

/// <summary>Outlines as closed routes, walks as tracks, in GPX 1.1.</summary>
internal static class GpxWriter
{
    private const string Namespace = "http://www.topografix.com/GPX/1/1";

    internal static byte[] Bytes(IReadOnlyList<ImportedOutline> outlines, IReadOnlyList<ImportedWalk> walks) => XmlText.Bytes(writer =>
    {
        writer.WriteStartElement("gpx", Namespace);
        writer.WriteAttributeString("version", "1.1");
        writer.WriteAttributeString("creator", "Seedfall");
        foreach (var outline in outlines)
        {
            Route(writer, outline.Name, outline.Ring);
            foreach (var (hole, i) in outline.Holes.Select((h, i) => (h, i)))
            {
                Route(writer, string.Create(CultureInfo.InvariantCulture, $"{outline.Name ?? "outline"}, hole {i + 1}"), hole);
            }
        }

        foreach (var walk in walks)
        {
            Track(writer, walk);
        }

        writer.WriteEndElement();
    });

    private static void Route(XmlWriter writer, string? name, IReadOnlyList<GeoPoint> ring)
    {
        writer.WriteStartElement("rte", Namespace);
        Name(writer, name);
        foreach (var point in ring.Append(ring[0]))
        {
            Point(writer, "rtept", point);
            writer.WriteEndElement();
        }

        writer.WriteEndElement();
    }

    private static void Track(XmlWriter writer, ImportedWalk walk)
    {
        writer.WriteStartElement("trk", Namespace);
        Name(writer, walk.Name);
        writer.WriteStartElement("trkseg", Namespace);
        foreach (var fix in walk.Fixes)
        {
            Point(writer, "trkpt", fix.At);
            if (fix.Time is { } time)
            {
                writer.WriteElementString("time", Namespace, XmlText.Time(time));
            }

            if (fix.AccuracyM is { } accuracyM)
            {
                writer.WriteStartElement("extensions", Namespace);
                writer.WriteElementString("s", "accuracyM", GpxReader.OwnNamespace, accuracyM.ToString("R", CultureInfo.InvariantCulture));
                writer.WriteEndElement();
            }

            writer.WriteEndElement();
        }

        writer.WriteEndElement();
        writer.WriteEndElement();
    }

    private static void Name(XmlWriter writer, string? name)
    {
        if (name is not null)
        {
            writer.WriteElementString("name", Namespace, XmlText.Name(name));
        }
    }

    private static void Point(XmlWriter writer, string element, GeoPoint point)
    {
        writer.WriteStartElement(element, Namespace);
        writer.WriteAttributeString("lat", Degrees.Text(point.LatitudeDeg));
        writer.WriteAttributeString("lon", Degrees.Text(point.LongitudeDeg));
    }
}
