using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;

namespace Seedfall.Exchange.Lawns;

/// <summary>A part of the lawn in one condition.</summary>
internal sealed class PatchFormat : ObjectFormat<Patch>
{
    public static readonly PatchFormat One = new();

    private readonly Field<Patch, string> _id, _name;
    private readonly Field<Patch, PatchShape> _shape;
    private readonly Field<Patch, Measuring> _measured;
    private readonly Field<Patch, IReadOnlyList<GrassSpecies>> _grasses;
    private readonly Field<Patch, Fraction?> _cover, _weeds;
    private readonly Field<Patch, DamageCause> _cause;
    private readonly Field<Patch, bool> _cured;
    private readonly Field<Patch, double?> _sun, _slope, _aspect, _grubs;
    private readonly Field<Patch, IReadOnlyList<SkyObstacle>> _obstacles;
    private readonly Field<Patch, Depth?> _thatch;
    private readonly Field<Patch, bool?> _dormant;
    private readonly Field<Patch, PatchSurvey> _survey;

    private PatchFormat()
        : base("patch")
    {
        _id = Required("id", Scalars.Id, p => p.Id, "Stable id, unique within the lawn.");
        _name = Required("name", Scalars.Words, p => p.Name, "What the owner calls it.");
        _shape = Required("shape", ShapeFormat.One, p => p.Shape, "How the area was taken.");
        _measured = Optional("measured", MeasuringFormat.One, p => p.Measured, "With what the size was taken; decides how far off it may be.");
        _grasses = Required("grasses", new ListFormat<GrassSpecies>(NamesOf<GrassSpecies>.Format, 1), p => p.Grasses, "Grasses growing or wanted here.");
        _cover = Optional("livingCover", Quantities.Share.Format, p => p.LivingCover, "Share of the ground covered by living turf.");
        _cause = Usual("cause", NamesOf<DamageCause>.Format, p => p.Cause, DamageCause.Unknown, "Why it is thin.");
        _cured = Usual("causeCured", Scalars.Truth, p => p.CauseCured, false, "True when the cause has been dealt with.");
        _sun = Optional("sun", Quantities.SunHours.Format, p => p.SunHours, "Direct sun on a clear day in September (March in the south).");
        _obstacles = List("obstacles", ObstacleFormat.One, p => p.Obstacles, "What stands between the patch and the sky; hours of sun are reckoned from it where none were counted.");
        _slope = Optional("slope", Quantities.Slope.Format, p => p.SlopePercent, "Rise over run.");
        _aspect = Optional("faces", Scalars.Decimal(0.0, 360.0), p => p.AspectDeg, "Direction the slope faces, degrees clockwise from true north.");
        _thatch = Optional("thatch", Quantities.Depth.Format, p => p.Thatch, "Thickness of the thatch.");
        _grubs = Optional("grubs", Quantities.PerSquareFoot.Format, p => p.GrubsPerSquareFoot, "Living white grubs.");
        _weeds = Optional("weedCover", Quantities.Share.Format, p => p.WeedCover, "Share of the ground covered by weeds.");
        _dormant = Optional("dormant", Scalars.Truth, p => p.Dormant, "True when crowns are firm and the turf is only dormant (tug test).");
        _survey = Optional("survey", SurveyFormat.One, p => p.Survey, "What the walk-over found; measured there, it wins over the fields above.");
    }

    protected override Patch Build(FieldValues v) => new()
    {
        Id = v.Get(_id),
        Name = v.Get(_name),
        Shape = v.Get(_shape),
        Measured = v.Get(_measured),
        Grasses = v.Get(_grasses),
        LivingCover = v.Get(_cover),
        Cause = v.Get(_cause),
        CauseCured = v.Get(_cured),
        SunHours = v.Get(_sun),
        Obstacles = v.Get(_obstacles),
        SlopePercent = v.Get(_slope),
        AspectDeg = v.Get(_aspect),
        Thatch = v.Get(_thatch),
        GrubsPerSquareFoot = v.Get(_grubs),
        WeedCover = v.Get(_weeds),
        Dormant = v.Get(_dormant),
        Survey = v.Get(_survey),
    };
}

/// <summary>What is known of the soil.</summary>
internal sealed class SoilFormat : ObjectFormat<SoilFacts>
{
    public static readonly SoilFormat One = new();

    private readonly Field<SoilFacts, SoilTexture?> _texture;
    private readonly Field<SoilFacts, double?> _ph, _bufferPh, _phosphorus, _potassium, _calcium, _magnesium, _exchange, _salts;
    private readonly Field<SoilFacts, SoilExtract> _extract;
    private readonly Field<SoilFacts, MassPerArea?> _lime;
    private readonly Field<SoilFacts, DateOnly?> _tested;
    private readonly Field<SoilFacts, Fraction?> _organic;

    private SoilFormat()
        : base("soil")
    {
        _texture = Optional("texture", NamesOf<SoilTexture>.Format, s => s.Texture, "USDA texture class.");
        _ph = Optional("ph", Scalars.Decimal(0.0, 14.0), s => s.Ph, "pH in water.");
        _bufferPh = Optional("bufferPh", Scalars.Decimal(0.0, 14.0), s => s.BufferPh, "pH in the laboratory's lime buffer.");
        _extract = Usual("extract", NamesOf<SoilExtract>.Format, s => s.Extract, SoilExtract.Mehlich3, "What the phosphorus was measured in.");
        _phosphorus = Optional("phosphorus", Quantities.PartsPerMillion.Format, s => s.PhosphorusPpm, "Phosphorus as the element, by the extract.");
        _potassium = Optional("potassium", Quantities.PartsPerMillion.Format, s => s.PotassiumPpm, "Potassium as the element.");
        _calcium = Optional("calcium", Quantities.PartsPerMillion.Format, s => s.CalciumPpm, "Calcium.");
        _magnesium = Optional("magnesium", Quantities.PartsPerMillion.Format, s => s.MagnesiumPpm, "Magnesium.");
        _exchange = Optional("cationExchange", Quantities.CationExchange.Format, s => s.CationExchange, "Cation exchange capacity.");
        _salts = Optional("salts", Quantities.Salts.Format, s => s.SaltsDsPerM, "Soluble salts of the saturated paste.");
        _lime = Optional("labLime", Quantities.DryRate.Format, s => s.LabLime, "Lime the laboratory recommends, at 100 % calcium carbonate equivalent.");
        _tested = Optional("testDate", Scalars.Date, s => s.TestDate, "Date of the soil test.");
        _organic = Optional("organicMatter", Quantities.Share.Format, s => s.OrganicMatter, "Organic matter by weight.");
    }

    protected override SoilFacts Build(FieldValues v) => new()
    {
        Texture = v.Get(_texture),
        Ph = v.Get(_ph),
        BufferPh = v.Get(_bufferPh),
        Extract = v.Get(_extract),
        PhosphorusPpm = v.Get(_phosphorus),
        PotassiumPpm = v.Get(_potassium),
        CalciumPpm = v.Get(_calcium),
        MagnesiumPpm = v.Get(_magnesium),
        CationExchange = v.Get(_exchange),
        SaltsDsPerM = v.Get(_salts),
        LabLime = v.Get(_lime),
        TestDate = v.Get(_tested),
        OrganicMatter = v.Get(_organic),
    };
}
