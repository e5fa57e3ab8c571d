using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>A leaf as it lies open: whose, which item, and what stands in its fields.</summary>
/// <param name="Stamp">Stamp of the stored answers; a form carries the one it was filled from, so that a change made meanwhile is seen.</param>
public sealed record OpenLeaf(string Id, Leaf Leaf, int Item, bool IsNew, StoredLawn Stored, string Stamp, Entries Entries, IReadOnlyList<FieldGroup> Groups)
{
    public Lawn Lawn => Stored.Lawn;

    /// <summary>Fields that read differently in the lawn as it is stored now: shown where two changes met.</summary>
    public IReadOnlyList<MetChange> Met { get; init; } = [];

    public string Address => Leaf.Each is null ? Notebook.Address(Leaf, Id, Lawn) : Notebook.ItemAddress(Leaf, Id, IsNew ? null : Item);
}

/// <summary>One field that two people, or two windows, answered differently.</summary>
public sealed record MetChange(string Label, string Theirs, string Yours);

/// <summary>Opening, saving and removing on one leaf.</summary>
internal sealed class LeafWork(LawnBook book, TradeTables trade)
{
    /// <summary>Null where the lawn, the leaf or the item does not exist.</summary>
    /// <param name="item">Null for a leaf that is no list, else the item's number from 1 or <c>new</c>.</param>
    public async Task<OpenLeaf?> Open(string id, string leafId, string? item, UnitSystem system, CancellationToken cancellation)
    {
        if (Notebook.Find(leafId) is not { } leaf || (leaf.Each is null) != (item is null) || await book.Find(id, cancellation) is not { } stored)
        {
            return null;
        }

        var count = leaf.Gists(stored.Lawn, system).Count;
        if (Position(leaf, item, count) is not { } position)
        {
            return null;
        }

        return Lay(stored, leaf, position, leaf.Each is not null && position == count, system);
    }

    /// <summary>A leaf laid open at one item.</summary>
    public OpenLeaf Lay(StoredLawn stored, Leaf leaf, int item, bool isNew, UnitSystem system)
    {
        var entries = new Entries(system);
        leaf.Fill(stored.Lawn, item, entries);
        var groups = leaf.Groups(stored.Lawn, trade);
        return new(stored.Row.Id, leaf, item, isNew, stored, Stamp(leaf, stored.Lawn, item, groups), entries, groups);
    }

    /// <summary>Takes posted answers in and stores the lawn. What is returned is what to show: with problems, or with both answers where changes met.</summary>
    /// <param name="open">The leaf as stored now.</param>
    /// <param name="posted">The answers.</param>
    /// <param name="stamp">Stamp of the answers the form was filled from.</param>
    public async Task<(SaveResult Result, OpenLeaf Shown)> Save(OpenLeaf open, Entries posted, string stamp, CancellationToken cancellation)
    {
        if (!open.IsNew && stamp != open.Stamp)
        {
            return (SaveResult.Conflict, Meet(open, posted));
        }

        var answered = open with { Entries = posted };
        var changed = open.Leaf.Apply(open.Lawn, open.Item, posted);
        return posted.Sound ? await Store(answered, changed, cancellation) : (SaveResult.Refused, answered);
    }

    /// <summary>Removes the open item.</summary>
    public async Task<(SaveResult Result, OpenLeaf Shown)> Remove(OpenLeaf open, string stamp, CancellationToken cancellation)
    {
        if (stamp != open.Stamp)
        {
            return (SaveResult.Conflict, open with { Met = [new(open.Leaf.Title, "changed, as below", "removed")] });
        }

        if (open.Leaf.Gists(open.Lawn, open.Entries.System).Count > open.Leaf.Fewest)
        {
            return await Store(open, open.Leaf.Remove(open.Lawn, open.Item), cancellation);
        }

        open.Entries.Wrong("", $"This is the last {open.Leaf.Each}: a lawn needs one. Add another before removing it.");
        return (SaveResult.Refused, open);
    }

    /// <summary>A problem of the lawn's rules as one sentence.</summary>
    public static string Sentence(LawnProblem problem) => $"{problem.Path}: {problem.Expected} is expected, not {problem.Found}.";

    private async Task<(SaveResult Result, OpenLeaf Shown)> Store(OpenLeaf open, Lawn changed, CancellationToken cancellation)
    {
        foreach (var problem in book.Problems(changed))
        {
            open.Entries.Wrong(problem.Path, Sentence(problem));
        }

        if (!open.Entries.Sound)
        {
            return (SaveResult.Refused, open);
        }

        var result = await book.Save(open.Id, open.Stored.Row.Version, changed, cancellation);
        return (result, result == SaveResult.Saved ? open with { Stored = open.Stored with { Lawn = changed } } : open with { Met = [new(open.Leaf.Title, "changed", "not saved yet")] });
    }

    /// <summary>The leaf again with both answers and the stored stamp, so that saving once more is a decision.</summary>
    private static OpenLeaf Meet(OpenLeaf now, Entries posted) => now with
    {
        Entries = posted,
        Met = [.. now.Groups.SelectMany(g => g.Fields).Where(f => Shown(now.Entries, f) != Shown(posted, f)).Select(f => new MetChange(f.Label, Shown(now.Entries, f), Shown(posted, f)))],
    };

    /// <summary>The same for the same answers, whatever units the viewer prefers.</summary>
    private static string Stamp(Leaf leaf, Lawn lawn, int position, IReadOnlyList<FieldGroup> groups)
    {
        var entries = new Entries(UnitSystem.UsCustomary);
        leaf.Fill(lawn, position, entries);
        var answers = string.Join('\n', groups.SelectMany(g => g.Fields).Select(f => $"{f.Name}={Shown(entries, f)}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(answers)))[..16];
    }

    private static string Shown(Entries entries, Field field)
    {
        var text = string.Join(", ", entries.All(field.Name).Where(t => t.Length > 0));
        return text.Length == 0 ? "blank" : field is QuantityField quantity ? $"{text} {entries.Text(quantity.UnitName)}" : text;
    }

    private static int? Position(Leaf leaf, string? item, int count)
    {
        if (leaf.Each is null)
        {
            return 0;
        }

        return item == "new"
            ? count
            : int.TryParse(item, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= count ? number - 1 : null;
    }
}
