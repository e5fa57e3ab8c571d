using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Records;

namespace Seedfall.Exchange.Plans;

internal sealed partial class PlanFormats
{
    private RecordFormat<RecordedFeeding> RecordedFormat()
    {
        var s = new RecordFormat<RecordedStep>("recordedStep");
        var id = s.Required("id", Scalars.Words, x => x.Id, "Id of the feeding; besides for what stands in place of none.");
        var title = s.Required("title", Scalars.Words, x => x.Title, "");
        var entries = s.Required("entryIds", new ListFormat<Guid>(Scalars.Guid), x => x.EntryIds, "Records that stand in its place.");
        var was = s.Optional("planned", Figure, x => x.Planned, "Nitrogen as planned without the season's record.");
        var applied = s.Optional("applied", Figure, x => x.Applied, "Nitrogen that went on, the most on any one piece of ground.");
        var left = s.Optional("left", Figure, x => x.Left, "Nitrogen still planned.");
        var sentence = s.Required("sentence", Scalars.Words, x => x.Sentence, "");
        s.Made(v => new RecordedStep(v.Get(id), v.Get(title), v.Get(entries), v.Get(was), v.Get(applied), v.Get(left), v.Get(sentence)));

        var f = new RecordFormat<RecordedFeeding>("recordedFeeding");
        var steps = f.Required("steps", new ListFormat<RecordedStep>(s), x => x.Steps, "");
        var planned = f.Required("plannedThisSeason", Figure, x => x.PlannedThisSeason, "Nitrogen of the season as planned without its record.");
        var year = f.Required("thisYear", Figure, x => x.ThisYear, "Nitrogen of the calendar year on the ground that gets most: recorded, and still planned.");
        return f.Made(v => new RecordedFeeding(v.Get(steps), v.Get(planned), v.Get(year)));
    }

    private RecordFormat<LawFinding> LawFormat()
    {
        var f = new RecordFormat<LawFinding>("lawFinding");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var entry = f.Optional("entry", Scalars.Guid, x => x.EntryId, "The record; absent for a year's sum.");
        var standing = f.Required("standing", NamesOf<LawStanding>.Format, x => x.Standing, "How it stands to the rule.");
        var rule = f.Required("rule", Scalars.Words, x => x.Rule, "");
        var statement = f.Required("statement", Scalars.Words, x => x.Statement, "What was put on and how that stands to the rule.");
        var instead = f.Required("instead", Scalars.AnyText, x => x.Instead, "What to do now; empty where the rule holds.");
        var over = f.Optional("over", Figure, x => x.Over, "By how much it is over.");
        var source = f.Required("source", Scalars.Words, x => x.Source, "");
        var sureness = f.Required("sureness", NamesOf<Sureness>.Format, x => x.Sureness, "");
        return f.Made(v => new LawFinding(v.Get(id), v.Get(entry), v.Get(standing), v.Get(rule), v.Get(statement), v.Get(instead), v.Get(over), v.Get(source), v.Get(sureness)));
    }
}
