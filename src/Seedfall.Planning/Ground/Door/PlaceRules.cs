using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Place, zone, ids and rule pack.</summary>
internal static class PlaceRules
{
    private const double LeastLatitude = 20.0;
    private const double MostLatitude = 66.5;
    private const double MostHoursOff = 3.5;

    internal static void Check(Lawn lawn, TradeTables? tables, Findings found)
    {
        found.Id("id", lawn.Id);
        found.Words("name", lawn.Name);
        Coordinates(lawn, found);
        found.Range("place.elevation", lawn.Place.ElevationM, -430.0, 9000.0, "m");
        Zone(lawn, found);
        Pack(lawn, tables, found);
    }

    private static void Coordinates(Lawn lawn, Findings found)
    {
        var (latitude, longitude) = (lawn.Place.LatitudeDeg, lawn.Place.LongitudeDeg);
        found.Range("place.longitude", longitude, -180.0, 180.0, "degrees");
        if (Math.Abs(latitude) is >= LeastLatitude and <= MostLatitude)
        {
            return;
        }

        var reversed = Math.Abs(longitude) is >= LeastLatitude and <= MostLatitude;
        found.Add(
            "place.latitude",
            Findings.Text(latitude, "degrees"),
            reversed
                ? "20 to 66.5 degrees north or south, where cool-season lawns grow; latitude and longitude look reversed"
                : "20 to 66.5 degrees north or south, where cool-season lawns grow");
    }

    private static void Zone(Lawn lawn, Findings found)
    {
        // A machine without IANA zones cannot say that one is unknown.
        if (lawn.TimeZone is not { } id || !TimeZoneInfo.TryFindSystemTimeZoneById("America/Chicago", out _))
        {
            return;
        }

        if (!TimeZoneInfo.TryFindSystemTimeZoneById(id, out var zone))
        {
            found.Add("timeZone", $"'{id}'", "an IANA zone, for example America/Chicago");
            return;
        }

        if (Math.Abs(zone.BaseUtcOffset.TotalHours - lawn.Place.LongitudeDeg / 15.0) > MostHoursOff)
        {
            found.Add("timeZone", $"'{id}', hours away from the sun at longitude {Findings.Text(lawn.Place.LongitudeDeg, "degrees")}", "the zone of the place; west of Greenwich the longitude is negative");
        }
    }

    private static void Pack(Lawn lawn, TradeTables? tables, Findings found)
    {
        if (lawn.RulePack is not { } id)
        {
            return;
        }

        if (tables is not null && tables.Pack(id) is null)
        {
            found.Add("rulePack", $"'{id}'", $"one of {string.Join(", ", tables.RulePacks.Select(p => p.Id))}");
        }
        else if (id.StartsWith("us-", StringComparison.Ordinal) && lawn.Place.LongitudeDeg is > -60.0 and < 140.0)
        {
            found.Add("place.longitude", Findings.Text(lawn.Place.LongitudeDeg, "degrees"), $"a place in the United States, as the rule pack {id} says; west of Greenwich the longitude is negative");
        }
    }
}
