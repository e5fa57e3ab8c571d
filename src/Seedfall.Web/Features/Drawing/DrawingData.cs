using System.Text.Json;
using Seedfall.Engine.Workings;

namespace Seedfall.Web.Features.Drawing;

/// <summary>What the page's script begins with, as JSON in the page. Angle brackets are escaped by the writer.</summary>
internal static class DrawingData
{
    public static string Of(OpenDrawing open) => JsonSerializer.Serialize(
        new
        {
            lawn = open.Id,
            stamp = open.Stamp,
            source = open.Source,
            system = open.System == UnitSystem.Metric ? "metric" : "us",
            place = new { lat = open.Stored.Lawn.Place.LatitudeDeg, lon = open.Stored.Lawn.Place.LongitudeDeg },
            kinds = DrawnForm.Kinds.Select(k => new { key = k.Key, words = k.Words }),
            drawing = Drawing(open.Drawn),
        },
        Web);

    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web) { Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    private static object Drawing(Drawn drawn) => new
    {
        shapes = drawn.Shapes.Select(s => new
        {
            key = s.Key,
            kind = s.Kind,
            name = s.Name,
            hole = s.Hole is { } kind ? DrawnForm.Kinds.First(k => k.Kind == kind).Key : null,
            patch = s.PatchId,
            ring = s.Ring.Select(c => new { e = c.EastM, n = c.NorthM }),
            taken = s.Taken is { } taken ? new { by = taken.By, band = taken.AreaBand?.Value } : null,
        }),
        picture = drawn.Picture,
        origin = drawn.Origin is { } o ? new { lat = o.LatitudeDeg, lon = o.LongitudeDeg } : null,
    };
}
