using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Log;

/// <summary>One kind of entry as a form.</summary>
/// <param name="Id">As in the address.</param>
/// <param name="Title">What the form is headed.</param>
/// <param name="Why">What it is good for.</param>
/// <param name="Fields">The fields beyond day, hour, patch and remark.</param>
public sealed record LogKind(string Id, string Title, string Why, IReadOnlyList<Field> Fields)
{
    private static readonly QuantityField<Depth> Deep = new("depth", "Depth of the sensor", UnitChoices.Depth, Depth.FromMillimeters(5.0), Depth.FromMillimeters(300.0)) { Required = true, Hint = "2 in (50 mm) is what the plan speaks of." };
    private static readonly QuantityField<Temperature> Showed = new("read", "What it showed", UnitChoices.Temperature, Temperature.FromCelsius(-10.0), Temperature.FromCelsius(45.0)) { Required = true };
    private static readonly NumberField Cover = new("cover", "Living cover", 0.0, 100.0, "%") { Required = true, Hint = "Share of the ground with living turf, seedlings included." };
    private static readonly ChoiceField<CoverJudged> Judged = new("judged", "How it was judged", [(CoverJudged.ByEye, "by-eye", "By eye"), (CoverJudged.Counted, "counted", "Counted under a grid or hoop"), (CoverJudged.Photograph, "photograph", "From a photograph")]) { Required = true, Blank = null };
    private static readonly QuantityField<Depth> Put = new("given", "Depth put on", UnitChoices.Depth, Depth.FromMillimeters(0.1), Depth.FromMillimeters(100.0)) { Hint = "Or the minutes below; not both." };
    private static readonly NumberField Ran = new("minutes", "Minutes run in each position", 0.0, 1440.0, "min");
    private static readonly QuantityField<Depth> Caught = new("caught", "In the gauge", UnitChoices.Depth, Depth.FromMillimeters(0.0), Depth.FromMillimeters(1000.0)) { Required = true, Hint = "Empty it after reading." };
    private static readonly ChoiceField<FingerFelt> Felt = new("felt", "What the finger found", [(FingerFelt.TooDry, "too-dry", "Too dry: crumbs"), (FingerFelt.Right, "right", "Right: moist, holds together"), (FingerFelt.Soggy, "soggy", "Soggy: water shows")]) { Required = true, Blank = null };
    private static readonly QuantityField<Depth> WetTo = new("wet-to", "Moist down to", UnitChoices.Depth, Depth.FromMillimeters(0.0), Depth.FromMillimeters(150.0));
    private static readonly QuantityField<Depth> MowedTo = new("mowed-to", "Mowed to", UnitChoices.Depth, Depth.FromMillimeters(10.0), Depth.FromMillimeters(254.0)) { Hint = "Blank where not looked at." };
    private static readonly TextField Words = new("text", "Note") { Required = true, Longest = 1000 };

    public static DateField Day { get; } = new("day", "Day") { Required = true };

    public static TimeField Hour { get; } = new("hour", "Hour") { Hint = "By the lawn’s own clock. Blank where only the day is known." };

    public static TextField Remark { get; } = new("remark", "Anything else") { Longest = 300 };

    public static IReadOnlyList<LogKind> All { get; } =
    [
        new("seeded", "Seed is down", "Every date after seed-down counts from it.", []),
        new("reading", "Soil thermometer", "Two or three readings bring the computed soil to your ground. Push the probe in the shade of your body and wait a minute.", [Showed, Deep]),
        new("green", "First green", "The day the first seedlings show tells how fast this seed goes on this ground.", []),
        new("cover", "Cover seen", "What has filled in moves the forecast of what will.", [Cover, Judged]),
        new("watered", "Watered", "What was really put on is what the next rounds are reckoned from.", [Put, Ran]),
        new("rain", "Rain gauge", "Rain on the lawn differs from rain at the station.", [Caught]),
        new("finger", "Finger test", "Push a finger in before a round: it tells whether this seedbed dries faster than computed.", [Felt, WetTo]),
        new("mowed", "Mowed", "Mowings are counted: most labels let a seedling be sprayed only after so many.", [MowedTo]),
        new("note", "Note", "Whatever is worth keeping.", [Words]),
    ];

    public static LogKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);

    /// <summary>The form's questions for one lawn.</summary>
    public IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new(Title, [Day, Hour, .. lawn.Patches.Count > 1 ? [Patch(lawn)] : Array.Empty<Field>(), .. Id == "watered" ? WateredSet.Fields(lawn) : [], .. Fields, Remark]) { Bare = true }];

    /// <summary>The entry the form describes; null where a problem was noted.</summary>
    /// <param name="id">Made when the form was shown, so that posting it twice adds nothing.</param>
    public LogEntry? Read(Guid id, Lawn lawn, Entries entries, Func<DateTime, DateTimeOffset> clock)
    {
        var (day, hour) = (Day.Read(entries), Hour.Read(entries));
        var at = day is { } d ? clock(d.ToDateTime(hour ?? new TimeOnly(12, 0))) : default;
        var what = What(id, at, hour is not null, entries);
        var patch = lawn.Patches.Count == 1 ? lawn.Patches[0].Id : Patch(lawn).Read(entries) is { } index ? lawn.Patches[index].Id : null;
        what = what is LogEntry.Watered watered ? WateredSet.Named(watered, lawn, entries) : what;
        return entries.Sound ? what! with { PatchId = patch ?? WateredSet.OnlyPatch(what, lawn), Remark = Remark.Read(entries) } : null;
    }

    private LogEntry? What(Guid id, DateTimeOffset at, bool hourKnown, Entries entries) => Id switch
    {
        "seeded" => new LogEntry.SeededDown { Id = id, At = at },
        "green" => new LogEntry.FirstGreen { Id = id, At = at },
        "reading" => Showed.Read(entries) is var read && Deep.Read(entries) is var depth && read is { } r && depth is { } deep ? new LogEntry.SoilReading(deep, r) { Id = id, At = at, HourKnown = hourKnown } : null,
        "cover" => Cover.ReadShare(entries) is var share && Judged.Read(entries) is var judged && share is { } s && judged is { } j ? new LogEntry.CoverSeen(s, j) { Id = id, At = at } : null,
        "watered" => Watered(id, at, entries),
        "rain" => Caught.Read(entries) is { } caught ? new LogEntry.Rained(caught) { Id = id, At = at } : null,
        "finger" => WetTo.Read(entries) is var wet && Felt.Read(entries) is { } felt ? new LogEntry.FingerTest(felt) { Id = id, At = at, WetTo = wet } : null,
        "mowed" => new LogEntry.Mowed { Id = id, At = at, To = MowedTo.Read(entries) },
        _ => Words.Read(entries) is { } text ? new LogEntry.Note(text) { Id = id, At = at } : null,
    };

    private static LogEntry.Watered? Watered(Guid id, DateTimeOffset at, Entries entries)
    {
        var (given, minutes) = (Put.Read(entries), Ran.Read(entries));
        if ((given is null) == (minutes is null))
        {
            entries.Wrong(Put.Name, "Watered: a depth or minutes is needed, and not both.");
            return null;
        }

        return new LogEntry.Watered { Id = id, At = at, Given = given, Minutes = minutes };
    }

    /// <summary>Fields filled for a new entry.</summary>
    public static Entries Blank(UnitSystem system, DateTimeOffset now)
    {
        var entries = new Entries(system);
        Day.Fill(entries, DateOnly.FromDateTime(now.DateTime));
        Hour.Fill(entries, TimeOnly.FromDateTime(now.DateTime));
        Deep.Fill(entries, Depth.FromInches(2.0));
        Showed.Fill(entries, null);
        Judged.Fill(entries, CoverJudged.ByEye);
        Put.Fill(entries, null);
        Caught.Fill(entries, null);
        Felt.Fill(entries, FingerFelt.Right);
        WetTo.Fill(entries, null);
        MowedTo.Fill(entries, null);
        return entries;
    }

    private static ChoiceField<int> Patch(Lawn lawn) =>
        new("patch", "Patch", [.. lawn.Patches.Select((p, i) => (i, p.Id, p.Name))]) { Blank = "The whole lawn" };
}
