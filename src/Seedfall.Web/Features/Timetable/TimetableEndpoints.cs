using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Timetable;

/// <summary>The watering of each phase, run by run.</summary>
internal static class TimetableEndpoints
{
    public static void MapTimetable(this WebApplication app) => app.MapGet("/lawns/{id}/timetable", Show);

    private static async Task<IResult> Show(string id, LawnBook book, TimetableWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<TimetablePage>(new { Timetabled = await work.Of(stored, http.RequestAborted), System = Viewer.Of(http) })
            : Page.NoSuchLawn();
}
