using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>Something learned about a spreader. Never changed once written; a mistake is struck by a later entry. Closed: only the kinds below exist.</summary>
public abstract record SpreaderEntry
{
    private SpreaderEntry()
    {
    }

    /// <summary>Made where the entry was written, so that sending it twice adds nothing.</summary>
    public required Guid Id { get; init; }

    /// <summary>When, with the offset of the place's own clock.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The day by that clock.</summary>
    public DateOnly Day => DateOnly.FromDateTime(At.DateTime);

    /// <summary>A run whose opening, ground and amount are known.</summary>
    public sealed record Run : SpreaderEntry
    {
        public required SpreadMaterial Material { get; init; }

        /// <summary>What it was, as the adviser calls it: a lot number, a grade.</summary>
        public required string What { get; init; }

        /// <summary>Opening, on the spreader's scale.</summary>
        public required double Opening { get; init; }

        /// <summary>Ground the run covered; above 0.</summary>
        public required Area Covered { get; init; }

        /// <summary>What was put in less what was left; 0 where nothing fell.</summary>
        public required Mass Used { get; init; }

        /// <summary>Distance between passes; the spreader's usual one where null.</summary>
        public Length? Swath { get; init; }

        /// <summary>Walking speed; the spreader's usual one where null.</summary>
        public Speed? Walk { get; init; }

        /// <summary>How finely the amounts were weighed; <see cref="FlowPriors.UsualWeighing"/> where null.</summary>
        public Mass? WeighedTo { get; init; }

        /// <summary>The lawn it was on; null for a test elsewhere.</summary>
        public string? LawnId { get; init; }

        /// <summary>The job it belongs to on that lawn, such as <c>seed</c>; null for a test.</summary>
        public string? JobId { get; init; }

        /// <summary>Rate put on.</summary>
        public MassPerArea Rate => MassPerArea.FromKilogramsPerSquareMeter(Used.Kilograms / Covered.SquareMeters);

        /// <summary>Runs of one day with the same stuff share what the lot, the damp and the walk of that day do.</summary>
        internal (DateOnly, string) Lot => (Day, What.ToUpperInvariant());
    }

    /// <summary>With the wheel turning and the gate opened slowly, the first grains fell at this opening.</summary>
    /// <param name="Opening">On the spreader's scale.</param>
    /// <param name="Material">What was in it: large grains bridge a wider slit.</param>
    public sealed record FirstFall(double Opening, SpreadMaterial Material) : SpreaderEntry;

    /// <summary>An earlier entry does not hold.</summary>
    public sealed record Struck(Guid EntryId, string Why) : SpreaderEntry;
}
