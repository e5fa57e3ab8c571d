using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Seedfall.Planning.Field.SprayWeather;
using Seedfall.Weather.Forecasts;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>The hours ahead, one of them, the judgment on the spot, and the forecast brought for them.</summary>
internal static class SprayWindowEndpoints
{
    private const string HourFormat = "yyyyMMdd'T'HH'Z'";

    public static void MapSprayWindow(this WebApplication app)
    {
        var window = app.MapGroup("/lawns/{id}/spray-window");
        window.MapGet("", Show);
        window.MapGet("/hour/{hour}", ShowHour);
        window.MapPost("/forecast", Bring).WithMetadata(new RequestSizeLimitAttribute(ForecastFiles.MostBytes + (1 << 20)));
        window.MapPost("/forecast/forget", Forget);
        window.MapGet("/now", ShowNow);
        window.MapPost("/now", Judge);
    }

    /// <summary>An hour as its address has it.</summary>
    public static string Address(DateTimeOffset hour) => hour.UtcDateTime.ToString(HourFormat, CultureInfo.InvariantCulture);

    private static async Task<IResult> Show(string id, LawnBook book, SprayWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<WindowPage>(new { View = await work.Of(stored, Hours(http), http.RequestAborted), System = Viewer.Of(http) })
            : Page.NoSuchLawn();

    /// <summary>How long the work takes, hours; 1 where nothing sensible is asked.</summary>
    private static int Hours(HttpContext http) =>
        int.TryParse(http.Request.Query["hours"], NumberStyles.None, CultureInfo.InvariantCulture, out var hours) && hours is >= 1 and <= SprayWork.LongestWork ? hours : 1;

    private static async Task<IResult> ShowHour(string id, string hour, LawnBook book, SprayWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var view = await work.Of(stored, 1, http.RequestAborted);
        return DateTimeOffset.TryParseExact(hour, HourFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var start) && view.Outlook?.Hours.FirstOrDefault(h => h.Hour.Start == start) is { } found
            ? Page.Of<HourPage>(new { View = view, Hour = found, System = Viewer.Of(http) })
            : Page.Plain(StatusCodes.Status404NotFound, "No such hour", "This hour is over, or the forecast does not reach it. Go back to the spray window.");
    }

    private static async Task<IResult> Bring(string id, IFormCollection form, LawnBook book, SprayWork work, ForecastShelf shelf, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var problem = "Choose one saved forecast.";
        if (form.Files.Count == 1 && form.Files[0] is { Length: > 0 } file)
        {
            var json = await file.Bytes(http.RequestAborted);
            var read = ForecastFiles.Read(file.FileName, json);
            if (read.IsRead)
            {
                shelf.Keep(stored.Row, json);
                return Results.LocalRedirect($"/lawns/{id}/spray-window");
            }

            problem = read.Problem.ToString();
        }

        return Page.Of<WindowPage>(new { View = await work.Of(stored, 1, http.RequestAborted), System = Viewer.Of(http), Problem = problem }, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Forget(string id, IFormCollection form, LawnBook book, ForecastShelf shelf, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        shelf.Forget(stored.Row);
        return Results.LocalRedirect($"/lawns/{id}/spray-window");
    }

    private static async Task<IResult> ShowNow(string id, LawnBook book, SprayWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<NowPage>(new { Stored = stored, Now = work.Now(stored), Entries = NowForm.Blank(Viewer.Of(http)), System = Viewer.Of(http) })
            : Page.NoSuchLawn();

    private static async Task<IResult> Judge(string id, IFormCollection form, LawnBook book, SprayWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var (entries, now) = (Entries.From(form, Viewer.Of(http)), work.Now(stored));
        if (NowForm.Read(entries) is not { } read)
        {
            return Page.Of<NowPage>(new { Stored = stored, Now = now, Entries = entries, System = Viewer.Of(http) }, StatusCodes.Status422UnprocessableEntity);
        }

        var judged = SprayNow.Judge(read.Reading, SprayLabel.Of(stored.Lawn.PreEmergent), DaySun.At(stored.Lawn.Place, now), now, read.Nozzle);
        return Page.Of<NowPage>(new { Stored = stored, Now = now, Entries = entries, System = Viewer.Of(http), Judged = judged, read.From });
    }
}
