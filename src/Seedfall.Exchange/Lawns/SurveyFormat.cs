using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Judgment.Survey;

namespace Seedfall.Exchange.Lawns;

/// <summary>What the walk-over of a patch found; everything may be missing.</summary>
internal sealed class SurveyFormat : ObjectFormat<PatchSurvey>
{
    // Before One, which is made of them.
    private static readonly RecordFormat<Quadrat> QuadratFormat = Quadrats();
    private static readonly RecordFormat<TugTest> TugFormat = Tugs();
    private static readonly RecordFormat<GrubLifts> LiftFormat = Lifts();
    private static readonly RecordFormat<WeedSeen> WeedFormat = Weeds();

    public static readonly SurveyFormat One = new();

    private readonly Field<PatchSurvey, DateOnly?> _walked;
    private readonly Field<PatchSurvey, Onset?> _began;
    private readonly Field<PatchSurvey, IReadOnlyList<WeatherBefore>> _weather;
    private readonly Field<PatchSurvey, IReadOnlyList<PutOn>> _putOn;
    private readonly Field<PatchSurvey, Depth?> _mown, _moistureDepth;
    private readonly Field<PatchSurvey, double?> _sun;
    private readonly Field<PatchSurvey, IReadOnlyList<Sign>> _signs;
    private readonly Field<PatchSurvey, bool> _afar, _close, _lookedForWeeds;
    private readonly Field<PatchSurvey, IReadOnlyList<Quadrat>> _quadrats;
    private readonly Field<PatchSurvey, TugTest> _tugs;
    private readonly Field<PatchSurvey, GrubLifts> _lifts;
    private readonly Field<PatchSurvey, IReadOnlyList<Depth>> _pushes, _thatch;
    private readonly Field<PatchSurvey, SoilFeel?> _moisture;
    private readonly Field<PatchSurvey, bool?> _drop;
    private readonly Field<PatchSurvey, IReadOnlyList<WeedSeen>> _weeds;
    private readonly Field<PatchSurvey, string> _notes;

    private SurveyFormat()
        : base("survey")
    {
        _walked = Optional("walked", Scalars.Date, s => s.Walked, "The day it was walked.");
        _began = Optional("began", NamesOf<Onset>.Format, s => s.Began, "How the damage began.");
        _weather = List("weatherBefore", NamesOf<WeatherBefore>.Format, s => s.WeatherBefore, "Weather of the weeks before it showed.");
        _putOn = List("putOn", NamesOf<PutOn>.Format, s => s.PutOn, "What was put on before it showed.");
        _mown = Optional("mown", Quantities.Depth.Format, s => s.Mown, "Height of cut.");
        _sun = Optional("sun", Quantities.SunHours.Format, s => s.SunHours, "Direct sun on a clear day in early autumn.");
        _signs = List("signs", NamesOf<Sign>.Format, s => s.Signs, "Signs seen.");
        _afar = Usual("lookedFromAfar", Scalars.Truth, s => s.LookedFromAfar, false, "True when it was looked over from afar, whether or not a sign was seen.");
        _close = Usual("lookedUpClose", Scalars.Truth, s => s.LookedUpClose, false, "True when blades, crowns and soil were looked at, whether or not a sign was seen.");
        _quadrats = List("quadrats", QuadratFormat, s => s.Quadrats, "Throws of the point grid, or straight-down photographs in their place.");
        _tugs = Optional("tugs", TugFormat, s => s.Tugs, "Brown tufts tugged, by what they did.");
        _lifts = Optional("lifts", LiftFormat, s => s.Lifts, "Turf lifted and white grubs counted.");
        _pushes = List("pushes", Quantities.Depth.Format, s => s.Pushes, "How deep a screwdriver went, spot by spot.");
        _thatch = List("thatch", Quantities.Depth.Format, s => s.Thatch, "Thickness of the thatch, core by core.");
        _moisture = Optional("moisture", NamesOf<SoilFeel>.Format, s => s.Moisture, "Soil moisture by feel.");
        _moistureDepth = Optional("moistureDepth", Quantities.Depth.Format, s => s.MoistureDepth, "Depth at which the soil was felt.");
        _drop = Optional("dropStood", Scalars.Truth, s => s.DropStood, "True when a drop of water stood on a dry core for more than 5 seconds.");
        _weeds = List("weeds", WeedFormat, s => s.Weeds, "Weeds by kind.");
        _lookedForWeeds = Usual("lookedForWeeds", Scalars.Truth, s => s.LookedForWeeds, false, "True when weeds were looked for, whether or not any were found.");
        _notes = Optional("notes", Scalars.Words, s => s.Notes, "Anything else.");
    }

    protected override PatchSurvey Build(FieldValues v) => new()
    {
        Walked = v.Get(_walked),
        Began = v.Get(_began),
        WeatherBefore = v.Get(_weather),
        PutOn = v.Get(_putOn),
        Mown = v.Get(_mown),
        SunHours = v.Get(_sun),
        Signs = v.Get(_signs),
        LookedFromAfar = v.Get(_afar),
        LookedUpClose = v.Get(_close),
        Quadrats = v.Get(_quadrats),
        Tugs = v.Get(_tugs),
        Lifts = v.Get(_lifts),
        Pushes = v.Get(_pushes),
        Thatch = v.Get(_thatch),
        Moisture = v.Get(_moisture),
        MoistureDepth = v.Get(_moistureDepth),
        DropStood = v.Get(_drop),
        Weeds = v.Get(_weeds),
        LookedForWeeds = v.Get(_lookedForWeeds),
        Notes = v.Get(_notes),
    };

    private static RecordFormat<Quadrat> Quadrats()
    {
        var f = new RecordFormat<Quadrat>("quadrat");
        var points = f.Optional("points", Scalars.Count, q => q.Points, "Points of the grid looked at.");
        var living = f.Optional("living", Scalars.Count, q => q.Living, "Points that hit living turf.");
        var weeds = f.Optional("weeds", Scalars.Count, q => q.Weeds, "Points that hit weeds.");
        var photo = f.Optional("photo", Quantities.Share.Format, q => q.Photo, "Living cover measured on a photograph, in place of points.");
        return f.Made(v => new(v.Get(points), v.Get(living), v.Get(weeds), v.Get(photo)));
    }

    private static RecordFormat<TugTest> Tugs()
    {
        var f = new RecordFormat<TugTest>("tugs");
        var held = f.Usual("held", Scalars.Count, t => t.Held, 0, "Held fast; crowns firm and white.");
        var lifted = f.Usual("lifted", Scalars.Count, t => t.Lifted, 0, "Came up like a carpet, roots gone.");
        var pulled = f.Usual("pulledOut", Scalars.Count, t => t.PulledOut, 0, "Pulled out at the crown.");
        return f.Made(v => new(v.Get(held), v.Get(lifted), v.Get(pulled)));
    }

    private static RecordFormat<GrubLifts> Lifts()
    {
        var f = new RecordFormat<GrubLifts>("lifts");
        var counts = f.Required("counts", new ListFormat<int>(Scalars.Count, 1), l => l.Counts, "Living white grubs under each lift.");
        var ground = f.Required("ground", Quantities.Area.Format, l => l.Ground, "Ground of one lift.");
        return f.Made(v => new(v.Get(counts), v.Get(ground)));
    }

    private static RecordFormat<WeedSeen> Weeds()
    {
        var f = new RecordFormat<WeedSeen>("weed");
        var kind = f.Required("kind", NamesOf<WeedKind>.Format, w => w.Kind, "What it is.");
        var cover = f.Optional("cover", Quantities.Share.Format, w => w.Cover, "Share of the ground it covers.");
        return f.Made(v => new(v.Get(kind), v.Get(cover)));
    }
}
