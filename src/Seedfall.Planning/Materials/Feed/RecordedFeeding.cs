using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>One feeding as it was planned and as it went on.</summary>
/// <param name="Id">Id of the feeding; <c>besides</c> for what stands in place of none.</param>
/// <param name="Title">What it is.</param>
/// <param name="EntryIds">Records that stand in its place, in order of time; empty for one still to come.</param>
/// <param name="Planned">Nitrogen as planned without the season's record; null where none was planned.</param>
/// <param name="Applied">Nitrogen that went on, the most on any one piece of ground; null for none, or where no analysis is written.</param>
/// <param name="Left">Nitrogen still planned; null where it is done or left out.</param>
/// <param name="Sentence">The same in words.</param>
public sealed record RecordedStep(string Id, string Title, IReadOnlyList<Guid> EntryIds, Figure? Planned, Figure? Applied, Figure? Left, string Sentence);

/// <summary>What the record of applications makes of the season's feedings. The figures it corrects stand beside.</summary>
/// <param name="Steps">In the order of the season.</param>
/// <param name="PlannedThisSeason">Nitrogen of the season as planned without its record.</param>
/// <param name="ThisYear">Nitrogen of the calendar year on the ground that gets most: recorded, and still planned.</param>
public sealed record RecordedFeeding(IReadOnlyList<RecordedStep> Steps, Figure PlannedThisSeason, Figure ThisYear);
