using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Web.Features.Site;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Coverage;

/// <summary>One head: added, changed, taken away.</summary>
internal static class HeadEndpoints
{
    public static void MapHeads(this RouteGroupBuilder coverage)
    {
        coverage.MapGet("/heads/{set:int}/{item}", Show);
        coverage.MapPost("/heads/{set:int}/{item}", Save);
        coverage.MapPost("/heads/{set:int}/{item}/remove", Remove);
    }

    internal static RazorComponentResult<PlainPage> NoSuchHead() =>
        Page.Plain(StatusCodes.Status404NotFound, "No such head", "There is no such sprinkler set or head in this lawn’s notes. It may have been removed.");

    /// <summary>The lawn with other heads in one set; a sprinkler moved through just these places is moved through the new ones.</summary>
    private static Lawn With(Lawn lawn, int set, IReadOnlyList<CoverageHead> heads) => lawn with
    {
        Water = lawn.Water! with
        {
            Sets = [.. lawn.Water.Sets.Select((s, i) => i != set - 1 ? s : s with { Heads = heads, Positions = s.Positions > 1 && s.Positions == s.Heads.Count ? Math.Max(1, heads.Count) : s.Positions })],
        },
    };

    /// <summary>What the rules say of it, as sentences that name the head.</summary>
    internal static string Sentence(LawnProblem problem) => problem.Path.EndsWith(".at", StringComparison.Ordinal)
        ? $"{char.ToUpperInvariant(problem.Found[0])}{problem.Found[1..]}: {problem.Expected} is needed."
        : LeafWork.Sentence(problem);

    private static async Task<IResult> Show(string id, int set, string item, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (Position(stored.Lawn, set, item) is not { } position)
        {
            return NoSuchHead();
        }

        var entries = new Entries(Viewer.Of(http));
        HeadForm.Fill(entries, stored.Lawn.Water!.Sets[set - 1].Heads.ElementAtOrDefault(position));
        return Page.Of<HeadPage>(new { Stored = stored, Set = set, Item = item, Entries = entries });
    }

    private static async Task<IResult> Save(string id, int set, string item, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (Position(stored.Lawn, set, item) is not { } position)
        {
            return NoSuchHead();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var lawn = stored.Lawn;
        if (HeadForm.Read(entries) is { } head)
        {
            var heads = lawn.Water!.Sets[set - 1].Heads;
            lawn = With(lawn, set, [.. heads.Take(position), head, .. heads.Skip(position + 1)]);
            foreach (var problem in book.Problems(lawn))
            {
                entries.Wrong(problem.Path.EndsWith(".at", StringComparison.Ordinal) ? HeadForm.East.Name : problem.Path, Sentence(problem));
            }
        }

        return entries.Sound
            ? SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), lawn, http.RequestAborted), $"/lawns/{id}/coverage?set={set.ToString(CultureInfo.InvariantCulture)}")
            : Page.Of<HeadPage>(new { Stored = stored, Set = set, Item = item, Entries = entries }, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Remove(string id, int set, string item, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (Position(stored.Lawn, set, item) is not { } position || stored.Lawn.Water!.Sets[set - 1].Heads is not { } heads || position >= heads.Count)
        {
            return NoSuchHead();
        }

        var lawn = With(stored.Lawn, set, [.. heads.Where((_, i) => i != position)]);
        return SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), lawn, http.RequestAborted), $"/lawns/{id}/coverage");
    }

    /// <summary>Position of a head numbered from 1, the place after the last for a new one; null where set or head do not exist.</summary>
    private static int? Position(Lawn lawn, int set, string item)
    {
        if (set < 1 || set > (lawn.Water?.Sets.Count ?? 0))
        {
            return null;
        }

        var count = lawn.Water!.Sets[set - 1].Heads.Count;
        return item == "new" ? count : int.TryParse(item, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= count ? number - 1 : null;
    }
}
