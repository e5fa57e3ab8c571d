using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;

namespace Seedfall.Exchange.Plans;

/// <summary>
/// How every part of a plan stands in plan.json. Built once for each currency, because money is shown with it.
/// The parts by subject are in the other files of this class.
/// </summary>
internal sealed partial class PlanFormats
{
    public const string Version = "seedfall-plan/1";

    public PlanFormats(string currency)
    {
        Figure = FigureFormat(currency);
        Advice = AdviceFormat();
        Timing = TimingFormat();
        Verdict = VerdictFormat();
        Water = WaterFormat();
        var purchase = PurchaseFormat();
        (Seed, Feed, Spray, Cover) = (SeedFormat(purchase), FeedFormat(purchase), SprayFormat(), CoverFormat(purchase));
        Plan = PlanFormat();
    }

    public RecordFormat<RecoveryPlan> Plan { get; }

    private RecordFormat<Figure> Figure { get; }

    private RecordFormat<Advice> Advice { get; }

    private static RecordFormat<Figure> FigureFormat(string currency)
    {
        var f = new RecordFormat<Figure>("figure");
        var id = f.Required("id", Scalars.Words, x => x.Id, "Stable name, unique within the plan.");
        var label = f.Required("label", Scalars.Words, x => x.Label, "What the number is.");
        var kind = f.Required("kind", NamesOf<QuantityKind>.Format, x => x.Kind, "What it measures.");
        var value = f.Required("value", Scalars.Number, x => x.Value, "Value in the canonical unit of its kind.");
        f.Derived("unit", Scalars.AnyText, x => CanonicalUnit.Of(x.Kind, currency), "The canonical unit.");
        f.Derived("us", Scalars.AnyText, x => FigureText.Show(x, UnitSystem.UsCustomary, currency).ToString(), "As shown in US customary units.");
        f.Derived("metric", Scalars.AnyText, x => FigureText.Show(x, UnitSystem.Metric, currency).ToString(), "As shown in metric units.");
        var working = f.Required("working", WorkingFormat(), x => x.Working, "The working behind it.");
        return f.Made(v => new Figure(v.Get(id), v.Get(label), v.Get(kind), v.Get(value), v.Get(working)));
    }

    private static RecordFormat<Working> WorkingFormat()
    {
        var i = new RecordFormat<WorkingInput>("workingInput");
        var symbol = i.Required("symbol", Scalars.AnyText, x => x.Symbol, "");
        var meaning = i.Required("meaning", Scalars.AnyText, x => x.Meaning, "");
        var value = i.Required("value", Scalars.Number, x => x.Value, "");
        var unit = i.Required("unit", Scalars.AnyText, x => x.Unit, "");
        i.Made(v => new WorkingInput(v.Get(symbol), v.Get(meaning), v.Get(value), v.Get(unit)));

        var w = new RecordFormat<Working>("working");
        var formula = w.Required("formula", Scalars.AnyText, x => x.Formula, "The formula in symbols.");
        var inputs = w.Required("inputs", new ListFormat<WorkingInput>(i), x => x.Inputs, "Its inputs, in the order they appear.");
        var source = w.Required("source", Scalars.Words, x => x.Source, "Where formula and constants come from.");
        var sureness = w.Required("sureness", NamesOf<Sureness>.Format, x => x.Sureness, "How sure the figure is.");
        var note = w.Optional("note", Scalars.AnyText, x => x.Note, "A caveat.");
        return w.Made(v => new Working(v.Get(formula), v.Get(inputs), v.Get(source), v.Get(sureness), v.Get(note)));
    }

    private static RecordFormat<Advice> AdviceFormat()
    {
        var f = new RecordFormat<Advice>("advice");
        var id = f.Required("id", Scalars.Words, x => x.Id, "");
        var statement = f.Required("statement", Scalars.Words, x => x.Statement, "");
        var source = f.Required("source", Scalars.Words, x => x.Source, "");
        var sureness = f.Required("sureness", NamesOf<Sureness>.Format, x => x.Sureness, "");
        return f.Made(v => new Advice(v.Get(id), v.Get(statement), v.Get(source), v.Get(sureness)));
    }

    private RecordFormat<RecoveryPlan> PlanFormat()
    {
        var f = new RecordFormat<RecoveryPlan>("plan");
        f.Required("format", Scalars.Constant(Version), _ => Version, "Version of this format.");
        var lawnId = f.Required("lawnId", Scalars.Id, x => x.LawnId, "");
        var lawnName = f.Required("lawnName", Scalars.Words, x => x.LawnName, "");
        var season = f.Required("season", Scalars.Count, x => x.Season, "Calendar year of the autumn.");
        var place = f.Required("place", PlaceFormat(), x => x.Place, "");
        var zone = f.Required("timeZone", Scalars.Words, x => x.TimeZone, "IANA zone of all times.");
        var currency = f.Required("currency", Scalars.Words, x => x.Currency, "ISO 4217 code of all money.");
        var rules = f.Required("rulePack", Scalars.Words, x => x.RulePackName, "Rules of state or province kept to.");
        var verdict = f.Required("verdict", Verdict, x => x.Verdict, "Recover, start over, wait or cure first.");
        var next = f.Required("next", NextFormat(), x => x.Next, "What to do next.");
        var area = f.Required("totalArea", Figure, x => x.TotalArea, "");
        var patches = f.Required("patches", new ListFormat<PatchSummary>(PatchFormat()), x => x.Patches, "");
        var timing = f.Required("timing", Timing, x => x.Timing, "The season as chances over past seasons.");
        var water = f.Required("water", Water, x => x.Water, "The statement that the water can, or cannot, be put on.");
        var seed = f.Optional("seed", Seed, x => x.Seed, "Absent where a wall stopped it or nothing is seeded.");
        var feed = f.Optional("feed", Feed, x => x.Feed, "Absent where a wall stopped it.");
        var spray = f.Optional("spray", Spray, x => x.Spray, "Absent where nothing is sprayed or a wall stopped it.");
        var cover = f.Optional("cover", Cover, x => x.Cover, "Absent where nothing is covered.");
        var materials = f.Required("materials", new ListFormat<Planning.Materials.MaterialLine>(MaterialFormat()), x => x.Materials, "The shopping list.");
        var cost = f.Optional("totalCost", Figure, x => x.TotalCost, "Sum of the known costs.");
        var tasks = f.Required("tasks", new ListFormat<PlanTask>(TaskFormat()), x => x.Tasks, "Dated work, in order.");
        var walls = f.Required("walls", new ListFormat<Wall>(WallFormat()), x => x.Walls, "Rules of label or law that stop part of the plan.");
        var against = f.Optional("againstLaw", new ListFormat<LawFinding>(LawFormat()), x => x.AgainstLaw.Count == 0 ? null : x.AgainstLaw, "Recorded applications that a nitrogen or phosphorus rule is against, or that what is written leaves open; absent for none.");
        var assumptions = f.Required("assumptions", new ListFormat<Assumption>(AssumptionFormat()), x => x.Assumptions, "What was not entered and taken instead.");
        var cautions = f.Required("cautions", new ListFormat<Caution>(CautionFormat()), x => x.Cautions, "");
        var sources = f.Required("sources", new ListFormat<string>(Scalars.AnyText), x => x.Sources, "Weather files and tables the plan rests on.");
        return f.Made(v => new RecoveryPlan
        {
            LawnId = v.Get(lawnId),
            LawnName = v.Get(lawnName),
            Season = v.Get(season),
            Place = v.Get(place),
            TimeZone = v.Get(zone),
            Currency = v.Get(currency),
            RulePackName = v.Get(rules),
            Verdict = v.Get(verdict),
            Next = v.Get(next),
            TotalArea = v.Get(area),
            Patches = v.Get(patches),
            Timing = v.Get(timing),
            Water = v.Get(water),
            Seed = v.Get(seed),
            Feed = v.Get(feed),
            Spray = v.Get(spray),
            Cover = v.Get(cover),
            Materials = v.Get(materials),
            TotalCost = v.Get(cost),
            Tasks = v.Get(tasks),
            Walls = v.Get(walls),
            AgainstLaw = v.Get(against) ?? [],
            Assumptions = v.Get(assumptions),
            Cautions = v.Get(cautions),
            Sources = v.Get(sources),
        });
    }

    private static RecordFormat<Place> PlaceFormat()
    {
        var f = new RecordFormat<Place>("place");
        var latitude = f.Required("latitude", Scalars.Number, x => x.LatitudeDeg, "Degrees north.");
        var longitude = f.Required("longitude", Scalars.Number, x => x.LongitudeDeg, "Degrees east.");
        var elevation = f.Required("elevationM", Scalars.Number, x => x.ElevationM, "Meters above sea level.");
        return f.Made(v => new Place(v.Get(latitude), v.Get(longitude), v.Get(elevation)));
    }

    private static RecordFormat<NextAction> NextFormat()
    {
        var f = new RecordFormat<NextAction>("next");
        var sentence = f.Required("sentence", Scalars.Words, x => x.Sentence, "");
        var date = f.Optional("date", Scalars.Date, x => x.Date, "");
        var task = f.Optional("taskId", Scalars.Words, x => x.TaskId, "");
        return f.Made(v => new NextAction(v.Get(sentence), v.Get(date), v.Get(task)));
    }

    private RecordFormat<PatchSummary> PatchFormat()
    {
        var f = new RecordFormat<PatchSummary>("patch");
        var id = f.Required("id", Scalars.Id, x => x.Id, "");
        var name = f.Required("name", Scalars.Words, x => x.Name, "");
        var area = f.Required("area", Figure, x => x.Area, "Ground area, slope-corrected.");
        var cover = f.Required("livingCover", Figure, x => x.LivingCover, "");
        var low = f.Required("areaLow", Figure, x => x.AreaLow, "Lower end of the range the area lies in nine times in ten.");
        var high = f.Required("areaHigh", Figure, x => x.AreaHigh, "Upper end of that range.");
        var edge = f.Optional("edge", Figure, x => x.Edge, "Outer edge; absent where the measures taken do not fix it.");
        var beds = f.Optional("bedEdge", Figure, x => x.BedEdge, "Edge round beds; absent without any.");
        return f.Made(v => new PatchSummary(v.Get(id), v.Get(name), v.Get(area), v.Get(cover))
        {
            AreaLow = v.Get(low),
            AreaHigh = v.Get(high),
            Edge = v.Get(edge),
            BedEdge = v.Get(beds),
        });
    }
}
