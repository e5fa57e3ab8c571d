using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Plan;

/// <summary>The time zone a lawn's clock keeps.</summary>
public static class LawnZone
{
    /// <summary>The entered zone, or the usual civil zone of the longitude with a named assumption.</summary>
    public static (string Zone, Assumption? Assumed) Of(Lawn lawn)
    {
        if (lawn.TimeZone is { } zone)
        {
            return (zone, null);
        }

        var guess = Guess(lawn.Place.LatitudeDeg, lawn.Place.LongitudeDeg);
        return (guess, new Assumption(
            "assumed.zone",
            $"The lawn's clock is taken to keep {guess}, judged from its longitude.",
            "Times of watering and calendar entries shift by an hour or more where that is wrong.",
            "Enter the lawn's time zone."));
    }

    /// <summary>North American civil zones between 24 and 60 degrees north, otherwise the nautical zone of the longitude.</summary>
    private static string Guess(double latitudeDeg, double longitudeDeg)
    {
        if (latitudeDeg is >= 24.0 and <= 60.0 && longitudeDeg is >= -130.0 and <= -60.0)
        {
            return longitudeDeg switch
            {
                > -67.0 => "America/Halifax",
                > -86.0 => "America/New_York",
                > -101.5 => "America/Chicago",
                > -114.0 => "America/Denver",
                _ => "America/Los_Angeles",
            };
        }

        // The Etc zones count westward: Etc/GMT+5 is five hours behind Greenwich.
        var hoursEast = (int)Math.Round(longitudeDeg / 15.0, MidpointRounding.AwayFromZero);
        return hoursEast switch
        {
            0 => "Etc/GMT",
            > 0 => $"Etc/GMT-{hoursEast}",
            _ => $"Etc/GMT+{-hoursEast}",
        };
    }
}
