using Microsoft.AspNetCore.Mvc;
using Seedfall.Weather;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Weather;

/// <summary>Weather files in, their report, and which lawn is planned with which.</summary>
internal static class WeatherEndpoints
{
    public static void MapWeather(this WebApplication app)
    {
        app.MapGet("/weather", async (WeatherShelf shelf, HttpContext http) => await List(shelf, http, new Entries(Viewer.Of(http)), [], StatusCodes.Status200OK, null));
        app.MapPost("/weather", Upload).WithMetadata(new RequestSizeLimitAttribute(Settings.UploadBytes));
        app.MapGet("/weather/{weather:int}", ShowReport);
        app.MapPost("/weather/{weather:int}/remove", Remove);
        app.MapGet("/lawns/{id}/weather", ShowPick);
        app.MapPost("/lawns/{id}/weather", Pick);
    }

    private static async Task<IResult> List(WeatherShelf shelf, HttpContext http, Entries entries, IReadOnlyList<string> refused, int status, string? lawn) =>
        Page.Of<WeatherPage>(new { Cards = await shelf.All(http.RequestAborted), Entries = entries, Refused = refused, System = Viewer.Of(http), Lawn = lawn }, status);

    private static async Task<IResult> Upload(IFormCollection form, WeatherShelf shelf, LawnBook book, HttpContext http)
    {
        var entries = Entries.From(form, Viewer.Of(http));
        var (name, options) = WeatherForm.Read(entries);
        var lawn = form["lawn"].ToString() is { Length: > 0 } id ? await book.Find(id, http.RequestAborted) : null;
        var files = form.Files.Where(f => f.Length > 0).ToList();
        if (files.Count == 0)
        {
            entries.Wrong("files", "Choose at least one weather file.");
        }

        if (!entries.Sound)
        {
            return await List(shelf, http, entries, [], StatusCodes.Status422UnprocessableEntity, lawn?.Row.Id);
        }

        var read = WeatherFiles.Read([.. files.Select(f => new WeatherInput(f.FileName, f.Length, f.OpenReadStream))], options with { Lawn = lawn?.Lawn.Place }, progress: null, http.RequestAborted);
        if (!read.IsRead)
        {
            return await List(shelf, http, entries, [.. read.Problems.Select(p => p.ToString())], StatusCodes.Status422UnprocessableEntity, lawn?.Row.Id);
        }

        var weather = await shelf.Add(name ?? read.Report.StationName, read.History, read.Report, invented: false, http.RequestAborted);
        if (lawn is not null)
        {
            await shelf.Pick(lawn.Row.Id, weather, http.RequestAborted);
        }

        return Results.LocalRedirect(FormattableString.Invariant($"/weather/{weather}") + (lawn is null ? "" : $"?lawn={lawn.Row.Id}"));
    }

    private static async Task<IResult> ShowReport(int weather, string? lawn, WeatherShelf shelf, LawnBook book, HttpContext http)
    {
        if (await shelf.Report(weather, http.RequestAborted) is not var (card, report))
        {
            return NoSuchWeather();
        }

        var stored = lawn is null ? null : await book.Find(lawn, http.RequestAborted);
        return Page.Of<ReportPage>(new { Card = card, Report = report, Lawn = stored });
    }

    private static async Task<IResult> Remove(int weather, IFormCollection form, WeatherShelf shelf, HttpContext http) =>
        await shelf.Remove(weather, http.RequestAborted)
            ? Results.LocalRedirect("/weather")
            : Page.Plain(StatusCodes.Status409Conflict, "Not removed", "A lawn is planned with this weather, or it is already gone. Give that lawn other weather first.");

    private static async Task<IResult> ShowPick(string id, LawnBook book, WeatherShelf shelf, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var cards = await shelf.All(http.RequestAborted);
        return Page.Of<PickPage>(new { Stored = stored, Cards = Nearest(cards, stored), System = Viewer.Of(http) });
    }

    private static async Task<IResult> Pick(string id, IFormCollection form, WeatherShelf shelf, HttpContext http) =>
        int.TryParse(form["weather"], out var weather) && await shelf.Pick(id, weather, http.RequestAborted)
            ? Results.LocalRedirect($"/lawns/{id}")
            : Page.Plain(StatusCodes.Status422UnprocessableEntity, "Choose the weather", "Choose one of the weather histories listed. The one chosen may have been removed.");

    private static IReadOnlyList<(WeatherCard Card, double? Km)> Nearest(IReadOnlyList<WeatherCard> cards, StoredLawn stored) =>
        [.. cards.Select(c => (c, GroundDistance.Km(stored.Lawn.Place, c.LatitudeDeg, c.LongitudeDeg))).OrderBy(c => c.Item2 ?? double.MaxValue)];

    private static IResult NoSuchWeather() => Page.Plain(StatusCodes.Status404NotFound, "No such weather", "There is no weather at this address. It may have been removed.");
}
