using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Exchange.Spreaders;

/// <summary>What a spreader showed. Id and instant are put in by the entry around it.</summary>
internal sealed class SpreaderWhatFormat : ChoiceFormat<SpreaderEntry>
{
    public static readonly SpreaderWhatFormat One = new();

    private static readonly DateTimeOffset Later = DateTimeOffset.UnixEpoch;
    private static JsonFormat<double> Opening => Scalars.Decimal(0.0, 10_000.0);

    private SpreaderWhatFormat()
        : base("spreaderWhat")
    {
        Kind("run", Run(), e => e as SpreaderEntry.Run, e => e, "A run whose opening, ground and amount are known.");
        Kind("firstFall", FirstFall(), e => e as SpreaderEntry.FirstFall, e => e, "The opening at which the first grains fell.");
        Kind("struck", Struck(), e => e as SpreaderEntry.Struck, e => e, "An earlier entry does not hold.");
    }

    private static RecordFormat<SpreaderEntry.Run> Run()
    {
        var f = new RecordFormat<SpreaderEntry.Run>("spreaderRun");
        var material = f.Required("material", NamesOf<SpreadMaterial>.Format, r => r.Material, "How it flows.");
        var what = f.Required("name", Scalars.Words, r => r.What, "What it was: a lot, a grade.");
        var opening = f.Required("opening", Opening, r => r.Opening, "On the spreader's scale.");
        var covered = f.Required("covered", Quantities.Area.Format, r => r.Covered, "Ground the run covered.");
        var used = f.Required("used", Quantities.Mass.Format, r => r.Used, "Put in less what was left; 0 where nothing fell.");
        var swath = f.Optional("swath", Quantities.Length.Format, r => r.Swath, "Distance between passes; the usual one where absent.");
        var walk = f.Optional("walk", Quantities.Speed.Format, r => r.Walk, "Walking speed; the usual one where absent.");
        var weighed = f.Optional("weighedTo", Quantities.Mass.Format, r => r.WeighedTo, "How finely it was weighed.");
        var lawn = f.Optional("lawn", Scalars.Id, r => r.LawnId, "Id of the lawn; absent for a test elsewhere.")!;
        var job = f.Optional("job", Scalars.Id, r => r.JobId, "Id of the job on that lawn.")!;
        return f.Made(v => new SpreaderEntry.Run
        {
            Id = Guid.Empty,
            At = Later,
            Material = v.Get(material),
            What = v.Get(what),
            Opening = v.Get(opening),
            Covered = v.Get(covered),
            Used = v.Get(used),
            Swath = v.Get(swath),
            Walk = v.Get(walk),
            WeighedTo = v.Get(weighed),
            LawnId = v.Get(lawn),
            JobId = v.Get(job),
        });
    }

    private static RecordFormat<SpreaderEntry.FirstFall> FirstFall()
    {
        var f = new RecordFormat<SpreaderEntry.FirstFall>("spreaderFirstFall");
        var opening = f.Required("opening", Opening, e => e.Opening, "On the spreader's scale.");
        var material = f.Required("material", NamesOf<SpreadMaterial>.Format, e => e.Material, "What was in it.");
        return f.Made(v => new SpreaderEntry.FirstFall(v.Get(opening), v.Get(material)) { Id = Guid.Empty, At = Later });
    }

    private static RecordFormat<SpreaderEntry.Struck> Struck()
    {
        var f = new RecordFormat<SpreaderEntry.Struck>("spreaderStruck");
        var entry = f.Required("entry", Scalars.Guid, s => s.EntryId, "Id of the entry struck.");
        var why = f.Required("why", Scalars.Words, s => s.Why, "The reason.");
        return f.Made(v => new SpreaderEntry.Struck(v.Get(entry), v.Get(why)) { Id = Guid.Empty, At = Later });
    }
}
