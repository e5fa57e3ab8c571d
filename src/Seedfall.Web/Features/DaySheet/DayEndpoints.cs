using System.Globalization;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>The day sheet of a lawn.</summary>
internal static class DayEndpoints
{
    /// <summary>Days either side of the lawn's own day a sheet is made for.</summary>
    private const int Reach = 400;

    public static void MapDaySheet(this WebApplication app)
    {
        var day = app.MapGroup("/lawns/{id}/day");
        day.MapGet("", Today);
        day.MapGet("/{date}", Show);
    }

    private static async Task<IResult> Today(string id, LawnBook book, TimeProvider clock, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Results.LocalRedirect(Address(id, DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime)))
            : Page.NoSuchLawn();

    private static async Task<IResult> Show(string id, string date, LawnBook book, DayWork work, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var today = DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime);
        if (!DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) || Math.Abs(day.DayNumber - today.DayNumber) > Reach)
        {
            return Page.Plain(StatusCodes.Status404NotFound, "No such day", $"A day near today is needed, written like {today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}.");
        }

        SecurityHeaders.AllowSpeech(http.Response.Headers);
        return Page.Of<DayPage>(new { Day = await work.Of(stored, day, http.RequestAborted), System = Viewer.Of(http) });
    }

    public static string Address(string lawnId, DateOnly date) => $"/lawns/{lawnId}/day/{date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";
}
