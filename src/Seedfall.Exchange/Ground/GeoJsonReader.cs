using System.Text;
using System.Text.Json;

namespace Seedfall.Exchange.Ground;

/// <summary>
/// GeoJSON (RFC 7946): polygons and lines in features and collections, longitude before latitude, heights passed over, rings
/// either way round. Read token by token; a file too large is refused where it becomes so.
/// </summary>
internal sealed class GeoJsonReader(OutlineGather gather)
{
    private static readonly string[] Wgs84 = ["urn:ogc:def:crs:OGC:1.3:CRS84", "urn:ogc:def:crs:OGC::CRS84", "http://www.opengis.net/def/crs/OGC/1.3/CRS84", "urn:ogc:def:crs:EPSG::4326", "EPSG:4326"];

    private int _numbers;

    internal void Read(ReadOnlySpan<byte> utf8)
    {
        utf8 = utf8.StartsWith(Encoding.UTF8.Preamble) ? utf8[3..] : utf8;
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = OutlineLimits.MostJsonDepth });
        try
        {
            reader.Read();
            var root = Object(ref reader);
            reader.Read();
            new GeoJsonShapes(gather, utf8).Take(root, null);
        }
        catch (JsonException broken)
        {
            throw new RefusedException(
                new((int)(broken.LineNumber ?? 0) + 1, (int)(broken.BytePositionInLine ?? 0) + 1),
                broken.Message.Contains("depth", StringComparison.Ordinal) ? $"at most {OutlineLimits.MostJsonDepth} levels of nesting" : "GeoJSON (RFC 7946: no comments, no trailing commas, no NaN or Infinity)",
                "something else");
        }
        catch (InvalidOperationException)
        {
            throw new RefusedException(OffsetSpot.Of(utf8, reader.TokenStartIndex), "text in UTF-8", "bytes that are none");
        }
        catch (GeoJsonFault fault)
        {
            throw new RefusedException(OffsetSpot.Of(utf8, fault.At), fault.Expected, fault.Message);
        }
    }

    private GeoJsonThing Object(ref Utf8JsonReader reader)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            throw Fault(ref reader, "an object", Shown(ref reader));
        }

        var thing = new GeoJsonThing { At = reader.TokenStartIndex };
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            if (!seen.Add(name) || seen.Count > 1000)
            {
                throw Fault(ref reader, "each field once, and at most 1,000 of them", "more");
            }

            reader.Read();
            Member(ref reader, name, thing);
        }

        return thing;
    }

    private void Member(ref Utf8JsonReader reader, string name, GeoJsonThing thing)
    {
        switch (name)
        {
            case "type":
                thing.Type = reader.TokenType == JsonTokenType.String ? reader.GetString()! : throw Fault(ref reader, "the name of a type", Shown(ref reader));
                break;
            case "coordinates":
                thing.Coordinates = Coordinates(ref reader);
                break;
            case "geometry" when reader.TokenType != JsonTokenType.Null:
                thing.Inner.Add(Object(ref reader));
                break;
            case "geometries" or "features":
                Objects(ref reader, thing);
                break;
            case "properties" when reader.TokenType == JsonTokenType.StartObject:
                thing.Name = NameIn(ref reader);
                break;
            case "crs":
                Crs(ref reader);
                break;
            default:
                reader.Skip();
                break;
        }
    }

    private void Objects(ref Utf8JsonReader reader, GeoJsonThing thing)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            throw Fault(ref reader, "a list", Shown(ref reader));
        }

        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (++_numbers > OutlineLimits.MostPoints)
            {
                throw Fault(ref reader, $"at most {OutlineLimits.MostPoints:N0} objects and points", "more");
            }

            thing.Inner.Add(Object(ref reader));
        }
    }

    private GeoJsonCoordinates Coordinates(ref Utf8JsonReader reader)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            throw Fault(ref reader, "a list of positions", Shown(ref reader));
        }

        if (++_numbers > OutlineLimits.MostPoints)
        {
            throw Fault(ref reader, $"at most {OutlineLimits.MostPoints:N0} points in one file", "more");
        }

        var here = new GeoJsonCoordinates { At = reader.TokenStartIndex };
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (reader.TokenType == JsonTokenType.Number && here.Items.Count == 0)
            {
                Number(ref reader, here);
            }
            else if (reader.TokenType == JsonTokenType.StartArray && here.Numbers == 0)
            {
                here.Items.Add(Coordinates(ref reader));
                GrowRing(here);
            }
            else
            {
                throw Fault(ref reader, "positions like [-84.12, 42.31]: longitude, latitude", Shown(ref reader));
            }
        }

        return here;
    }

    private static void GrowRing(GeoJsonCoordinates here)
    {
        if (here.Items.Count > OutlineLimits.MostRingPoints)
        {
            throw new GeoJsonFault(here.Items[^1].At, $"at most {OutlineLimits.MostRingPoints:N0} points in one ring", "more");
        }
    }

    private static void Number(ref Utf8JsonReader reader, GeoJsonCoordinates here)
    {
        if (!reader.TryGetDouble(out var value) || !double.IsFinite(value) || here.Numbers == 4)
        {
            throw Fault(ref reader, "two to four finite numbers: longitude, latitude, height", Shown(ref reader));
        }

        here.LongitudeDeg = here.Numbers == 0 ? value : here.LongitudeDeg;
        here.LatitudeDeg = here.Numbers == 1 ? value : here.LatitudeDeg;
        here.Numbers++;
    }

    private static string? NameIn(ref Utf8JsonReader reader)
    {
        string? name = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var wanted = reader.ValueTextEquals("name"u8) || (name is null && (reader.ValueTextEquals("title"u8) || reader.ValueTextEquals("Name"u8)));
            reader.Read();
            if (wanted && reader.TokenType == JsonTokenType.String)
            {
                name = reader.GetString();
            }
            else
            {
                reader.Skip();
            }
        }

        return name;
    }

    /// <summary>The member of the format's older version; only names of WGS 84 are taken.</summary>
    private void Crs(ref Utf8JsonReader reader)
    {
        var at = reader.TokenStartIndex;
        using var crs = JsonDocument.ParseValue(ref reader);
        var name = crs.RootElement.ValueKind == JsonValueKind.Object
            && crs.RootElement.TryGetProperty("properties", out var properties) && properties.ValueKind == JsonValueKind.Object
            && properties.TryGetProperty("name", out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;
        if (!Wgs84.Contains(name))
        {
            throw new GeoJsonFault(at, "coordinates in WGS 84, longitude before latitude, and no \"crs\" (RFC 7946 section 4); export the file again in WGS 84", name is null ? "another \"crs\"" : $"\"crs\" {Cut(name)}");
        }

        gather.Remark("a \"crs\" that says WGS 84 was passed over");
    }

    private static GeoJsonFault Fault(ref Utf8JsonReader reader, string expected, string found) => new(reader.TokenStartIndex, expected, found);

    private static string Shown(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => $"\"{Cut(reader.GetString()!)}\"",
        _ => Cut(Encoding.UTF8.GetString(reader.ValueSpan[..Math.Min(48, reader.ValueSpan.Length)])),
    };

    internal static string Cut(string text) => string.Concat(text.Take(48).Select(c => char.IsControl(c) ? ' ' : c)) + (text.Length > 48 ? "..." : "");
}

/// <summary>A fault at a byte of the file.</summary>
internal sealed class GeoJsonFault(long at, string expected, string found) : Exception(found)
{
    internal long At => at;

    internal string Expected => expected;
}

/// <summary>A GeoJSON object as read.</summary>
internal sealed class GeoJsonThing
{
    internal long At { get; init; }

    internal string? Type { get; set; }

    internal string? Name { get; set; }

    internal GeoJsonCoordinates? Coordinates { get; set; }

    internal List<GeoJsonThing> Inner { get; } = [];
}

/// <summary>A position, or a list of lists that ends in positions.</summary>
internal sealed class GeoJsonCoordinates
{
    internal long At { get; init; }

    internal int Numbers { get; set; }

    internal double LongitudeDeg { get; set; }

    internal double LatitudeDeg { get; set; }

    internal List<GeoJsonCoordinates> Items { get; } = [];
}
