using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field.SprayWeather;
using Seedfall.Planning.Records;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>What rain is to be expected, by sky, radar or forecast.</summary>
internal enum RainAhead
{
    None,
    Later,
    Now,
}

/// <summary>The questions of the judgment on the spot.</summary>
internal static class NowForm
{
    private static readonly Speed Most = Speed.FromMetersPerSecond(40.0);

    public static QuantityField<Speed> Wind { get; } = new("wind", "Wind, by hand anemometer", UnitChoices.Speed, Speed.Zero, Most) { Hint = "Hold it out for a minute, away from your body; enter the highest steady reading." };

    public static ChoiceField<WindHeld> Held { get; } = new("held", "Held", [(WindHeld.AtNozzle, "nozzle", "At the nozzle’s height"), (WindHeld.Overhead, "overhead", "Overhead, 6.5 ft (2 m)")]) { Blank = null };

    public static ChoiceField<int> Force { get; } = new("force", "Or by what flag and leaves do", [.. Beaufort.All.Select(b => (b.Force, $"{b.Force}", $"{b.Sign} ({Range(b)})"))]) { Blank = "The anemometer was read", AllShown = true };

    public static QuantityField<Speed> Gust { get; } = new("gust", "Highest gust", UnitChoices.Speed, Speed.Zero, Most) { Hint = "At the same height." };

    public static ChoiceField<WindFrom> From { get; } = new("from", "Wind from", [(WindFrom.North, "n", "North"), (WindFrom.NorthEast, "ne", "Northeast"), (WindFrom.East, "e", "East"), (WindFrom.SouthEast, "se", "Southeast"), (WindFrom.South, "s", "South"), (WindFrom.SouthWest, "sw", "Southwest"), (WindFrom.West, "w", "West"), (WindFrom.NorthWest, "nw", "Northwest")]);

    public static QuantityField<Temperature> Air { get; } = new("air", "Air, in the shade", UnitChoices.Temperature, Temperature.FromCelsius(-20.0), Temperature.FromCelsius(50.0));

    public static NumberField Humidity { get; } = new("humidity", "Humidity", 1.0, 100.0, "%");

    public static QuantityField<Temperature> Low { get; } = new("low", "This morning’s low", UnitChoices.Temperature, Temperature.FromCelsius(-30.0), Temperature.FromCelsius(45.0)) { Hint = "Before midday: air 3 °F above it has begun to mix." };

    public static ChoiceField<SkyCover> Sky { get; } = new("sky", "Sky", [(SkyCover.Clear, "clear", "Clear"), (SkyCover.Broken, "broken", "Sun and cloud"), (SkyCover.Overcast, "overcast", "Overcast")]) { Blank = "Not looked at" };

    public static TickField Hangs { get; } = new("hangs", "Smoke, dust or fog hangs in a layer");

    public static ChoiceField<bool> Wet { get; } = new("wet", "Dew or rain on the leaves", [(false, "dry", "Dry"), (true, "wet", "Wet")]) { Blank = "Not felt" };

    public static ChoiceField<RainAhead> Rain { get; } = new("rain", "Rain", [(RainAhead.None, "none", "None in sight"), (RainAhead.Later, "later", "In so many minutes"), (RainAhead.Now, "now", "It rains")]) { Blank = "Not known" };

    public static NumberField Minutes { get; } = new("minutes", "Minutes until rain", 0.0, 10_080.0, "min") { Whole = true };

    public static QuantityField<Length> Nozzle { get; } = new("height", "Nozzle above the ground", UnitChoices.SprayHeight, Length.FromMeters(0.15), Length.FromMeters(2.0));

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("Wind", [Wind, Held, Force, Gust]),
        new("Air and sky", [Hangs, Sky, Wet, Rain, Minutes]),
        new("More, where you have it", [Air, Humidity, Low, From, Nozzle]) { Folded = true },
    ];

    /// <summary>Blank, with the units of the viewer.</summary>
    public static Entries Blank(UnitSystem system)
    {
        var entries = new Entries(system);
        Held.Fill(entries, WindHeld.AtNozzle);
        foreach (var speed in (QuantityField<Speed>[])[Wind, Gust])
        {
            speed.Fill(entries, null);
        }

        return entries;
    }

    /// <summary>The reading; null where something is wrong, which the entries then say.</summary>
    public static (SprayReading Reading, Length? Nozzle, WindFrom? From)? Read(Entries entries)
    {
        var (rain, minutes) = (Rain.Read(entries), Minutes.Read(entries));
        if (rain == RainAhead.Later && minutes is null && entries.ProblemOf(Minutes.Name) is null)
        {
            entries.Wrong(Minutes.Name, "Minutes until rain: a number is needed where rain is on its way.");
        }

        var reading = new SprayReading
        {
            Wind = Wind.Read(entries),
            Held = Held.Read(entries) ?? WindHeld.AtNozzle,
            Force = Force.Read(entries),
            Gust = Gust.Read(entries),
            Air = Air.Read(entries),
            Humidity = Humidity.ReadShare(entries),
            MorningLow = Low.Read(entries),
            Sky = Sky.Read(entries),
            Hangs = Hangs.Read(entries),
            WetLeaves = Wet.Read(entries),
            RainInMinutes = rain switch { RainAhead.Now => 0.0, RainAhead.Later => minutes, _ => null },
            NoRainInSight = rain == RainAhead.None,
        };
        var (nozzle, from) = (Nozzle.Read(entries), From.Read(entries));
        return entries.Sound ? (reading, nozzle, from) : null;
    }

    private static string Range(Beaufort b) => b.Force == 0 ? "under 1 mph" : FormattableString.Invariant($"{b.LeastMph:0} to {b.MostMph:0} mph{(b.Force == Beaufort.All.Count - 1 ? " and more" : "")}");
}
