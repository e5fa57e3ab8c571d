using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Field;

/// <summary>How a mowing stands to the rule that no more than a third of the leaf goes.</summary>
public enum CutRule
{
    /// <summary>The grass is no taller than the height wanted: the mower stays in the shed.</summary>
    Leave,

    /// <summary>Within a third.</summary>
    Kept,

    /// <summary>More than a third but no more than half, in two passes: today is an exception.</summary>
    Exception,

    /// <summary>Half the leaf is taken and the height wanted is still not reached.</summary>
    TooTall,
}

/// <summary>One mowing by the height the grass stands at.</summary>
/// <param name="Stands">Height of the grass.</param>
/// <param name="First">First of two passes; null where one is enough.</param>
/// <param name="Cut">Height of cut in the end; null where nothing is mowed.</param>
/// <param name="Rule">How it stands to the rule of a third.</param>
/// <param name="Sentence">What to do and why.</param>
public sealed record MowingCut(Figure Stands, Figure? First, Figure? Cut, CutRule Rule, string Sentence);

/// <summary>Height of cut on seed-down day: two notches down, just under 3 in, a third of the leaf as the rule.</summary>
public static class MowingHeight
{
    /// <summary>Just under 3 in: 2 7/8 in. Common practice, no source read.</summary>
    public static Depth JustUnderThree { get; } = Depth.FromInches(2.875);

    /// <summary>Most of the leaf any mowing takes here. The exception's limit is Seedfall's own.</summary>
    private const double MostShare = 0.5;

    private const double RuleShare = 1.0 / 3.0;

    private const double NotchIn = 0.5;

    private const string Source = "one-third rule: West Virginia University Extension; low mowing before seed, clippings taken off: Kansas State; 2 7/8 in and half the leaf as the limit of the exception: common practice, no source read";

    /// <summary>The mowing for grass of one height.</summary>
    /// <param name="stands">Height of the grass, above 0 and to 24 in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height lies outside.</exception>
    public static MowingCut SeedDown(Depth stands)
    {
        if (stands.Inches is not (> 0.0 and <= 24.0))
        {
            throw new ArgumentOutOfRangeException(nameof(stands), stands.Inches, "must be above 0 and at most 24 in");
        }

        var (h, wanted) = (stands.Inches, JustUnderThree.Inches);
        var third = h * (1.0 - RuleShare);
        var rule = h <= wanted ? CutRule.Leave : wanted >= third - 1e-9 ? CutRule.Kept : wanted >= h * (1.0 - MostShare) - 1e-9 ? CutRule.Exception : CutRule.TooTall;
        double? cut = rule switch { CutRule.Leave => null, CutRule.TooTall => h * (1.0 - MostShare), _ => wanted };
        double? first = rule is CutRule.Exception or CutRule.TooTall ? third : null;
        return new(
            Height("stands", "Grass stands at", h, "measured", h, null),
            first is { } f ? Height("first", "First pass at", f, "two thirds of h", h, null) : null,
            cut is { } c ? Height("cut", "Mow to", c, rule == CutRule.TooTall ? "half of h" : "2 7/8 in", h, 1.0 - (c / h)) : null,
            rule,
            Sentence(rule, h, first ?? 0.0, cut ?? h));
    }

    /// <summary>Cuts for grass from 2 1/2 to 8 in, a quarter inch apart.</summary>
    public static IReadOnlyList<MowingCut> Table { get; } = [.. Enumerable.Range(10, 23).Select(quarters => SeedDown(Depth.FromInches(quarters / 4.0)))];

    /// <summary>Tallest grass that comes down to <see cref="JustUnderThree"/> within the rule, in.</summary>
    internal static double TallestWithinRuleIn => JustUnderThree.Inches / (1.0 - RuleShare);

    private static string Sentence(CutRule rule, double h, double first, double cut)
    {
        var share = FormattableString.Invariant($"{(1.0 - (cut / h)) * 100.0:0} %");
        var notches = Math.Max(1.0, Math.Round((h - cut) / NotchIn));
        return rule switch
        {
            CutRule.Leave => "It stands just under 3 in already: leave the mower in the shed and rake only.",
            CutRule.Kept => FormattableString.Invariant($"Mow to {In(cut)}, about {notches:0} notch{(notches > 1.0 ? "es" : "")} of half an inch down: {share} of the leaf, within a third. Collect the clippings."),
            CutRule.Exception => FormattableString.Invariant($"Today is an exception to the third: first at {In(first)}, then across at {In(cut)}, {share} of the leaf. Seed needs light and open soil, and the mower stays off for three weeks. Collect the clippings."),
            _ => FormattableString.Invariant($"Too tall for one day: first at {In(first)}, then across at {In(cut)} and no lower, for more than half the leaf is scalping. If the seed can wait three days, mow again then."),
        };
    }

    private static string In(double inches) => FormattableString.Invariant($"{inches:0.##} in ({inches * 2.54:0.#} cm)");

    private static Figure Height(string id, string label, double inches, string formula, double h, double? share) => new(
        FormattableString.Invariant($"day.mow.{h:0.##}.{id}"), label, QuantityKind.Depth, Depth.FromInches(inches).Millimeters, new Working(
            formula,
            [new("h", "height of the grass", h, "in"), .. share is { } s ? [new WorkingInput("s", "share of the leaf taken", s, "")] : Array.Empty<WorkingInput>()],
            Source,
            Sureness.CommonPractice));
}
