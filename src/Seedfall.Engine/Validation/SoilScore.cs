namespace Seedfall.Engine.Validation;

/// <summary>Names of the methods in a soil temperature validation, as printed.</summary>
public static class SoilScoreMethods
{
    /// <summary>The calibrated heat column alone.</summary>
    public const string Column = "column";

    /// <summary>What a plan uses.</summary>
    public const string Product = "product";

    /// <summary>The pooled regression alone.</summary>
    public const string Regression = "regression";

    /// <summary>Exponential mean of air temperature with a time constant of 7 days, nothing fitted.</summary>
    public const string Air7 = "air7";

    /// <summary>The station's own mean soil temperature of the calendar week in its other years.</summary>
    public const string Climatology = "climatology";

    /// <summary>All, in the order they are printed.</summary>
    public static IReadOnlyList<string> All { get; } = [Column, Product, Regression, Air7, Climatology];
}

/// <summary>Errors of every method at one station, or pooled over all days of all stations.</summary>
/// <param name="Station">Station name; <c>pooled</c> for all.</param>
/// <param name="Methods">Errors by method, degC; a method with no day is absent.</param>
/// <param name="Notes">What was left out and why; empty where nothing.</param>
public sealed record SoilScore(string Station, IReadOnlyDictionary<string, ErrorSummary> Methods, IReadOnlyList<string> Notes);

/// <summary>A validation: each station, and all pooled.</summary>
public sealed record SoilScoreReport(IReadOnlyList<SoilScore> Stations, SoilScore Pooled);
