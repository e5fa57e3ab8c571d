using Seedfall.Planning.Calibration.Sprayer;
using Seedfall.Planning.Materials;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Site;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>The sprayer calibrated, its pace, and the tank mixed. Only what somebody asks to keep changes the lawn.</summary>
internal static class SprayerEndpoints
{
    public static void MapSprayer(this WebApplication app)
    {
        var sprayer = app.MapGroup("/lawns/{id}/sprayer");
        sprayer.MapGet("", Overview);
        sprayer.MapGet("/pace", ShowPace);
        sprayer.MapGet("/{method}", Calibrate);
        sprayer.MapPost("/{method}", Keep);
        app.MapGet("/lawns/{id}/tank", Tank);
    }

    private static async Task<IResult> Overview(string id, LawnBook book, LogBook logs, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var log = await logs.For(id, http.RequestAborted);
        var sprayings = stored.Lawn.Sprayer?.Calibrated is { } day ? CalibrationAge.Sprayings(log, day) : (int?)null;
        return Page.Of<SprayerPage>(new { Stored = stored, Sprayings = sprayings, System = Viewer.Of(http) });
    }

    private static async Task<IResult> Calibrate(string id, string method, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || SprayerMethod.Find(method) is not { } way)
        {
            return NoSuchWay();
        }

        var tank = new Entries(Viewer.Of(http));
        SprayerFields.Tank.Fill(tank, stored.Lawn.Sprayer?.Tank);
        return Show(stored, way, tank, http);
    }

    /// <summary>Keeps what the test in the address says, worked out anew from it.</summary>
    private static async Task<IResult> Keep(string id, string method, IFormCollection form, LawnBook book, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || SprayerMethod.Find(method) is not { } way)
        {
            return NoSuchWay();
        }

        var (entries, posted) = (SprayerForm.From(http.Request.Query, Viewer.Of(http), stored.Lawn), Entries.From(form, Viewer.Of(http)));
        var tank = SprayerFields.Tank.Read(posted);
        if (http.Request.Query.Count == 0 || SprayerForm.Read(way, entries, stored.Lawn).Found is not { } found || !posted.Sound)
        {
            return Show(stored, way, posted, http);
        }

        var lawn = stored.Lawn with
        {
            Sprayer = (stored.Lawn.Sprayer ?? new SprayerFacts()) with
            {
                Carrier = found.Rate,
                Tank = tank ?? stored.Lawn.Sprayer?.Tank,
                Calibrated = DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime),
            },
        };
        foreach (var problem in book.Problems(lawn))
        {
            posted.Wrong(problem.Path, LeafWork.Sentence(problem));
        }

        return posted.Sound
            ? SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), lawn, http.RequestAborted), $"/lawns/{id}/sprayer#kept")
            : Show(stored, way, posted, http);
    }

    private static IResult Show(StoredLawn stored, SprayerMethod way, Entries tank, HttpContext http)
    {
        var entries = SprayerForm.From(http.Request.Query, Viewer.Of(http), stored.Lawn);
        var answer = http.Request.Query.Count == 0 ? SprayerAnswer.Nothing : SprayerForm.Read(way, entries, stored.Lawn);
        return Page.Of<CalibratePage>(
            new { Stored = stored, Method = way, Entries = entries, Answer = answer, Tank = tank, Address = $"/lawns/{stored.Row.Id}/sprayer/{way.Key}{http.Request.QueryString}", System = Viewer.Of(http) },
            entries.Sound && tank.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> ShowPace(string id, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = PaceForm.From(http.Request.Query, Viewer.Of(http));
        var answer = PaceForm.Read(entries);
        return Page.Of<PacePage>(new { Stored = stored, Entries = entries, Answer = answer, System = Viewer.Of(http) }, entries.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Tank(string id, LawnBook book, TankWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = TankForm.From(http.Request.Query, Viewer.Of(http), stored.Lawn);
        var mixed = await work.Mix(stored, TankForm.Read(entries), http.RequestAborted);
        return Page.Of<TankPage>(new { Mixed = mixed, Entries = entries, System = Viewer.Of(http) }, entries.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static IResult NoSuchWay() => Page.Plain(StatusCodes.Status404NotFound, "No such page", "There is no such lawn, or no such way to calibrate.");
}
