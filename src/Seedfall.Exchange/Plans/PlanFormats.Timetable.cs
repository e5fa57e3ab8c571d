using Seedfall.Exchange.Json;
using Seedfall.Exchange.Lawns;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Exchange.Plans;

/// <summary>Timetables and what forbids them.</summary>
internal sealed partial class PlanFormats
{
    private RecordFormat<PhaseTimetables> TimetablesFormat()
    {
        var d = new RecordFormat<DayTimetable>("dayTimetable");
        var days = d.Required("days", new WeekDaysFormat(), x => x.Days, "Days that share it; all of them where minutes count from Monday 0:00.");
        var proof = d.Required("proof", ProofFormat(), x => x.Proof, "");
        d.Made(v => new DayTimetable(v.Get(days), v.Get(proof)));

        var list = new ListFormat<DayTimetable>(d);
        var f = new RecordFormat<PhaseTimetables>("phaseTimetables");
        var phase = f.Required("phaseId", Scalars.Words, x => x.PhaseId, "");
        var daily = f.Optional("daily", list, x => x.Daily?.Days, "Watered every day; minutes count from midnight.");
        var more = f.Optional("moreDays", LimitFormat(), x => x.Daily?.MoreDays, "How many more days would have to be given the hours of a day that works.");
        var seldom = f.Optional("seldom", ProofFormat(), x => x.Seldom, "Watered on some days; minutes count from Monday 0:00.");
        return f.Made(v => new PhaseTimetables(v.Get(phase), v.Get(daily) is { } week ? new WeekTimetable(week, v.Get(more)) : null, v.Get(seldom)));
    }

    private ChoiceFormat<TimetableProof> ProofFormat() => new TimetableProofFormat(FoundFormat(), ImpossibleFormat(), OpenFormat());

    private RecordFormat<TimetableProof.Found> FoundFormat()
    {
        var r = new RecordFormat<TimetableRun>("timetableRun");
        var set = r.Required("set", Scalars.Words, x => x.Set, "");
        var tap = r.Required("tap", Scalars.Words, x => x.Tap, "");
        var round = r.Required("round", Scalars.Count, x => x.Round, "");
        var position = r.Required("position", Scalars.Count, x => x.Position, "");
        var cycle = r.Required("cycle", Scalars.Count, x => x.Cycle, "");
        var start = r.Required("start", Scalars.Count, x => x.Start, "Minute it starts.");
        var minutes = r.Required("minutes", Scalars.Count, x => x.Minutes, "");
        var program = r.Optional("program", Scalars.Count, x => x.Program, "Program of its timer; absent where a hand opens the tap.");
        var trip = r.Required("trip", Scalars.Truth, x => x.Trip, "True where hands are needed before it.");
        r.Made(v => new TimetableRun(v.Get(set), v.Get(tap), v.Get(round), v.Get(position), v.Get(cycle), v.Get(start), v.Get(minutes), v.Get(program), v.Get(trip)));

        var f = new RecordFormat<TimetableProof.Found>("timetableFound");
        var runs = f.Required("runs", new ListFormat<TimetableRun>(r), x => x.Runs, "In order of start.");
        var trips = f.Required("trips", Scalars.Count, x => x.Trips, "");
        var away = f.Required("minutesAway", Figure, x => x.MinutesAway, "");
        var bound = f.Required("bound", Figure, x => x.Bound, "");
        var solver = f.Required("bySolver", Scalars.Truth, x => x.BySolver, "");
        return f.Made(v => new TimetableProof.Found(v.Get(runs), v.Get(trips), v.Get(away), v.Get(bound), v.Get(solver)));
    }

    private RecordFormat<TimetableProof.Impossible> ImpossibleFormat()
    {
        var f = new RecordFormat<TimetableProof.Impossible>("timetableImpossible");
        var reason = f.Required("reason", Scalars.Words, x => x.Reason, "");
        var limits = f.Required("limits", new ListFormat<BindingLimit>(LimitFormat()), x => x.Limits, "");
        var unserved = f.Required("unserved", new ListFormat<UnservedSet>(UnservedFormat()), x => x.Unserved, "");
        return f.Made(v => new TimetableProof.Impossible(v.Get(reason), v.Get(limits), v.Get(unserved)));
    }

    private static RecordFormat<TimetableProof.NotProven> OpenFormat()
    {
        var f = new RecordFormat<TimetableProof.NotProven>("timetableNotProven");
        var reason = f.Required("reason", Scalars.Words, x => x.Reason, "");
        var unserved = f.Required("unserved", new ListFormat<UnservedSet>(UnservedFormat()), x => x.Unserved, "");
        return f.Made(v => new TimetableProof.NotProven(v.Get(reason), v.Get(unserved)));
    }

    private RecordFormat<BindingLimit> LimitFormat()
    {
        var f = new RecordFormat<BindingLimit>("bindingLimit");
        var limit = f.Required("limit", NamesOf<TimetableLimit>.Format, x => x.Limit, "");
        var sentence = f.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var enough = f.Required("enough", Figure, x => x.Enough, "");
        var not = f.Optional("notEnough", Figure, x => x.NotEnough, "");
        return f.Made(v => new BindingLimit(v.Get(limit), v.Get(sentence), v.Get(enough), v.Get(not)));
    }

    private static RecordFormat<UnservedSet> UnservedFormat()
    {
        var f = new RecordFormat<UnservedSet>("unservedSet");
        var set = f.Required("set", Scalars.Words, x => x.Set, "");
        var patches = f.Required("patches", new ListFormat<string>(Scalars.Id), x => x.PatchIds, "");
        return f.Made(v => new UnservedSet(v.Get(set), v.Get(patches)));
    }

    private sealed class TimetableProofFormat : ChoiceFormat<TimetableProof>
    {
        internal TimetableProofFormat(RecordFormat<TimetableProof.Found> found, RecordFormat<TimetableProof.Impossible> impossible, RecordFormat<TimetableProof.NotProven> open)
            : base("timetableProof")
        {
            Kind("found", found, p => p as TimetableProof.Found, p => p, "A timetable that keeps to everything.");
            Kind("impossible", impossible, p => p as TimetableProof.Impossible, p => p, "There is none.");
            Kind("notProven", open, p => p as TimetableProof.NotProven, p => p, "Neither found nor refuted.");
        }
    }
}
