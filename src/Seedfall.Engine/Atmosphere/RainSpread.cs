namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// A day's rain laid over hours: 4 h around 17 h in the warm half of the year, when rain is mostly convective, else 8 h
/// around noon. A judgement, not a measurement: peaks are smoothed, so runoff from downpours is underestimated.
/// </summary>
internal static class RainSpread
{
    private const int WarmFirstHour = 15;
    private const int WarmHours = 4;
    private const int CoolFirstHour = 8;
    private const int CoolHours = 8;

    /// <summary>May to September in the north, November to March in the south.</summary>
    internal static bool IsWarmSeason(int month, double latitudeDeg) => latitudeDeg >= 0.0 ? month is >= 5 and <= 9 : month is >= 11 or <= 3;

    internal static void Fill(Span<double> rainMm, double dayMm, bool warmSeason)
    {
        var (first, count) = warmSeason ? (WarmFirstHour, WarmHours) : (CoolFirstHour, CoolHours);
        rainMm.Clear();
        rainMm.Slice(first, count).Fill(dayMm / count);
    }
}
