using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>How neighboring passes are walked.</summary>
public enum PassOrder
{
    /// <summary>Up and down: every second pass the other way, so left meets left.</summary>
    BackAndForth,

    /// <summary>Round and round, or always the same way: left meets right.</summary>
    SameWay,
}

/// <summary>
/// A row of pans across a spreader's path: what each caught, from the left of the one who walks, the middle pan under the spreader.
/// Between pans the catch runs in a straight line; beyond the row nothing falls.
/// </summary>
public sealed record PanTest
{
    /// <summary>Share of the whole catch a bed may get without harm to the eye.</summary>
    private const double Stray = 0.01;

    /// <summary>Throws where the pans are no row.</summary>
    /// <param name="catches">An odd number of catches, 3 to 99, none negative, not all zero; any one unit.</param>
    /// <param name="spacing">Distance between neighboring pans; above 0.</param>
    public PanTest(IReadOnlyList<double> catches, Length spacing)
    {
        if (Fault(catches) is { } fault)
        {
            throw new ArgumentException(fault, nameof(catches));
        }

        if (spacing <= Length.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "a spacing above 0 is needed");
        }

        (Catches, Spacing) = (catches, spacing);
    }

    public IReadOnlyList<double> Catches { get; }

    public Length Spacing { get; }

    private int Center => Catches.Count / 2;

    /// <summary>What keeps catches from being a row; null where nothing does.</summary>
    public static string? Fault(IReadOnlyList<double> catches)
    {
        ArgumentNullException.ThrowIfNull(catches);
        return catches.Count % 2 == 0 || catches.Count is < 3 or > 99 ? FormattableString.Invariant($"an odd number of pans from 3 to 99 is needed, so that one lies under the spreader; found {catches.Count}")
            : catches.Any(c => !(c >= 0.0 && double.IsFinite(c))) ? "catches of 0 or more are needed"
            : catches.All(c => c <= 0.0) ? "at least one pan must have caught something"
            : null;
    }

    /// <summary>Twice the distance to half the center's catch, mean of both sides; null where a side never falls to half (Ohio State Extension Bulletin 817).</summary>
    public Length? EffectiveSwath => Catches[Center] > 0.0 ? SpreaderPattern.EffectiveSwath(Catches, Spacing) : null;

    /// <summary>Share of the catch that fell left of the middle, the middle pan shared [0 to 1].</summary>
    public double LeftShare => (Catches.Take(Center).Sum() + 0.5 * Catches[Center]) / Catches.Sum();

    /// <summary>How far the middle of the pattern lies to the right of the spreader: sum of catch x distance over the catch.</summary>
    public Length Shift => Length.FromMeters(Catches.Select((c, i) => c * (i - Center)).Sum() / Catches.Sum() * Spacing.Meters);

    /// <summary>True where an outer pan still caught more than a tenth of the most: the row was too short.</summary>
    public bool TooShort => Math.Max(Catches[0], Catches[^1]) > 0.1 * Catches.Max();

    /// <summary>Distance from the spreader beyond which at most 1 % of the catch falls on one side.</summary>
    /// <param name="left">True for the left side.</param>
    public Length Reach(bool left)
    {
        var outward = (left ? Catches.Take(Center + 1).Reverse() : Catches.Skip(Center)).ToList();
        var (beyond, most) = (0.0, Stray * Catches.Sum());
        for (var i = outward.Count - 1; i > 0; i--)
        {
            beyond += outward[i];
            if (beyond > most)
            {
                return Length.FromMeters(i * Spacing.Meters + 0.5 * Spacing.Meters);
            }
        }

        return Length.FromMeters(0.5 * Spacing.Meters);
    }

    /// <summary>Catches at equal steps, one for each pan spacing or nearly, over ground covered pass beside pass until it repeats.</summary>
    /// <param name="passes">Distance between passes; at least two pan spacings.</param>
    /// <param name="order">How they are walked.</param>
    public IReadOnlyList<double> Across(Length passes, PassOrder order)
    {
        var pans = passes / Spacing;
        if (!(pans >= 2.0 - 1.0e-9))
        {
            throw new ArgumentOutOfRangeException(nameof(passes), passes, $"a distance of at least two pan spacings, {Spacing * 2.0}, is needed");
        }

        var (points, repeats) = ((int)Math.Round(pans), order == PassOrder.SameWay ? 1 : 2);
        var reach = (int)Math.Ceiling((Center + 1) / pans) + 1;
        return [.. Enumerable.Range(0, points * repeats).Select(i =>
        {
            var at = i * pans / points;
            return Enumerable.Range(-reach, 2 * reach + repeats + 1).Sum(k =>
            {
                var off = at - k * pans;
                return At(order == PassOrder.BackAndForth && k % 2 != 0 ? -off : off);
            });
        })];
    }

    /// <summary>Coefficient of variation over the ground at a distance between passes [-], sample standard deviation over mean.</summary>
    public double Variation(Length passes, PassOrder order) => SpreaderPattern.CoefficientOfVariation(Across(passes, order));

    /// <summary>
    /// The same for two passes at half rate and right angles [-]: the ground gets half of each, unrelated, so the variances of the
    /// halves add and <c>CV = CV1 / sqrt(2)</c>.
    /// </summary>
    public double VariationCrossed(Length passes, PassOrder order) => Variation(passes, order) / Math.Sqrt(2.0);

    /// <summary>Catch at a distance right of the spreader, in pan spacings.</summary>
    private double At(double pans)
    {
        var place = pans + Center;
        var below = (int)Math.Floor(place + 1.0e-9);
        var part = Math.Max(0.0, place - below);
        double Pan(int i) => i >= 0 && i < Catches.Count ? Catches[i] : 0.0;
        return Pan(below) * (1.0 - part) + Pan(below + 1) * part;
    }
}
