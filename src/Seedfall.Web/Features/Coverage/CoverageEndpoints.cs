using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Coverage;

/// <summary>Where the water falls, and the heads it falls from.</summary>
internal static class CoverageEndpoints
{
    public static void MapCoverage(this WebApplication app)
    {
        var coverage = app.MapGroup("/lawns/{id}/coverage");
        coverage.MapGet("", Show);
        coverage.MapHeads();
        coverage.MapPlaces();
    }

    private static async Task<IResult> Show(string id, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return CoverageView.Of(stored, CoverageAsk.Of(http.Request.Query)) is { } view
            ? Page.Of<CoveragePage>(new { View = view, System = Viewer.Of(http) })
            : HeadEndpoints.NoSuchHead();
    }
}
