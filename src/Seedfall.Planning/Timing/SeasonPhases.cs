namespace Seedfall.Planning.Timing;

/// <summary>The stretches of the season around a seed-down day.</summary>
internal static class SeasonPhases
{
    /// <summary>Evenings of watering before seed-down.</summary>
    internal const int SoakEvenings = 3;

    /// <summary>Fewest and most days a seedbed is kept wet.</summary>
    internal const int LeastSeedbedDays = 21;

    internal const int MostSeedbedDays = 28;

    /// <summary>Days of light watering for seedlings after emergence.</summary>
    internal const int SeedlingDays = 14;

    internal const int WeaningDays = 14;

    /// <summary>Water is planned for at least this long after seed-down.</summary>
    internal const int LeastDays = 42;

    /// <summary>
    /// Soak, seedbed, seedlings, weaning, deep. The seedbed lasts until the slowest grass is up, 21 to 28 days; deep watering
    /// ends with the season.
    /// </summary>
    /// <param name="seedDown">Seed-down day.</param>
    /// <param name="emergenceDays">Days to emergence of the slowest grass.</param>
    /// <param name="seasonEnd">Usual day of the first hard frost, or the season's last day.</param>
    internal static IReadOnlyList<Phase> Of(DateOnly seedDown, int emergenceDays, DateOnly seasonEnd)
    {
        var up = seedDown.AddDays(Math.Clamp(emergenceDays, LeastSeedbedDays, MostSeedbedDays));
        var weaning = up.AddDays(SeedlingDays);
        var deep = weaning.AddDays(WeaningDays);
        var last = new[] { seasonEnd, deep.AddDays(6), seedDown.AddDays(LeastDays - 1) }.Max();
        return
        [
            new Phase("soak", "Soak", seedDown.AddDays(-SoakEvenings), seedDown.AddDays(-1)),
            new Phase("seedbed", "Seedbed to emergence", seedDown, up.AddDays(-1)),
            new Phase("seedlings", "Seedlings", up, weaning.AddDays(-1)),
            new Phase("weaning", "Weaning", weaning, deep.AddDays(-1)),
            new Phase("deep", "Deep and seldom", deep, last),
        ];
    }
}
