using Seedfall.Weather;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Weather;

/// <summary>What may be said with an upload of weather files.</summary>
internal static class WeatherForm
{
    private static readonly TextField Name = new("weathername", "What to call it") { Hint = "Blank takes the station’s name from the file." };
    private static readonly TextField Station = new("station", "Only this station") { Longest = 40, Hint = "Where one file holds several." };
    private static readonly ChoiceField<TemperatureUnit> Temperature = new("tempunit", "Temperatures, where no column says", [(TemperatureUnit.Celsius, "c", "°C"), (TemperatureUnit.Fahrenheit, "f", "°F"), (TemperatureUnit.TenthsOfCelsius, "tenths", "Tenths of °C")]) { Blank = "Find out" };
    private static readonly ChoiceField<RainUnit> Rain = new("rainunit", "Rain, where no column says", [(RainUnit.Millimeters, "mm", "mm"), (RainUnit.Inches, "in", "in"), (RainUnit.TenthsOfMillimeters, "tenths", "Tenths of mm")]) { Blank = "Find out" };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("More about the files", [Name, Station, Temperature, Rain]) { Folded = true }];

    /// <summary>The name wanted and the options of the reader; meaningless where problems were noted.</summary>
    public static (string? Name, WeatherReadOptions Options) Read(Entries entries) => (
        Name.Read(entries),
        new WeatherReadOptions { Station = Station.Read(entries), Temperature = Temperature.Read(entries), Rain = Rain.Read(entries), Limits = Limits });

    /// <summary>Tighter than at the command line: an upload must not unpack without end.</summary>
    private static WeatherReadLimits Limits => WeatherReadLimits.Default with { FileBytes = 128L << 20, TotalBytes = 512L << 20, Files = 200 };
}
