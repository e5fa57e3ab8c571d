using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Name and place.</summary>
internal sealed class PlaceLeaf() : Leaf("place", "The lawn and its place", "Latitude and elevation set the sun, the frost and the season.")
{
    private static readonly TextField Name = new("name", "Name of the lawn") { Required = true, Hint = "Your own name for it. It is printed on the owner’s sheet." };
    private static readonly QuantityField<double> Latitude = new("latitude", "Latitude", UnitChoices.Latitude, -66.5, 66.5) { Required = true, Hint = "In degrees, for example 42.31. Two decimals are enough." };
    private static readonly QuantityField<double> Longitude = new("longitude", "Longitude", UnitChoices.Longitude, -180.0, 180.0) { Required = true };
    private static readonly QuantityField<Length> Elevation = new("elevation", "Elevation above the sea", UnitChoices.Distance, Length.FromMeters(-430.0), Length.FromMeters(9000.0)) { Required = true, Hint = "To the nearest 100 ft will do." };
    private static readonly TextField Zone = new("zone", "Time zone") { Hint = "For the calendar. Left blank, it is judged from the longitude and said so.", Offers = Zones };

    private static readonly TextField Address = new("address", "Address") { Longest = 200, Hint = "Street, town and ZIP code. Records of sprays and notices carry it; the plan does not need it." };
    private static readonly TextField Owner = new("owner", "Owner or customer") { Longest = 120, Hint = "As the record of applications should name them." };

    private static readonly ChoiceField<LawnUse> Use = new("use", "What it has to stand", Answers.Uses);

    public static IReadOnlyList<Field> NeededFields { get; } = [Name, Latitude, Longitude, Elevation];

    private static string[] Zones =>
    [
        "America/New_York", "America/Detroit", "America/Chicago", "America/Denver", "America/Boise", "America/Los_Angeles",
        "America/Toronto", "America/Winnipeg", "America/Vancouver", "America/Halifax", "Europe/London", "Europe/Berlin",
        "Pacific/Auckland", "Australia/Sydney",
    ];

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("The lawn", [Name, Use]),
        new("Its place", [Latitude, Longitude, Elevation, Zone]),
        new("For records and notices", [Address, Owner]),
    ];

    public override IReadOnlyList<string> Gists(Lawn lawn, UnitSystem system) =>
        [$"{Degrees(lawn.Place.LatitudeDeg, "N", "S")} {Degrees(lawn.Place.LongitudeDeg, "E", "W")}, {FigureText.Show(QuantityKind.Length, lawn.Place.ElevationM, system)}"];

    public override void Fill(Lawn lawn, int item, Entries entries)
    {
        Name.Fill(entries, lawn.Name);
        FillDegrees(entries, Latitude, lawn.Place.LatitudeDeg, below: "S", above: "N");
        FillDegrees(entries, Longitude, lawn.Place.LongitudeDeg, below: "W", above: "E");
        Elevation.Fill(entries, Length.FromMeters(lawn.Place.ElevationM));
        Zone.Fill(entries, lawn.TimeZone);
        Address.Fill(entries, lawn.Address);
        Owner.Fill(entries, lawn.Owner);
        Use.Fill(entries, lawn.Use);
    }

    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (latitude, longitude, elevation) = (Latitude.Read(entries), Longitude.Read(entries), Elevation.Read(entries));
        var zone = Zone.Read(entries);
        if (zone is not null && !TimeZoneInfo.TryFindSystemTimeZoneById(zone, out _))
        {
            entries.Wrong(Zone.Name, $"{Zone.Label}: an IANA zone such as America/Chicago is needed, not “{zone}”.");
        }

        return lawn with
        {
            Name = Name.Read(entries) ?? lawn.Name,
            Place = new Place(latitude ?? 0.0, longitude ?? 0.0, elevation?.Meters ?? 0.0),
            TimeZone = zone,
            Address = entries.Has(Address.Name) ? Address.Read(entries) : lawn.Address,
            Owner = entries.Has(Owner.Name) ? Owner.Read(entries) : lawn.Owner,
            Use = entries.Has(Use.Name) ? Use.Read(entries) : lawn.Use,
        };
    }

    private static void FillDegrees(Entries entries, QuantityField<double> field, double value, string below, string above)
    {
        entries.Put(field.Name, NumberText.Write(Math.Abs(value)));
        entries.Put(field.UnitName, value < 0.0 ? below : above);
    }

    private static string Degrees(double value, string above, string below) => $"{NumberText.Write(Math.Round(Math.Abs(value), 2))}° {(value < 0.0 ? below : above)}";
}
