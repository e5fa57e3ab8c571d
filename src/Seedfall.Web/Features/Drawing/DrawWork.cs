using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Drawing;

/// <summary>Where what the page shows comes from; tells the script what to do with a draft it kept.</summary>
public enum DrawSource
{
    /// <summary>The drawing as stored.</summary>
    Stored,

    /// <summary>The drawing as stored, right after it was saved.</summary>
    Saved,

    /// <summary>What was posted and not saved.</summary>
    Posted,

    /// <summary>Read from a file, not saved yet.</summary>
    Imported,
}

/// <summary>A drawing as it lies open.</summary>
/// <param name="Stored">The lawn as stored now.</param>
/// <param name="Stamp">Stamp of the stored drawing; a form carries the one it was filled from.</param>
/// <param name="Form">What stands in the form.</param>
/// <param name="Source">Where that comes from.</param>
/// <param name="System">The viewer's unit system.</param>
public sealed record OpenDrawing(StoredLawn Stored, string Stamp, DrawnForm Form, DrawSource Source, UnitSystem System)
{
    /// <summary>What cannot be right, with the very points.</summary>
    public IReadOnlyList<DrawnProblem> Problems { get; init; } = [];

    /// <summary>Shapes two windows drew differently.</summary>
    public IReadOnlyList<MetChange> Met { get; init; } = [];

    /// <summary>What a file reader left out or changed.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>What is shown.</summary>
    public Drawn Drawn => Form.Drawn;

    /// <summary>What is stored.</summary>
    public required Drawn StoredDrawn { get; init; }

    public string Id => Stored.Row.Id;
}

/// <summary>Opening and saving the drawing of one lawn.</summary>
internal sealed class DrawWork(LawnBook book, SheetShelf shelf)
{
    /// <summary>Null where there is no such lawn.</summary>
    public async Task<OpenDrawing?> Open(string id, UnitSystem system, CancellationToken cancellation)
    {
        if (await book.Find(id, cancellation) is not { } stored)
        {
            return null;
        }

        var drawn = DrawnLawn.Of(stored.Lawn, shelf.Notes(stored.Row));
        return new(stored, Stamp(drawn), DrawnForm.Of(drawn, system), DrawSource.Stored, system) { StoredDrawn = drawn };
    }

    /// <summary>Takes a posted drawing in. What is returned is what to show.</summary>
    /// <param name="open">The drawing as stored now.</param>
    /// <param name="form">What was posted.</param>
    public async Task<(SaveResult Result, OpenDrawing Shown)> Save(OpenDrawing open, IFormCollection form, CancellationToken cancellation)
    {
        var posted = DrawnForm.Read(form, open.Stored.Lawn, open.Drawn.Picture);
        var shown = open with { Form = posted, Source = DrawSource.Posted };
        if (form["stamp"] != open.Stamp)
        {
            return (SaveResult.Conflict, shown with { Met = Met(open, posted.Drawn) });
        }

        var changed = DrawnLawn.Apply(open.Stored.Lawn, posted.Drawn, out var undrawn);
        var problems = Judged(posted, changed, undrawn, open.System);
        if (problems.Count > 0)
        {
            return (SaveResult.Refused, shown with { Problems = problems });
        }

        var result = await book.Save(open.Id, open.Stored.Row.Version, changed, cancellation);
        if (result == SaveResult.Saved)
        {
            var edge = posted.Drawn.Shapes[0];
            shelf.Keep(open.Stored.Row, new(posted.Drawn.Picture, edge.IsDrawn ? edge.Taken : null));
        }

        return (result, result == SaveResult.Conflict ? shown with { Met = Met(open, posted.Drawn) } : shown);
    }

    /// <summary>The drawing with a file taken in, to be looked at; or why the file was refused. What was drawn and not saved comes along.</summary>
    public static (OpenDrawing Shown, string? Problem) Import(OpenDrawing open, IFormCollection form, byte[] bytes, string name)
    {
        var posted = form.ContainsKey(Drawn.EdgeKey) ? DrawnForm.Read(form, open.Stored.Lawn, open.Drawn.Picture) : open.Form;
        if (posted.Problems.Count > 0)
        {
            return (open, posted.Problems[0]);
        }

        var import = GroundFiles.Read(bytes, name, posted.Drawn, form["target"].ToString());
        if (import.Problem is null && DrawnForm.TooMany(import.Drawn.Shapes) is { } many)
        {
            return (open, $"{name}: {many}");
        }

        var shown = open with
        {
            Form = DrawnForm.Of(import.Drawn, open.System),
            Source = DrawSource.Imported,
            Remarks = import.Remarks,
            Problems = DrawnProblems.Of(import.Drawn, open.System),
        };
        return (shown, import.Problem);
    }

    /// <summary>What could not be read, else what crosses, else what the rules of a lawn say.</summary>
    private List<DrawnProblem> Judged(DrawnForm posted, Lawn changed, IReadOnlyList<string> undrawn, UnitSystem system)
    {
        List<DrawnProblem> found = [.. posted.Problems.Select(p => new DrawnProblem(p, null))];
        if (found.Count == 0)
        {
            found.AddRange(DrawnProblems.Of(posted.Drawn, system));
            found.AddRange(undrawn.Select(name => new DrawnProblem($"{name}: its outline was taken away, and with it its size. Draw it again, or give it a size in the notes first.", null)));
        }

        return found.Count > 0 ? found : [.. book.Problems(changed).Select(p => new DrawnProblem(LeafWork.Sentence(p), null))];
    }

    /// <summary>Every shape that reads differently in what is stored and in what was posted.</summary>
    private static List<MetChange> Met(OpenDrawing stored, Drawn posted)
    {
        static IEnumerable<(string Name, DrawnShape Shape)> Named(Drawn drawn) => drawn.Shapes.Select(s => (s.Name, s));
        string Gist(DrawnShape? shape, Drawn drawn) => shape is null or { Ring.Count: 0 }
            ? "not drawn"
            : string.Create(CultureInfo.InvariantCulture, $"{shape.Ring.Count} corners{(shape.IsDrawn ? ", " + FigureText.Show(QuantityKind.Area, PatchArea.Of(drawn.OutlineOf(shape)).SquareMeters, stored.System) : "")}");

        var (mine, theirs) = (Named(posted).ToLookup(s => s.Name, s => s.Shape), Named(stored.Drawn).ToLookup(s => s.Name, s => s.Shape));
        var met = Named(stored.Drawn).Concat(Named(posted)).Select(s => s.Name).Distinct()
            .Select(name => (name, Mine: mine[name].FirstOrDefault(), Theirs: theirs[name].FirstOrDefault()))
            .Where(s => !(s.Mine?.Ring ?? []).SequenceEqual(s.Theirs?.Ring ?? []))
            .Select(s => new MetChange(s.name, Gist(s.Theirs, stored.Drawn), Gist(s.Mine, posted)))
            .ToList();
        return met.Count > 0 ? met : [new("The drawing", "changed", "not saved yet")];
    }

    /// <summary>The same for the same drawing, whatever units the viewer prefers.</summary>
    private static string Stamp(Drawn drawn)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{drawn.Origin}\n{drawn.Picture?.Json}\n");
        foreach (var shape in drawn.Shapes)
        {
            text.Append(CultureInfo.InvariantCulture, $"{shape.Key}\t{shape.Name}\t{shape.Hole}\t{shape.Taken}");
            foreach (var corner in shape.Ring)
            {
                text.Append(CultureInfo.InvariantCulture, $"\t{corner.EastM:R} {corner.NorthM:R}");
            }

            text.Append('\n');
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..16];
    }
}
