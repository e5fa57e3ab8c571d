using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Sheets;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Coverage;

/// <summary>A head as the picture and the list name it.</summary>
public sealed record NamedHead(string Name, CoverageHead Head);

/// <summary>One view of a lawn's coverage.</summary>
/// <param name="Patches">The patches counted.</param>
/// <param name="Heads">The heads counted.</param>
/// <param name="Result">Null where no head is placed, nothing is drawn, or the map was refused.</param>
/// <param name="Refusal">Why the map cannot be made.</param>
public sealed record CoverageView(StoredLawn Stored, CoverageAsk Ask, IReadOnlyList<Patch> Patches, IReadOnlyList<NamedHead> Heads, CoverageResult? Result, string? Refusal)
{
    public string Id => Stored.Row.Id;

    public IReadOnlyList<SprinklerSet> Sets => Stored.Lawn.Water?.Sets ?? [];

    public bool IsDrawn => DrawnPatches.Of(Stored.Lawn).Count > 0;

    public SprinklerSet? Set => Ask.Set is { } number ? Sets[number - 1] : null;

    /// <summary>What runs one after another and is added up: the places of a moved sprinkler, several sets; null where all heads run together.</summary>
    public string? Added => Placed.Any(s => s.Positions > 1) ? "place" : Placed.Count > 1 ? "set" : null;

    private IReadOnlyList<SprinklerSet> Placed => Set is { } only ? [only] : [.. Sets.Where(s => s.Heads.Count > 0)];

    /// <summary>Null where the set asked for does not exist.</summary>
    public static CoverageView? Of(StoredLawn stored, CoverageAsk ask)
    {
        IReadOnlyList<SprinklerSet> sets = stored.Lawn.Water?.Sets ?? [];
        if (ask.Set > sets.Count)
        {
            return null;
        }

        var heads = Named(sets, ask.Set);
        var drawn = DrawnPatches.Of(stored.Lawn);
        if (heads.Count == 0 || drawn.Count == 0)
        {
            return new(stored, ask, [], heads, null, null);
        }

        var counted = ask.Set is { } number ? Meant(drawn, sets[number - 1]) : drawn;
        IReadOnlyList<Patch> patches = [.. counted.Select(d => d.Patch)];
        try
        {
            var ground = new CoverageGround([.. counted.Select(d => d.Outline)], Features(stored.Lawn));
            return new(stored, ask, patches, heads, CoverageMapping.Of([.. heads.Select(h => h.Head)], ground, ask.Wind), null);
        }
        catch (ArgumentException refused)
        {
            // The map's own door: a lawn larger than a map, or a patch smaller than a cell of it.
            return new(stored, ask, patches, heads, null, refused.Message.Split(" (Parameter", 2)[0]);
        }
    }

    public static IReadOnlyList<CoverageFeature> Features(Lawn lawn) => [.. lawn.Sheet?.Features.Select(f => new CoverageFeature(f.Name, f.Ring)) ?? []];

    private static IReadOnlyList<NamedHead> Named(IReadOnlyList<SprinklerSet> sets, int? only) => only is { } number
        ? [.. sets[number - 1].Heads.Select((head, h) => new NamedHead(HeadWords.Name(number, h + 1, false), head))]
        : [.. sets.SelectMany((set, s) => set.Heads.Select((head, h) => new NamedHead(HeadWords.Name(s + 1, h + 1, sets.Count > 1), head)))];

    /// <summary>The drawn patches a set is meant for, and the nearest one of any head that reaches none of these.</summary>
    private static IReadOnlyList<(Patch Patch, PatchShape.Outline Outline)> Meant(IReadOnlyList<(Patch Patch, PatchShape.Outline Outline)> drawn, SprinklerSet set)
    {
        var meant = drawn.Where(d => set.PatchIds.Contains(d.Patch.Id)).ToList();
        foreach (var head in set.Heads.Where(h => !meant.Exists(d => OutlineDistance.Of(d.Outline, h.At) <= h.Throw)))
        {
            var nearest = drawn.MinBy(d => OutlineDistance.Of(d.Outline, head.At).Meters);
            if (!meant.Contains(nearest))
            {
                meant.Add(nearest);
            }
        }

        return meant;
    }
}
