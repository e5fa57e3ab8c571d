using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Plans;

/// <summary>Verdict, tasks, walls, assumptions and cautions.</summary>
internal sealed partial class PlanFormats
{
    private RecordFormat<Verdict> Verdict { get; }

    private RecordFormat<Verdict> VerdictFormat()
    {
        var r = new RecordFormat<Reason>("reason");
        var id = r.Required("id", Scalars.Words, x => x.Id, "");
        var sentence = r.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var figure = r.Optional("figure", Figure, x => x.Figure, "The number behind it.");
        r.Made(v => new Reason(v.Get(id), v.Get(sentence), v.Get(figure)));

        var p = new RecordFormat<PatchVerdict>("patchVerdict");
        var patch = p.Required("patchId", Scalars.Id, x => x.PatchId, "");
        var patchKind = p.Required("kind", NamesOf<VerdictKind>.Format, x => x.Kind, "");
        var patchReasons = p.Required("reasons", new ListFormat<Reason>(r), x => x.Reasons, "");
        p.Made(v => new PatchVerdict(v.Get(patch), v.Get(patchKind), v.Get(patchReasons)));

        var f = new RecordFormat<Verdict>("verdict");
        var kind = f.Required("kind", NamesOf<VerdictKind>.Format, x => x.Kind, "");
        var words = f.Required("sentence", Scalars.Words, x => x.Sentence, "The verdict for the owner.");
        var reasons = f.Required("reasons", new ListFormat<Reason>(r), x => x.Reasons, "The deciding reason first.");
        var patches = f.Required("patches", new ListFormat<PatchVerdict>(p), x => x.Patches, "Verdict by patch.");
        var until = f.Optional("waitUntil", Scalars.Date, x => x.WaitUntil, "");
        var what = f.Optional("waitFor", Scalars.Words, x => x.WaitFor, "");
        return f.Made(v => new Verdict(v.Get(kind), v.Get(words), v.Get(reasons), v.Get(patches), v.Get(until), v.Get(what)));
    }

    private RecordFormat<PlanTask> TaskFormat()
    {
        var texts = new ListFormat<string>(Scalars.Words);
        var f = new RecordFormat<PlanTask>("task");
        var id = f.Required("id", Scalars.Words, x => x.Id, "Stable within lawn and season.");
        var kind = f.Required("kind", NamesOf<TaskKind>.Format, x => x.Kind, "");
        var title = f.Required("title", Scalars.Words, x => x.Title, "");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var last = f.Required("lastDate", Scalars.Date, x => x.LastDate, "");
        var start = f.Optional("start", Scalars.Time, x => x.Start, "Local time; any time of the day where absent.");
        var minutes = f.Optional("minutes", Scalars.Count, x => x.Minutes, "Expected working time.");
        var steps = f.Required("steps", texts, x => x.Steps, "");
        var conditions = f.Required("conditions", texts, x => x.Conditions, "What must be true before it is done.");
        var cautions = f.Required("cautionIds", texts, x => x.CautionIds, "");
        var figures = f.Required("figures", new ListFormat<Figure>(Figure), x => x.Figures, "");
        var done = f.Optional("done", DoneFormat(), x => x.Done, "Where the field log shows it done.");
        return f.Made(v => new PlanTask
        {
            Id = v.Get(id),
            Kind = v.Get(kind),
            Title = v.Get(title),
            Date = v.Get(date),
            LastDate = v.Get(last),
            Start = v.Get(start),
            Minutes = v.Get(minutes),
            Steps = v.Get(steps),
            Conditions = v.Get(conditions),
            CautionIds = v.Get(cautions),
            Figures = v.Get(figures),
            Done = v.Get(done),
        });
    }

    private static RecordFormat<TaskDone> DoneFormat()
    {
        var f = new RecordFormat<TaskDone>("taskDone");
        var entry = f.Required("entry", Scalars.Guid, x => x.EntryId, "The log entry that shows it, the last of several.");
        var day = f.Required("day", Scalars.Date, x => x.Day, "By the lawn's own clock.");
        var note = f.Optional("note", Scalars.Words, x => x.Note, "");
        return f.Made(v => new TaskDone(v.Get(entry), v.Get(day), v.Get(note)));
    }

    private static RecordFormat<Wall> WallFormat()
    {
        var f = new RecordFormat<Wall>("wall");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var rule = f.Required("rule", Scalars.Words, x => x.Rule, "The rule's name.");
        var statement = f.Required("statement", Scalars.Words, x => x.Statement, "What is refused.");
        var instead = f.Required("instead", Scalars.Words, x => x.Instead, "What to do instead.");
        var source = f.Required("source", Scalars.Words, x => x.Source, "");
        return f.Made(v => new Wall(v.Get(id), v.Get(rule), v.Get(statement), v.Get(instead), v.Get(source)));
    }

    private static RecordFormat<Assumption> AssumptionFormat()
    {
        var f = new RecordFormat<Assumption>("assumption");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var statement = f.Required("statement", Scalars.Words, x => x.Statement, "");
        var effect = f.Required("effect", Scalars.Words, x => x.Effect, "");
        var replace = f.Required("replace", Scalars.Words, x => x.Replace, "");
        return f.Made(v => new Assumption(v.Get(id), v.Get(statement), v.Get(effect), v.Get(replace)));
    }

    private static RecordFormat<Caution> CautionFormat()
    {
        var f = new RecordFormat<Caution>("caution");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var title = f.Required("title", Scalars.Words, x => x.Title, "");
        var sentences = f.Required("sentences", new ListFormat<string>(Scalars.Words), x => x.Sentences, "");
        return f.Made(v => new Caution(v.Get(id), v.Get(title), v.Get(sentences)));
    }
}
