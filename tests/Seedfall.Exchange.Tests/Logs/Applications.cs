using Seedfall.Engine.Units;
using Seedfall.Planning.Records;

namespace Seedfall.Exchange.Tests.Logs;

/// <summary>Records of applications to write and read: one with every field, one with no more than must be there.</summary>
internal static class Applications
{
    public static readonly Application Whole = new()
    {
        Kind = ApplicationKind.Pesticide,
        Product = "mesotrione 4 lb/gal",
        Amount = new(null, Volume.FromFluidOunces(0.57)),
        Area = Area.FromSquareFeet(4200.0),
        Ended = new DateTimeOffset(2026, 9, 8, 8, 5, 0, TimeSpan.FromHours(-5)),
        RegistrationNumber = "0000-000",
        Actives = [new("mesotrione", Mass.FromGrams(8.1))],
        Carrier = Volume.FromGallons(4.2),
        Target = "crabgrass, before it comes up",
        Method = "backpack sprayer, flat fan",
        AtStart = new FieldWeather { Wind = Speed.FromMilesPerHour(3.5), Gust = Speed.FromMilesPerHour(5.0), From = WindFrom.SouthWest, Air = Temperature.FromFahrenheit(68.0), Humidity = Fraction.FromPercent(61.0) },
        AtEnd = new FieldWeather { Wind = Speed.FromMilesPerHour(4.0) },
        Applicator = "the adviser",
        License = "12345",
        Reentry = "when the spray has dried",
        Deviation = "the strip at the drive was left out",
    };

    public static readonly Application Least = new()
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "balanced 12-12-12 starter",
        Amount = new(Mass.FromPounds(25.0), null),
        Area = Area.FromSquareMeters(390.0),
    };
}
