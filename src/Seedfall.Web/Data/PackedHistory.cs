using System.IO.Compression;
using System.Text.Json;
using Seedfall.Engine.Weather;

namespace Seedfall.Web.Data;

/// <summary>A weather history as compressed JSON for the database. Numbers are written so that they read back bit for bit.</summary>
internal static class PackedHistory
{
    private static readonly JsonSerializerOptions Options = new()
    {
        DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingDefault,
        IgnoreReadOnlyProperties = true,
    };

    public static byte[] Pack(WeatherHistory history)
    {
        using var bytes = new MemoryStream();
        using (var zip = new GZipStream(bytes, CompressionLevel.Optimal))
        {
            JsonSerializer.Serialize(zip, new Stored(history.Station, history.StationName, [.. history.Days], history.Sources, history.Notes), Options);
        }

        return bytes.ToArray();
    }

    public static WeatherHistory Unpack(byte[] packed)
    {
        using var zip = new GZipStream(new MemoryStream(packed, writable: false), CompressionMode.Decompress);
        var stored = JsonSerializer.Deserialize<Stored>(zip, Options) ?? throw new InvalidDataException("the stored weather is empty");
        return new(stored.Station, stored.StationName, stored.Days, stored.Sources, stored.Notes);
    }

    private sealed record Stored(Place? Station, string StationName, WeatherDay[] Days, IReadOnlyList<string> Sources, IReadOnlyList<string> Notes);
}
