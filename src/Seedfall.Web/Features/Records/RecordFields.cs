using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Records;

/// <summary>The fields of a record's form, in the order of work.</summary>
internal static class RecordFields
{
    /// <summary>Active ingredients or nutrients that may be named.</summary>
    public const int Actives = 3;

    public static readonly ChoiceField<ApplicationKind> Kind = new("kind", "What it is", [
        (ApplicationKind.Pesticide, "pesticide", "Pesticide"),
        (ApplicationKind.Fertilizer, "fertilizer", "Fertilizer"),
        (ApplicationKind.Seed, "seed", "Seed"),
        (ApplicationKind.Other, "other", "Something else")])
    { Required = true, Blank = null, Hint = "What fights weeds, disease or insects is a pesticide in the eyes of the law." };

    public static readonly TextField Product = new("product", "Product") { Required = true, Longest = 120, Hint = "As the label says it: class and grade or strength." };
    public static readonly TextField Number = new("number", "Registration number off the label") { Longest = 60 };
    public static readonly DateField Day = new("day", "Day") { Required = true };
    public static readonly TimeField Start = new("start", "Begun at") { Required = true, Hint = "By the lawn’s own clock." };
    public static readonly TimeField End = new("end", "Done at");
    public static readonly QuantityField<Area> Area = new("area", "Ground it went on", UnitChoices.Area, Engine.Units.Area.Zero, Engine.Units.Area.FromAcres(100.0)) { Required = true, AboveLeast = true };
    public static readonly QuantityField<Mass> Mass = new("mass", "Product by weight", UnitChoices.ProductMass, Engine.Units.Mass.Zero, Engine.Units.Mass.FromPounds(20_000.0)) { AboveLeast = true, Hint = "The product, not the mix. Weight or volume, not both." };
    public static readonly QuantityField<Volume> Volume = new("volume", "Or by volume", UnitChoices.ProductVolume, Engine.Units.Volume.Zero, Engine.Units.Volume.FromGallons(1000.0)) { AboveLeast = true };
    public static readonly QuantityField<Volume> Carrier = new("carrier", "Water it was mixed in", UnitChoices.Volume, Engine.Units.Volume.Zero, Engine.Units.Volume.FromGallons(10_000.0)) { AboveLeast = true };
    public static readonly TextField Target = new("target", "Against or for what") { Longest = 120, Hint = "Weed, disease, insect or purpose." };
    public static readonly TextField Method = new("method", "With what, and how") { Longest = 120 };
    public static readonly TextField Applicator = new("applicator", "Who applied it") { Longest = 120 };
    public static readonly TextField License = new("license", "License number") { Longest = 60 };
    public static readonly TextField Reentry = new("reentry", "Re-entry as the label words it") { Longest = 200 };
    public static readonly TextField Deviation = new("deviation", "Done otherwise than planned") { Longest = 300 };
    public static readonly TextField Remark = new("remark", "Anything else") { Longest = 300 };
    public static readonly TextField Why = new("why", "Why the earlier record is corrected") { Required = true, Longest = 300, Hint = "The earlier record stays in the book, with this reason." };

    public static readonly WeatherFields AtStart = new("start");
    public static readonly WeatherFields AtEnd = new("end");

    public static readonly IReadOnlyList<(TextField Name, QuantityField<Mass> Amount)> Active =
    [
        .. Enumerable.Range(1, Actives).Select(n => (
            new TextField($"active-{n}", n == 1 ? "Active ingredient or nutrient" : "A further one") { Offers = [Nutrients.Nitrogen, Nutrients.Phosphate, Nutrients.Potash, "mesotrione", "siduron", "quinclorac"] },
            new QuantityField<Mass>($"active-{n}-mass", n == 1 ? "Its weight on this ground" : "Its weight", UnitChoices.ProductMass, Engine.Units.Mass.Zero, Engine.Units.Mass.FromPounds(2000.0)))),
    ];

    public static ChoiceField<int> Patch(Lawn lawn) => new("patch", "Where", [.. lawn.Patches.Select((p, i) => (i, p.Id, p.Name))]) { Blank = "The whole lawn" };

    /// <summary>The form's groups for one lawn.</summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="correcting">True where an earlier record is corrected.</param>
    public static IReadOnlyList<FieldGroup> Groups(Lawn lawn, bool correcting) =>
    [
        .. correcting ? [new FieldGroup("Why", [Why]) { Bare = true }] : Array.Empty<FieldGroup>(),
        new("What", [Kind, Product, Mass, Volume, Number]),
        new("When and where", [Day, Start, End, .. lawn.Patches.Count > 1 ? [Patch(lawn)] : Array.Empty<Field>(), Area]),
        new("Mix, target, method", [Carrier, Target, Method]),
        new("Active ingredients and nutrients", [.. Active.SelectMany(a => new Field[] { a.Name, a.Amount })]) { Folded = true, Hint = correcting ? "What the year’s totals are added up from: where the amount of product changes, these change with it." : "What the year’s totals are added up from." },
        new("Weather at the start", AtStart.All) { Folded = true, Hint = "As read on the spot, at the height of the nozzle." },
        new("Weather at the end", AtEnd.All) { Folded = true },
        new("Who", [Applicator, License, Reentry]),
        new("Besides", [Deviation, Remark]),
    ];
}

/// <summary>Weather as read on the spot, at the start or at the end.</summary>
internal sealed class WeatherFields(string when)
{
    private readonly QuantityField<Speed> _wind = new($"wind-{when}", "Wind", UnitChoices.Speed, new Speed(0.0), Speed.FromMilesPerHour(60.0));
    private readonly QuantityField<Speed> _gust = new($"gust-{when}", "Strongest gust", UnitChoices.Speed, new Speed(0.0), Speed.FromMilesPerHour(60.0));
    private readonly ChoiceField<WindFrom> _from = new($"from-{when}", "Wind from", [.. Enum.GetValues<WindFrom>().Select(from => (from, Exchange.Json.NamesOf<WindFrom>.Of(from), RecordText.From(from)))]) { Blank = "Not read" };
    private readonly QuantityField<Temperature> _air = new($"air-{when}", "Air", UnitChoices.Temperature, Temperature.FromCelsius(-20.0), Temperature.FromCelsius(50.0));
    private readonly NumberField _humidity = new($"humidity-{when}", "Humidity", 1.0, 100.0, "%");

    public string First => _wind.Name;

    public IReadOnlyList<Field> All => [_wind, _from, _gust, _air, _humidity];

    /// <summary>Null where nothing was read.</summary>
    public FieldWeather? Read(Entries entries)
    {
        var read = new FieldWeather { Wind = _wind.Read(entries), Gust = _gust.Read(entries), From = _from.Read(entries), Air = _air.Read(entries), Humidity = _humidity.ReadShare(entries) };
        return read == new FieldWeather() ? null : read;
    }

    public void Fill(Entries entries, FieldWeather? read)
    {
        _wind.Fill(entries, read?.Wind);
        _gust.Fill(entries, read?.Gust);
        _from.Fill(entries, read?.From);
        _air.Fill(entries, read?.Air);
        _humidity.FillShare(entries, read?.Humidity);
    }
}
