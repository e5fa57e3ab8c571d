using System.Globalization;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Rules;

/// <summary>Whether a rule lets a product's phosphorus go on, and why.</summary>
public sealed record PhosphorusJudgment(bool Allowed, string Reason);

/// <summary>The phosphorus rule of a pack put to one product, one kind of work and one soil test.</summary>
public static class PhosphorusLimit
{
    /// <summary>Mehlich-3 phosphorus from which none is recommended on home lawns, ppm (Penn State soil lab, read second-hand).</summary>
    public const double EnoughPpm = 45.0;

    /// <summary>
    /// Phosphorus from which none is recommended, ppm, by the extract it was measured in; Bray P-1 and Olsen are the upper ends of the
    /// sufficiency ranges of Carrow et al. 2003 (read second-hand).
    /// </summary>
    public static double EnoughFor(SoilExtract extract) => extract switch
    {
        SoilExtract.Mehlich3 => EnoughPpm,
        SoilExtract.Bray1 => 30.0,
        SoilExtract.Olsen => 28.0,
        _ => throw new ArgumentOutOfRangeException(nameof(extract), extract, "is not a known extract"),
    };

    private const double DaysPerYear = 365.25;

    /// <summary>Allowed or not on the day of application.</summary>
    /// <param name="rule">The pack's rule.</param>
    /// <param name="phosphateShare">P2O5 in the product, share.</param>
    /// <param name="work">What the law sees the work as; null for feeding a standing lawn with no seeding, which nothing exempts.</param>
    /// <param name="soil">Soil test; null where none was entered.</param>
    /// <param name="date">Day of application.</param>
    public static PhosphorusJudgment Judge(PhosphorusRule rule, double phosphateShare, SeedingWork? work, SoilFacts? soil, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(rule);
        if (rule.RestrictedAbovePhosphate is not { } limit)
        {
            return new(true, "phosphorus is not restricted here");
        }

        if (phosphateShare <= limit)
        {
            return new(true, string.Create(CultureInfo.InvariantCulture, $"at {phosphateShare * 100.0:0.##} % phosphate the product is not above {limit * 100.0:0.##} %"));
        }

        if (work is { } seeding && Exempt(rule, seeding))
        {
            return new(true, $"{Words(work)} is exempt");
        }

        return ShowsNeed(rule, soil, date)
            ? new(true, "a soil test of the last years shows that phosphorus is needed")
            : new(false, string.Create(CultureInfo.InvariantCulture, $"{phosphateShare * 100.0:0.##} % phosphate is above {limit * 100.0:0.##} %, {Words(work)} is not exempt, and no soil test in date shows need"));
    }

    /// <summary>True when the rule exempts this kind of work.</summary>
    public static bool Exempt(PhosphorusRule rule, SeedingWork work) => work switch
    {
        SeedingWork.NewEstablishment => rule.ExemptNewEstablishment,
        SeedingWork.Repair => rule.ExemptRepair,
        SeedingWork.Overseed => rule.ExemptOverseed,
        _ => throw new ArgumentOutOfRangeException(nameof(work), work, "is not a known kind of work"),
    };

    private static bool ShowsNeed(PhosphorusRule rule, SoilFacts? soil, DateOnly date) =>
        rule.SoilTestYears is { } years
        && soil is { PhosphorusPpm: { } found, TestDate: { } test }
        && found < EnoughFor(soil.Extract)
        && test <= date
        && date.DayNumber - test.DayNumber <= years * DaysPerYear;

    private static string Words(SeedingWork? work) => work switch
    {
        SeedingWork.NewEstablishment => "a new lawn in its first season",
        SeedingWork.Repair => "repairing turf",
        SeedingWork.Overseed => "overseeding a standing lawn",
        _ => "feeding a lawn outside the season of its seeding",
    };
}
