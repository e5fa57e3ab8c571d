namespace Seedfall.Planning.Rules;

/// <summary>What a nitrogen rule allows of one product in one application.</summary>
/// <param name="MaxPoundsPerM">Most total nitrogen, lb per 1,000 sq ft; null where nothing limits it. Zero where the product is refused.</param>
/// <param name="Refused">True when the product may not be applied at all.</param>
public sealed record NitrogenAllowance(double? MaxPoundsPerM, bool Refused);

/// <summary>Nitrogen limits of a rule pack as arithmetic.</summary>
public static class NitrogenLimit
{
    /// <summary>
    /// Most total nitrogen in one application: <c>min(total limit, soluble limit / (1 - f))</c> for the slow-release share f.
    /// Below the least slow share: refused under the strict reading, the soluble limit on all of it under the permissive one.
    /// </summary>
    /// <param name="rule">The pack's rule.</param>
    /// <param name="slowShare">Share of the nitrogen that is slow-release, 0 to 1.</param>
    public static NitrogenAllowance PerApplication(NitrogenRule rule, double slowShare)
    {
        ArgumentNullException.ThrowIfNull(rule);
        if (slowShare is not (>= 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(slowShare), slowShare, "a share from 0 to 1 is needed");
        }

        if (rule.LeastSlowShare is { } least && slowShare < least)
        {
            return rule.Reading == SlowShareReading.Strict
                ? new(0.0, true)
                : new(Least(rule.MaxTotalPerApplication, rule.MaxSolublePerApplication), false);
        }

        var bySoluble = slowShare < 1.0 ? rule.MaxSolublePerApplication / (1.0 - slowShare) : null;
        return new(Least(rule.MaxTotalPerApplication, bySoluble), false);
    }

    /// <summary>Nitrogen still allowed this year, lb per 1,000 sq ft, never below 0; null where the year is not limited.</summary>
    public static double? LeftThisYear(NitrogenRule rule, double appliedPoundsPerM) =>
        rule.MaxPerYear is { } max ? Math.Max(0.0, max - appliedPoundsPerM) : null;

    private static double? Least(double? a, double? b) => (a, b) switch
    {
        ({ } x, { } y) => Math.Min(x, y),
        _ => a ?? b,
    };
}
