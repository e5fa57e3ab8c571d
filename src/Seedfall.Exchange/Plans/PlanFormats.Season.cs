using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Exchange.Plans;

/// <summary>Timing and water.</summary>
internal sealed partial class PlanFormats
{
    private RecordFormat<SeasonTiming> Timing { get; }

    private RecordFormat<WaterProof> Water { get; }

    private RecordFormat<SeasonTiming> TimingFormat()
    {
        var chances = new ListFormat<DateChance>(ChanceFormat());
        var window = WindowFormat();
        var f = new RecordFormat<SeasonTiming>("timing");
        var seasons = f.Required("seasons", new ListFormat<int>(Scalars.Count), x => x.Seasons, "Past seasons in the ensemble.");
        var dropped = f.Required("seasonsDropped", new ListFormat<string>(Scalars.Words), x => x.SeasonsDropped, "Seasons left out, each with the reason.");
        var open = f.Optional("window", window, x => x.Window, "Absent where no date is worth seeding.");
        var day = f.Optional("seedDown", Scalars.Date, x => x.SeedDown, "Absent where the verdict is not to seed.");
        var other = f.Optional("otherWindow", window, x => x.OtherWindow, "Dormant or spring seeding where autumn is refused.");
        var otherName = f.Optional("otherWindowName", Scalars.Words, x => x.OtherWindowName, "");
        var phases = f.Required("phases", new ListFormat<Phase>(PhaseFormat()), x => x.Phases, "");
        var figures = f.Required("figures", new ListFormat<Figure>(Figure), x => x.Figures, "");
        var advice = f.Required("advice", new ListFormat<Advice>(Advice), x => x.Advice, "");
        var method = f.Required("standMethod", NamesOf<StandMethod>.Format, x => x.StandMethod, "What the chance curve rests on.");
        var working = f.Required("standWorking", WorkingFormat(), x => x.StandWorking, "How the chance curve was computed.");
        var stand = f.Required("stand", chances, x => x.Stand, "Chance of an established stand by seed-down date.");
        var byRule = f.Required("standByRule", chances, x => x.StandByRule, "The rule-of-thumb curve beside a simulated one; else empty.");
        var cover = f.Required("coverForecast", new ListFormat<CoverFanDay>(CoverFormat()), x => x.CoverForecast, "Living cover of the lawn by day from seed-down, 0 to 1; empty where not simulated.");
        var coverByPatch = f.Required("coverByPatch", new ListFormat<PatchCover>(PatchCoverFormat()), x => x.CoverByPatch, "The same patch by patch.");
        var coverWorking = f.Optional("coverWorking", WorkingFormat(), x => x.CoverWorking, "How the cover forecast was computed.");
        var cool = f.Required("soilCool", chances, x => x.SoilCool, "Chance that the soil has cooled through 70 degF for good.");
        var frost32 = f.Required("frost32", chances, x => x.Frost32, "Chance that the first 32 degF night has come.");
        var frost28 = f.Required("frost28", chances, x => x.Frost28, "Chance that the first 28 degF night has come.");
        var fan = f.Required("soilFan", new ListFormat<SoilFanDay>(FanFormat()), x => x.SoilFan, "Soil temperature at 2 in over past seasons, degC.");
        var line = f.Required("thisYear", new ListFormat<SoilLineDay>(LineFormat()), x => x.ThisYear, "This season's soil temperature, degC.");
        var uncorrected = f.Required("thisYearUncorrected", new ListFormat<SoilLineDay>(LineFormat()), x => x.ThisYearUncorrected, "The same from weather alone, where thermometers moved it; else empty.");
        var learned = f.Optional("learned", LearningFormat(), x => x.Learned, "What the field log taught.");
        return f.Made(v => new SeasonTiming
        {
            Seasons = v.Get(seasons),
            SeasonsDropped = v.Get(dropped),
            Window = v.Get(open),
            SeedDown = v.Get(day),
            OtherWindow = v.Get(other),
            OtherWindowName = v.Get(otherName),
            Phases = v.Get(phases),
            Figures = v.Get(figures),
            Advice = v.Get(advice),
            StandMethod = v.Get(method),
            StandWorking = v.Get(working),
            Stand = v.Get(stand),
            StandByRule = v.Get(byRule),
            CoverForecast = v.Get(cover),
            CoverByPatch = v.Get(coverByPatch),
            CoverWorking = v.Get(coverWorking),
            SoilCool = v.Get(cool),
            Frost32 = v.Get(frost32),
            Frost28 = v.Get(frost28),
            SoilFan = v.Get(fan),
            ThisYear = v.Get(line),
            ThisYearUncorrected = v.Get(uncorrected),
            Learned = v.Get(learned),
        });
    }

    private static RecordFormat<DateChance> ChanceFormat()
    {
        var f = new RecordFormat<DateChance>("dateChance");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var chance = f.Required("chance", Scalars.Number, x => x.Chance, "0 to 1.");
        return f.Made(v => new DateChance(v.Get(date), v.Get(chance)));
    }

    private static RecordFormat<CoverFanDay> CoverFormat()
    {
        var f = new RecordFormat<CoverFanDay>("coverFanDay");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var p10 = f.Required("p10", Scalars.Number, x => x.P10, "0 to 1.");
        var p50 = f.Required("p50", Scalars.Number, x => x.P50, "0 to 1.");
        var p90 = f.Required("p90", Scalars.Number, x => x.P90, "0 to 1.");
        return f.Made(v => new CoverFanDay(v.Get(date), v.Get(p10), v.Get(p50), v.Get(p90)));
    }

    private static RecordFormat<SeedWindow> WindowFormat()
    {
        var f = new RecordFormat<SeedWindow>("seedWindow");
        var opens = f.Required("opens", Scalars.Date, x => x.Opens, "");
        var best = f.Required("best", Scalars.Date, x => x.Best, "");
        var closes = f.Required("closes", Scalars.Date, x => x.Closes, "");
        var chance = f.Optional("chanceAtBest", Scalars.Number, x => x.ChanceAtBest, "0 to 1.");
        return f.Made(v => new SeedWindow(v.Get(opens), v.Get(best), v.Get(closes), v.Get(chance)));
    }

    private static RecordFormat<Phase> PhaseFormat()
    {
        var f = new RecordFormat<Phase>("phase");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var name = f.Required("name", Scalars.Words, x => x.Name, "");
        var from = f.Required("from", Scalars.Date, x => x.From, "");
        var to = f.Required("to", Scalars.Date, x => x.To, "");
        return f.Made(v => new Phase(v.Get(id), v.Get(name), v.Get(from), v.Get(to)));
    }

    private static RecordFormat<SoilFanDay> FanFormat()
    {
        var f = new RecordFormat<SoilFanDay>("soilFanDay");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var p10 = f.Required("p10C", Scalars.Number, x => x.P10C, "");
        var p25 = f.Required("p25C", Scalars.Number, x => x.P25C, "");
        var p50 = f.Required("p50C", Scalars.Number, x => x.P50C, "");
        var p75 = f.Required("p75C", Scalars.Number, x => x.P75C, "");
        var p90 = f.Required("p90C", Scalars.Number, x => x.P90C, "");
        return f.Made(v => new SoilFanDay(v.Get(date), v.Get(p10), v.Get(p25), v.Get(p50), v.Get(p75), v.Get(p90)));
    }

    private static RecordFormat<SoilLineDay> LineFormat()
    {
        var f = new RecordFormat<SoilLineDay>("soilLineDay");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var soil = f.Required("soilC", Scalars.Number, x => x.SoilC, "");
        var observed = f.Required("observed", Scalars.Truth, x => x.Observed, "");
        return f.Made(v => new SoilLineDay(v.Get(date), v.Get(soil), v.Get(observed)));
    }

    private RecordFormat<WaterProof> WaterFormat()
    {
        var r = new RecordFormat<Remedy>("remedy");
        var remedyId = r.Required("id", Scalars.Words, x => x.Id, "");
        var remedy = r.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var effect = r.Optional("effect", Figure, x => x.Effect, "");
        r.Made(v => new Remedy(v.Get(remedyId), v.Get(remedy), v.Get(effect)));

        var figures = new ListFormat<Figure>(Figure);
        var f = new RecordFormat<WaterProof>("waterProof");
        var result = f.Required("result", NamesOf<ProofResult>.Format, x => x.Result, "");
        var sentence = f.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var shown = f.Required("figures", figures, x => x.Figures, "");
        var phases = f.Required("phases", new ListFormat<PhaseWatering>(PhaseWateringFormat()), x => x.Phases, "");
        var shortfall = f.Optional("shortfall", Figure, x => x.Shortfall, "");
        var remedies = f.Required("remedies", new ListFormat<Remedy>(r), x => x.Remedies, "");
        var volume = f.Optional("seasonVolume", Figure, x => x.SeasonVolume, "");
        var cost = f.Optional("seasonCost", Figure, x => x.SeasonCost, "");
        var advice = f.Required("advice", new ListFormat<Advice>(Advice), x => x.Advice, "");
        var limits = f.Required("limits", new ListFormat<BindingLimit>(LimitFormat()), x => x.Limits, "What binds in the worst phase: each limit that, loosened alone, would be enough.");
        var unserved = f.Required("unserved", new ListFormat<UnservedSet>(UnservedFormat()), x => x.Unserved, "Sets left out of the best timetable of the worst phase.");
        return f.Made(v => new WaterProof(
            v.Get(result), v.Get(sentence), v.Get(shown), v.Get(phases), v.Get(shortfall), v.Get(remedies), v.Get(volume), v.Get(cost))
        {
            Advice = v.Get(advice),
            Limits = v.Get(limits),
            Unserved = v.Get(unserved),
        });
    }

    private RecordFormat<PhaseWatering> PhaseWateringFormat()
    {
        var s = new RecordFormat<SetRun>("setRun");
        var set = s.Required("set", Scalars.Words, x => x.SetName, "");
        var minutes = s.Required("minutesPerRound", Figure, x => x.MinutesPerRound, "");
        var depth = s.Required("depth", Figure, x => x.Depth, "");
        var cycles = s.Required("cycles", Scalars.Count, x => x.Cycles, "");
        var soak = s.Optional("soakMinutes", Figure, x => x.SoakMinutes, "");
        s.Made(v => new SetRun(v.Get(set), v.Get(minutes), v.Get(depth), v.Get(cycles), v.Get(soak)));

        var f = new RecordFormat<PhaseWatering>("phaseWatering");
        var phase = f.Required("phaseId", Scalars.Words, x => x.PhaseId, "");
        var sentence = f.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var rounds = f.Required("roundsPerDay", Scalars.Number, x => x.RoundsPerDay, "Below 1 means every few days.");
        var starts = f.Required("starts", new ListFormat<TimeOnly>(Scalars.Time), x => x.Starts, "");
        var runs = f.Required("runs", new ListFormat<SetRun>(s), x => x.Runs, "");
        var totals = f.Required("totals", new ListFormat<Figure>(Figure), x => x.Totals, "");
        var timetables = f.Required("timetables", TimetablesFormat(), x => x.Timetables, "Run by run.");
        return f.Made(v => new PhaseWatering(v.Get(phase), v.Get(sentence), v.Get(rounds), v.Get(starts), v.Get(runs), v.Get(totals)) { Timetables = v.Get(timetables) });
    }
}
