using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>A fertilizer by its grade: the starter, or the late-fall feed.</summary>
internal sealed class FeedLeaf : Leaf
{
    private static readonly TextField Name = new("product", "What to call it") { Longest = 60, Hint = "A generic name, for example balanced starter. Blank leaves the usual grade." };
    private static readonly NumberField Nitrogen = new("n", "Nitrogen, first number of the grade", 0.0, 100.0, "%");
    private static readonly NumberField Phosphate = new("p", "Phosphate, second number", 0.0, 100.0, "%");
    private static readonly NumberField Potash = new("k", "Potash, third number", 0.0, 100.0, "%");
    private static readonly NumberField Slow = new("slow", "Of the nitrogen, slow-release", 0.0, 100.0, "%") { Hint = "Blank counts as none: some laws ask for a least share." };

    private readonly Func<Lawn, FertilizerProduct?> _get;
    private readonly Func<Lawn, FertilizerProduct?, Lawn> _set;

    private FeedLeaf(string id, string title, string why, Func<Lawn, FertilizerProduct?> get, Func<Lawn, FertilizerProduct?, Lawn> set)
        : base(id, title, why) => (_get, _set) = (get, set);

    public static FeedLeaf Starter() => new(
        "starter", "Starter fertilizer", "The grade gives the pounds, twice: on seed-down day and about day 15.", l => l.Starter, (l, f) => l with { Starter = f });

    public static FeedLeaf Late() => new(
        "late-feed", "Late-fall feed", "The grade gives the pounds of the last feeding, held under the year’s nitrogen limit.", l => l.LateFeed, (l, f) => l with { LateFeed = f });

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
        [new("The bag", [Name, Nitrogen, Phosphate, Potash, Slow]), BagFields.Group];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) => _get(lawn) is { } feed
        ? [$"{feed.Name}, {NumberText.Write(feed.Nitrogen.Percent)}-{NumberText.Write(feed.Phosphate.Percent)}-{NumberText.Write(feed.Potash.Percent)}"]
        : [];

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        var feed = _get(lawn);
        Name.Fill(entries, feed?.Name);
        Nitrogen.FillShare(entries, feed?.Nitrogen);
        Phosphate.FillShare(entries, feed?.Phosphate);
        Potash.FillShare(entries, feed?.Potash);
        Slow.FillShare(entries, feed?.SlowNitrogen);
        BagFields.Fill(feed?.Bags ?? [], entries);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (name, n, p, k) = (Name.Read(entries), Nitrogen.ReadShare(entries), Phosphate.ReadShare(entries), Potash.ReadShare(entries));
        var (slow, bags) = (Slow.ReadShare(entries), BagFields.Read(entries));
        if (name is null && n is null && p is null && k is null && slow is null && bags.Count == 0)
        {
            return _set(lawn, null);
        }

        if (n is null)
        {
            entries.Wrong(Nitrogen.Name, $"{Nitrogen.Label}: the grade on the bag is needed, for example 12.");
        }

        var sum = (n?.Percent ?? 0.0) + (p?.Percent ?? 0.0) + (k?.Percent ?? 0.0);
        if (sum > 100.0)
        {
            entries.Wrong(Nitrogen.Name, $"{Nitrogen.Label}: a grade adds up to at most 100; this one adds up to {NumberText.Write(sum)}.");
        }

        return _set(lawn, new FertilizerProduct
        {
            Name = name ?? Title.ToLowerInvariant(),
            Nitrogen = n ?? Fraction.None,
            Phosphate = p ?? Fraction.None,
            Potash = k ?? Fraction.None,
            SlowNitrogen = slow,
            Bags = bags,
        });
    }
}
