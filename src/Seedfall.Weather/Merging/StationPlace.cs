using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Merging;

/// <summary>Where the history says it was measured, and what had to be assumed for it.</summary>
internal sealed record StationPlace(Place? Place, StationPosition? Position, IReadOnlyList<string> Notes)
{
    /// <summary>Beyond this a station's rain says little about the lawn's, km.</summary>
    private const double FarKm = 50.0;

    /// <summary>
    /// A station without elevation takes the lawn's; without a lawn it gives no <see cref="Place"/>, for a made-up elevation
    /// would pass as a measured one.
    /// </summary>
    internal static StationPlace Of(StationDraft station, Place? lawn)
    {
        if (station.LatitudeDeg is not { } latitude || station.LongitudeDeg is not { } longitude)
        {
            return new StationPlace(null, null, ["The files do not say where they were measured; that they belong to the lawn is the user's word."]);
        }

        var km = StationCheck.LawnDistanceKm(station, lawn);
        var notes = new List<string>();
        if (km > FarKm)
        {
            notes.Add(FormattableString.Invariant($"The station is {km:0} km from the lawn: its rain and nights may be quite different. Check that the place is right."));
        }

        if (station.ElevationM is null)
        {
            notes.Add(lawn is null ? "The files give no elevation." : "The files give no elevation; the lawn's stands in for the station's.");
        }

        var elevation = station.ElevationM ?? lawn?.ElevationM;
        return new StationPlace(
            elevation is { } m ? new Place(latitude, longitude, m) : null,
            new StationPosition(latitude, longitude, station.ElevationM, km),
            notes);
    }
}
