using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>A spreader and what it has shown so far. It belongs to the adviser and goes from lawn to lawn.</summary>
public sealed record KeptSpreader
{
    /// <summary>Lower-case letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    public SpreaderKind Kind { get; init; } = SpreaderKind.Rotary;

    public required SpreaderScale Scale { get; init; }

    /// <summary>Usual distance between passes; <see cref="FlowPriors.UsualSwath"/> where null.</summary>
    public Length? Swath { get; init; }

    /// <summary>Usual walking speed; <see cref="FlowPriors.UsualWalk"/> where null.</summary>
    public Speed? Walk { get; init; }

    /// <summary>Everything written about it, in any order.</summary>
    public IReadOnlyList<SpreaderEntry> Entries { get; init; } = [];

    /// <summary>Runs that hold, the oldest first.</summary>
    public IReadOnlyList<SpreaderEntry.Run> Runs => Holding<SpreaderEntry.Run>();

    /// <summary>Openings that hold at which the first grains fell, the oldest first.</summary>
    public IReadOnlyList<SpreaderEntry.FirstFall> FirstFalls => Holding<SpreaderEntry.FirstFall>();

    /// <summary>True where anything that holds tells of its flow: a run, or where the first grains fell.</summary>
    public bool Known => Runs.Count > 0 || FirstFalls.Count > 0;

    /// <summary>
    /// True where both are records of one spreader: same scale, and either an entry in common (its id is made once) or the same id,
    /// name and kind.
    /// </summary>
    public bool IsSame(KeptSpreader other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Scale == other.Scale && ((Id, Name, Kind) == (other.Id, other.Name, other.Kind) || Shares(other));
    }

    /// <summary>True where an entry is in both.</summary>
    public bool Shares(KeptSpreader other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Entries.Any(e => other.Entries.Any(o => o.Id == e.Id));
    }

    private IReadOnlyList<T> Holding<T>()
        where T : SpreaderEntry
    {
        var struck = Entries.OfType<SpreaderEntry.Struck>().Select(s => s.EntryId).ToHashSet();
        return [.. Entries.OfType<T>().Where(r => !struck.Contains(r.Id)).DistinctBy(r => r.Id).OrderBy(r => r.At).ThenBy(r => r.Id)];
    }

    internal double SwathM(Length? own) => (own ?? Swath ?? FlowPriors.UsualSwath(Kind)).Meters;

    internal double WalkMs(Speed? own) => (own ?? Walk ?? FlowPriors.UsualWalk).MetersPerSecond;
}
