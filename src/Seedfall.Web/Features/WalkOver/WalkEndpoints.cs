using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.WalkOver.Steps;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>The walk-over of a lawn's patches, one step a screen.</summary>
internal static class WalkEndpoints
{
    public static void MapWalkOver(this WebApplication app)
    {
        var walk = app.MapGroup("/lawns/{id}/walk-over");
        walk.MapGet("", Patches);
        walk.MapGet("/{patch}", GoOn);
        walk.MapGet("/{patch}/sum-up", SumUp);
        walk.MapPost("/{patch}/sum-up/cause", TakeCause);
        walk.MapPost("/{patch}/sum-up/anew", Anew);
        walk.MapGet("/{patch}/{step}", (string id, string patch, string step, WalkWork work, HttpContext http) => Show(id, patch, step, null, work, http));
        walk.MapGet("/{patch}/{step}/{number}", Show);
        walk.MapPost("/{patch}/{step}", (string id, string patch, string step, IFormCollection form, WalkWork work, HttpContext http) => Save(id, patch, step, null, form, work, http));
        walk.MapPost("/{patch}/{step}/clear", (string id, string patch, string step, IFormCollection form, WalkWork work, HttpContext http) => Clear(id, patch, step, null, form, work, http));
        walk.MapPost("/{patch}/{step}/{number}", Save);
        walk.MapPost("/{patch}/{step}/{number}/clear", Clear);
    }

    private static async Task<IResult> Patches(string id, LawnBook book, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored ? Page.Of<WalkListPage>(new { Stored = stored, System = Viewer.Of(http) }) : Page.NoSuchLawn();

    /// <summary>To the first step not taken, or to the sum-up.</summary>
    private static async Task<IResult> GoOn(string id, string patch, WalkWork work, HttpContext http) =>
        await work.Sum(id, patch, http.RequestAborted) is { } sum
            ? Results.LocalRedirect(Walk.FirstOpen(sum.Patch.Survey) is { } step ? Walk.Address(id, patch, step) : Walk.SumUp(id, patch))
            : NoSuchStep();

    /// <summary>A photograph's page hands its cover over in the address; it stands in the form and is saved like any other answer.</summary>
    private static async Task<IResult> Show(string id, string patch, string step, string? number, WalkWork work, HttpContext http)
    {
        if (await work.Open(id, patch, step, number, Viewer.Of(http), http.RequestAborted) is not { } open)
        {
            return NoSuchStep();
        }

        if (open is { Step: QuadratStep, Leaf.IsNew: true } && NumberText.Parse(http.Request.Query["photo"].ToString()) is >= 0.0 and <= 100.0 and { } percent)
        {
            QuadratStep.FromPhoto(open.Leaf.Entries, percent);
        }

        return Page.Of<WalkPage>(new { Open = open });
    }

    private static async Task<IResult> Save(string id, string patch, string step, string? number, IFormCollection form, WalkWork work, HttpContext http)
    {
        if (await work.Open(id, patch, step, number, Viewer.Of(http), http.RequestAborted) is not { } open)
        {
            return NoSuchStep();
        }

        var (result, shown) = await work.Save(open, Entries.From(form, Viewer.Of(http)), form["stamp"].ToString(), http.RequestAborted);
        return Answer(result, shown, Next(shown, id, patch, form["then"].ToString()));
    }

    private static async Task<IResult> Clear(string id, string patch, string step, string? number, IFormCollection form, WalkWork work, HttpContext http)
    {
        if (await work.Open(id, patch, step, number, Viewer.Of(http), http.RequestAborted) is not { Leaf.IsNew: false } open)
        {
            return NoSuchStep();
        }

        var (result, shown) = await work.Clear(open, form["stamp"].ToString(), http.RequestAborted);
        return Answer(result, shown, Walk.SumUp(id, patch));
    }

    private static async Task<IResult> SumUp(string id, string patch, WalkWork work, HttpContext http) =>
        await work.Sum(id, patch, http.RequestAborted) is { } sum ? Page.Of<SumUpPage>(new { Sum = sum, System = Viewer.Of(http) }) : NoSuchStep();

    private static Task<IResult> TakeCause(string id, string patch, IFormCollection form, WalkWork work, HttpContext http) =>
        Change(id, patch, form, work, http, (sum, version) => work.Take(sum, form["cause"].ToString(), version, http.RequestAborted));

    private static Task<IResult> Anew(string id, string patch, IFormCollection form, WalkWork work, HttpContext http) =>
        Change(id, patch, form, work, http, (sum, version) => work.Anew(sum, version, http.RequestAborted));

    private static async Task<IResult> Change(string id, string patch, IFormCollection form, WalkWork work, HttpContext http, Func<WalkSum, int, Task<SaveResult>> change)
    {
        if (await work.Sum(id, patch, http.RequestAborted) is not { } sum)
        {
            return NoSuchStep();
        }

        var version = int.TryParse(form["version"], NumberStyles.None, CultureInfo.InvariantCulture, out var v) ? v : 0;
        return await change(sum, version) switch
        {
            SaveResult.Saved => Results.LocalRedirect(Walk.SumUp(id, patch)),
            SaveResult.Gone => Page.NoSuchLawn(),
            SaveResult.Conflict => Page.Of<SumUpPage>(new { Sum = sum with { Met = true }, System = Viewer.Of(http) }, StatusCodes.Status409Conflict),
            _ => Page.Plain(StatusCodes.Status422UnprocessableEntity, "That cause is not suggested", "Only a cause the walk-over suggests, and the list of causes knows, can be taken over from here. Any cause can be entered on the patch’s leaf of the notes."),
        };
    }

    private static IResult Answer(SaveResult result, OpenWalk shown, string next) => result switch
    {
        SaveResult.Saved => Results.LocalRedirect(next),
        SaveResult.Gone => Page.NoSuchLawn(),
        SaveResult.Conflict => Page.Of<WalkPage>(new { Open = shown }, StatusCodes.Status409Conflict),
        _ => Page.Of<WalkPage>(new { Open = shown }, StatusCodes.Status422UnprocessableEntity),
    };

    /// <summary>Where the button pressed leads: another throw, the sum-up, or the next step.</summary>
    private static string Next(OpenWalk open, string id, string patch, string then) => then switch
    {
        "again" when open.Step.Step == WalkStep.Quadrats => Walk.Address(id, patch, open.Step),
        "sum-up" => Walk.SumUp(id, patch),
        _ => Walk.After(open.Step) is { } next ? Walk.Address(id, patch, next) : Walk.SumUp(id, patch),
    };

    private static RazorComponentResult<PlainPage> NoSuchStep() =>
        Page.Plain(StatusCodes.Status404NotFound, "No such step", "There is no such patch or step in this lawn’s walk-over. It may have been removed.");
}
