using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Records;

/// <summary>How a recorded application stands to a rule.</summary>
public enum LawStanding
{
    /// <summary>Within the rule.</summary>
    Holds,

    /// <summary>What is written does not settle it; a person must.</summary>
    Unsettled,

    /// <summary>Against the rule.</summary>
    Breaks,
}

/// <summary>What a state's rule says of what was put on. The record itself is never altered by it.</summary>
/// <param name="Id">Stable dotted id, for example <c>record.phosphorus</c>.</param>
/// <param name="EntryId">The record; null for a year's sum.</param>
/// <param name="Standing">How it stands to the rule.</param>
/// <param name="Rule">The rule's name.</param>
/// <param name="Statement">What was put on and how that stands to the rule.</param>
/// <param name="Instead">What to do now; empty where the rule holds.</param>
/// <param name="Over">By how much it is over; null where nothing is over.</param>
/// <param name="Source">Statute or reading of it.</param>
/// <param name="Sureness">How sure the reading is.</param>
public sealed record LawFinding(string Id, Guid? EntryId, LawStanding Standing, string Rule, string Statement, string Instead, Figure? Over, string Source, Sureness Sureness);
