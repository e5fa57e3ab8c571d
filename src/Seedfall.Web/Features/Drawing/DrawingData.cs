using System.Text.Json;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

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
            errors = Errors,
            drawing = Drawing(open.Drawn),
            stored = open.Source is DrawSource.Stored or DrawSource.Saved ? null : Drawing(open.StoredDrawn),
        },
        Web);

    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web) { Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    /// <summary>
    /// What each way of measuring makes an outline's area off by: meters for every corner, a share for the whole. Told from
    /// two squares, whose ranges are <c>b^2 = 2 (corner / side)^2 + whole^2</c>.
    /// </summary>
    private static readonly Dictionary<string, object> Errors = Enum.GetValues<MeasuredBy>().ToDictionary(
        by => JsonNamingPolicy.CamelCase.ConvertName(by.ToString()),
        by =>
        {
            const double near = 100.0;
            const double far = 1000.0;
            var (small, large) = (Math.Pow(Square(near, by), 2), Math.Pow(Square(far, by), 2));
            var corner = (small - large) / (2.0 / (near * near) - 2.0 / (far * far));
            return (object)new { corner = Math.Sqrt(Math.Max(0.0, corner)), whole = Math.Sqrt(Math.Max(0.0, large - 2.0 * corner / (far * far))) };
        });

    private static double Square(double sideM, MeasuredBy by) =>
        AreaBand.Of(new PatchShape.Outline([new(0.0, 0.0), new(sideM, 0.0), new(sideM, sideM), new(0.0, sideM)], []), new Measuring(by, null)).Value;

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
