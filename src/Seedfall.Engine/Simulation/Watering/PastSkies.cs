namespace Seedfall.Engine.Simulation.Watering;

/// <summary>The skies of past seasons, each from the same day of the year, made ready to be gone through often.</summary>
public sealed class PastSkies
{
    /// <summary>None.</summary>
    public static PastSkies None { get; } = new([]);

    /// <param name="seasons">All equally long.</param>
    public PastSkies(IReadOnlyList<BedWeather> seasons)
    {
        ArgumentNullException.ThrowIfNull(seasons);
        (Seasons, Lanes) = (seasons, seasons.Count == 0 ? [] : SkyLanes.Of(seasons));
    }

    /// <summary>Season by season.</summary>
    public IReadOnlyList<BedWeather> Seasons { get; }

    /// <summary>How many.</summary>
    public int Count => Seasons.Count;

    internal IReadOnlyList<SkyLanes> Lanes { get; }
}
