using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Records;

namespace Seedfall.Exchange.Logs;

/// <summary>The record of one application.</summary>
internal sealed class ApplicationFormat : ObjectFormat<Application>
{
    public static readonly ApplicationFormat One = new();

    private readonly Field<Application, ApplicationKind> _kind;
    private readonly Field<Application, string> _product;
    private readonly Field<Application, ProductAmount> _amount;
    private readonly Field<Application, Area> _area;
    private readonly Field<Application, DateTimeOffset?> _ended;
    private readonly Field<Application, string?> _number, _target, _method, _applicator, _license, _reentry, _deviation, _why;
    private readonly Field<Application, IReadOnlyList<AppliedActive>> _actives;
    private readonly Field<Application, Volume?> _carrier;
    private readonly Field<Application, FieldWeather?> _start, _end;
    private readonly Field<Application, Guid?> _replaces;

    private ApplicationFormat()
        : base("application")
    {
        _kind = Required("kind", NamesOf<ApplicationKind>.Format, a => a.Kind, "What it is in the eyes of the law.");
        _product = Required("product", Scalars.Words, a => a.Product, "Generic class and grade or strength.");
        _amount = Required("amount", Amount(), a => a.Amount, "Product before dilution.");
        _area = Required("area", Quantities.Area.Format, a => a.Area, "Ground it went on.");
        _ended = Optional("ended", Scalars.Instant, a => a.Ended, "When it was finished.");
        _number = Optional("registrationNumber", Scalars.Words, a => a.RegistrationNumber, "Registration number off the label.")!;
        _actives = List("actives", Active(), a => a.Actives, "Active ingredients or nutrients that came with it.");
        _carrier = Optional("carrier", Quantities.Volume.Format, a => a.Carrier, "Water or other carrier it was diluted in, product not counted.");
        _target = Optional("target", Scalars.Words, a => a.Target, "Weed, disease, insect or purpose.")!;
        _method = Optional("method", Scalars.Words, a => a.Method, "With what, and how.")!;
        _start = Optional("weatherAtStart", Weather(), a => a.AtStart, "As read on the spot.")!;
        _end = Optional("weatherAtEnd", Weather(), a => a.AtEnd, "As read on the spot.")!;
        _applicator = Optional("applicator", Scalars.Words, a => a.Applicator, "Who applied it.")!;
        _license = Optional("license", Scalars.Words, a => a.License, "Number of the applicator's license.")!;
        _reentry = Optional("reentry", Scalars.Words, a => a.Reentry, "Re-entry as the label words it.")!;
        _deviation = Optional("deviation", Scalars.Words, a => a.Deviation, "What was planned or usual and was done otherwise.")!;
        _replaces = Optional("replaces", Scalars.Guid, a => a.Replaces, "Id of the entry this one stands in place of.");
        _why = Optional("why", Scalars.Words, a => a.Why, "Why it stands in its place.")!;
    }

    protected override Application Build(FieldValues v) => new()
    {
        Kind = v.Get(_kind),
        Product = v.Get(_product),
        Amount = v.Get(_amount),
        Area = v.Get(_area),
        Ended = v.Get(_ended),
        RegistrationNumber = v.Get(_number),
        Actives = v.Get(_actives),
        Carrier = v.Get(_carrier),
        Target = v.Get(_target),
        Method = v.Get(_method),
        AtStart = v.Get(_start),
        AtEnd = v.Get(_end),
        Applicator = v.Get(_applicator),
        License = v.Get(_license),
        Reentry = v.Get(_reentry),
        Deviation = v.Get(_deviation),
        Replaces = v.Get(_replaces),
        Why = v.Get(_why),
    };

    private static RecordFormat<ProductAmount> Amount()
    {
        var f = new RecordFormat<ProductAmount>("productAmount");
        var mass = f.Optional("mass", Quantities.Mass.Format, a => a.Mass, "Absent where a volume is given.");
        var volume = f.Optional("volume", Quantities.Volume.Format, a => a.Volume, "Absent where a mass is given.");
        return f.Made(v => new ProductAmount(v.Get(mass), v.Get(volume)));
    }

    private static RecordFormat<AppliedActive> Active()
    {
        var f = new RecordFormat<AppliedActive>("appliedActive");
        var name = f.Required("name", Scalars.Words, a => a.Name, "Active ingredient or nutrient.");
        var amount = f.Required("amount", Quantities.Mass.Format, a => a.Amount, "Its mass on the treated ground.");
        return f.Made(v => new AppliedActive(v.Get(name), v.Get(amount)));
    }

    private static RecordFormat<FieldWeather> Weather()
    {
        var f = new RecordFormat<FieldWeather>("fieldWeather");
        var wind = f.Optional("wind", Quantities.Speed.Format, w => w.Wind, "At the height of the nozzle.");
        var gust = f.Optional("gust", Quantities.Speed.Format, w => w.Gust, "Strongest seen.");
        var from = f.Optional("from", NamesOf<WindFrom>.Format, w => w.From, "Where it blows from.");
        var air = f.Optional("air", Quantities.Temperature.Format, w => w.Air, "Air temperature.");
        var humidity = f.Optional("humidity", Quantities.Share.Format, w => w.Humidity, "Relative humidity.");
        return f.Made(v => new FieldWeather { Wind = v.Get(wind), Gust = v.Get(gust), From = v.Get(from), Air = v.Get(air), Humidity = v.Get(humidity) });
    }
}
