namespace Seedfall.Web.Data;

/// <summary>What was chosen for one lawn in one year; a null is Seedfall's own choice.</summary>
public sealed class SeasonRow
{
    public required string LawnId { get; init; }

    /// <summary>Calendar year of the autumn.</summary>
    public required int Year { get; init; }

    public DateOnly? SeedDown { get; set; }

    public bool SlitSeed { get; set; }

    /// <summary>Share of the new-lawn rate, 0.5 to 0.67.</summary>
    public double? OverseedShare { get; set; }

    /// <summary>Rounds a day on the seedbed, 0 to 4.</summary>
    public int? SeedbedRounds { get; set; }

    public double? RoundDepthMm { get; set; }

    public int Version { get; set; } = 1;

    public required DateTimeOffset Changed { get; set; }
}
