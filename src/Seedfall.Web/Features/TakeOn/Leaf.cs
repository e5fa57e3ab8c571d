using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>One leaf of a lawn's notes: one screen of questions that go together.</summary>
/// <param name="id">Stable id in the address.</param>
/// <param name="title">Heading.</param>
/// <param name="why">What the answers change on the plan, in one sentence.</param>
public abstract class Leaf(string id, string title, string why)
{
    public string Id { get; } = id;

    public string Title { get; } = title;

    public string Why { get; } = why;

    /// <summary>Null for a leaf that holds one set of answers; else what one item of it is called, for example <c>patch</c>.</summary>
    public virtual string? Each => null;

    /// <summary>Fewest items of a list leaf that must stay.</summary>
    public virtual int Fewest => 0;

    /// <summary>What the lawn says here, one line per item; empty where nothing is known.</summary>
    public abstract IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system);

    public abstract IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade);

    /// <summary>Puts the lawn's answers into the fields; an item past the last is a new one.</summary>
    public abstract void Fill(Lawn lawn, int item, Entries entries);

    /// <summary>The lawn with the answers taken in; meaningless where <see cref="Entries.Sound"/> is false.</summary>
    public abstract Lawn Apply(Lawn lawn, int item, Entries entries);

    /// <summary>The lawn without an item.</summary>
    public virtual Lawn Remove(Lawn lawn, int item) => throw new NotSupportedException($"the leaf {Id} is no list");
}

/// <summary>A leaf that holds a list: patches, sprinkler sets, seed lots.</summary>
public abstract class ListLeaf<T>(string id, string title, string why) : Leaf(id, title, why)
    where T : class
{
    protected abstract IReadOnlyList<T> Items(Lawn lawn);

    protected abstract Lawn With(Lawn lawn, IReadOnlyList<T> items);

    protected abstract string Gist(T item, Lawn lawn, UnitSystem system);

    /// <param name="before">The item before the change; null for a new one.</param>
    protected abstract void FillItem(T? before, Lawn lawn, Entries entries);

    /// <returns>The item, or null where a problem was noted.</returns>
    protected abstract T? ReadItem(T? before, Lawn lawn, Entries entries);

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) => [.. Items(lawn).Select(i => Gist(i, lawn, system))];

    public override void Fill(Lawn lawn, int item, Entries entries) => FillItem(At(lawn, item), lawn, entries);

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var items = Items(lawn);
        var read = ReadItem(At(lawn, item), lawn, entries);
        return read is null || !entries.Sound
            ? lawn
            : With(lawn, item < items.Count ? [.. items.Take(item), read, .. items.Skip(item + 1)] : [.. items, read]);
    }

    public override Lawn Remove(Lawn lawn, int item)
    {
        var items = Items(lawn);
        return With(lawn, [.. items.Where((_, i) => i != item)]);
    }

    private T? At(Lawn lawn, int item) => item < Items(lawn).Count ? Items(lawn)[item] : null;
}
