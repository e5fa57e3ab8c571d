using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Ground;

/// <summary>Outlines as a GeoJSON feature collection: outer rings counterclockwise, holes clockwise, first point repeated (RFC 7946 section 3.1.6).</summary>
internal static class GeoJsonWriter
{
    internal static byte[] Bytes(IReadOnlyList<ImportedOutline> outlines)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) }))
        {
            writer.WriteStartObject();
            writer.WriteString("type", "FeatureCollection");
            writer.WriteStartArray("features");
            foreach (var outline in outlines)
            {
                Feature(writer, outline);
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    private static void Feature(Utf8JsonWriter writer, ImportedOutline outline)
    {
        writer.WriteStartObject();
        writer.WriteString("type", "Feature");
        writer.WriteStartObject("properties");
        if (outline.Name is { } name)
        {
            writer.WriteString("name", name);
        }

        writer.WriteEndObject();
        writer.WriteStartObject("geometry");
        writer.WriteString("type", "Polygon");
        writer.WriteStartArray("coordinates");
        Ring(writer, RingTurn.Counterclockwise(outline.Ring));
        foreach (var hole in outline.Holes)
        {
            Ring(writer, RingTurn.Clockwise(hole));
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
        writer.WriteEndObject();
    }

    private static void Ring(Utf8JsonWriter writer, IReadOnlyList<GeoPoint> ring)
    {
        writer.WriteStartArray();
        foreach (var point in ring.Append(ring[0]))
        {
            writer.WriteStartArray();
            writer.WriteRawValue(Degrees.Text(point.LongitudeDeg));
            writer.WriteRawValue(Degrees.Text(point.LatitudeDeg));
            writer.WriteEndArray();
        }

        writer.WriteEndArray();
    }
}
