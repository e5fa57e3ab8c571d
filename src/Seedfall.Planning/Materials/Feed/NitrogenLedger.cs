namespace Seedfall.Planning.Materials;

/// <summary>Nitrogen that goes on some ground once.</summary>
/// <param name="Id">Id of the feeding it belongs to.</param>
/// <param name="Name">In words.</param>
/// <param name="Grounds">Patches it goes on; null for all ground.</param>
/// <param name="PoundsPerM">lb per 1,000 sq ft.</param>
internal sealed record NitrogenLine(string Id, string Name, IReadOnlyList<string>? Grounds, double PoundsPerM)
{
    /// <summary>True for what went on, false for what is planned.</summary>
    internal bool IsRecorded { get; init; }

    internal bool IsOn(string ground) => Grounds is null || Grounds.Contains(ground);
}

/// <summary>Nitrogen by piece of ground: what a yearly maximum is held against is the most that comes together on any one.</summary>
/// <param name="grounds">Every piece of ground; at least one.</param>
internal sealed class NitrogenLedger(IReadOnlyList<string> grounds)
{
    private readonly List<NitrogenLine> _lines = [];

    internal IReadOnlyList<NitrogenLine> Lines => _lines;

    /// <summary>The ground that gets most; the first of several.</summary>
    internal string Heaviest => grounds.MaxBy(On)!;

    internal void Add(NitrogenLine line) => _lines.Add(line);

    /// <summary>Some of the lines over the same ground.</summary>
    internal NitrogenLedger Only(Func<NitrogenLine, bool> kept)
    {
        var some = new NitrogenLedger(grounds);
        some._lines.AddRange(_lines.Where(kept));
        return some;
    }

    /// <summary>What comes together on one piece of ground, lb per 1,000 sq ft.</summary>
    internal double On(string ground) => _lines.Where(line => line.IsOn(ground)).Sum(line => line.PoundsPerM);

    /// <summary>The most on any of some pieces of ground, lb per 1,000 sq ft.</summary>
    /// <param name="some">Which; null for all.</param>
    internal double Most(IReadOnlyList<string>? some) => (some ?? grounds).Max(On);
}
