using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>What may be changed on a sprayer.</summary>
public enum RemedyKind
{
    /// <summary>Walk slower or faster.</summary>
    Walk,

    /// <summary>Trim the pressure.</summary>
    Pressure,

    /// <summary>Spray twice, the second time at right angles.</summary>
    SecondPass,

    /// <summary>Another nozzle.</summary>
    Nozzle,
}

/// <summary>One way to the wanted rate.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="Works">False where it cannot be done here; the statement then says why.</param>
/// <param name="Statement">What to do, or why not.</param>
/// <param name="Figures">The numbers of it.</param>
public sealed record RateRemedy(RemedyKind Kind, bool Works, string Statement, IReadOnlyList<Figure> Figures);

/// <summary>What to change where a sprayer does not put out what is wanted.</summary>
public static class RateRemedies
{
    /// <summary>Flow is trimmed by pressure no further than this, since pressure changes the size of the drops. Common practice, no source read.</summary>
    public const double SmallTrim = 0.10;

    /// <summary>
    /// Ways to the wanted rate, those that work first and the least trouble first among them: walk, pressure, a second pass, another
    /// nozzle. Empty where the rate is held. Every way is followed by a new calibration.
    /// </summary>
    /// <param name="aim">Rates above 0.</param>
    public static IReadOnlyList<RateRemedy> For(RateAim aim)
    {
        ArgumentNullException.ThrowIfNull(aim);
        if (!(aim.Now > VolumePerArea.Zero) || !(aim.Wanted > VolumePerArea.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(aim), aim.Now, $"rates above 0 are needed, {aim.Wanted} was wanted");
        }

        return aim.IsHeld ? [] : [.. new[] { Walk(aim), PressureTrim.Of(aim), SecondPass(aim), Nozzle(aim) }.OrderBy(r => r.Works ? 0 : 1)];
    }

    private static RateRemedy Walk(RateAim aim)
    {
        if (aim.Walk is not { } walk)
        {
            return new(RemedyKind.Walk, false, Text($"Walk {Slower(aim.Change)}: at {1.0 / aim.Change:0.##} times the speed. Time a pass to know the speed now."), []);
        }

        var wanted = walk / aim.Change;
        IReadOnlyList<Figure> figures = [Worked.Sourced("remedy.walk", "Walk at", QuantityKind.Speed, wanted.MetersPerSecond, "v2 = v1 x rate1 / rate2", "NC State Extension: output falls as speed rises", Sureness.Computed, null, Rates(aim, new WorkingInput("v1", "walk now", walk.MilesPerHour, "mph")))];
        return Pace.IsWalkable(wanted)
            ? new(RemedyKind.Walk, true, Text($"Walk {Slower(aim.Change)}: {wanted.MilesPerHour:0.0#} mph ({wanted.KilometersPerHour:0.0} km/h) instead of {walk.MilesPerHour:0.0#} ({walk.KilometersPerHour:0.0}), all else as it was."), figures)
            : new(RemedyKind.Walk, false, Text($"Walking alone does not do it: {wanted.MilesPerHour:0.0#} mph ({wanted.KilometersPerHour:0.0} km/h) would be needed, and {Pace.Slowest.MilesPerHour:0} to {Pace.Fastest.MilesPerHour:0} mph can be walked evenly."), figures);
    }

    private static RateRemedy SecondPass(RateAim aim)
    {
        var half = aim.Wanted / 2.0;
        var change = half / aim.Now;
        var perPass = Worked.Computed("remedy.pass", "Carrier in each pass", QuantityKind.VolumePerArea, half.LitersPerSquareMeter, "pass = wanted / 2", null, Rates(aim));
        if (aim.Walk is not { } walk)
        {
            return Math.Abs(change - 1.0) <= RateAim.Tolerance
                ? new(RemedyKind.SecondPass, true, Twice("at the walk you have"), [perPass])
                : new(RemedyKind.SecondPass, false, Text($"Two passes at right angles would each have to put out {change:0.##} times what one does now. Time a pass to know the speed."), [perPass]);
        }

        var speed = walk / change;
        IReadOnlyList<Figure> figures = [perPass, Worked.Computed("remedy.pass.walk", "Walk each pass at", QuantityKind.Speed, speed.MetersPerSecond, "v2 = v1 x rate1 / (rate2 / 2)", null, Rates(aim, new WorkingInput("v1", "walk now", walk.MilesPerHour, "mph")))];
        return Pace.IsWalkable(speed)
            ? new(RemedyKind.SecondPass, true, Twice(Text($"at {speed.MilesPerHour:0.0#} mph ({speed.KilometersPerHour:0.0} km/h)")), figures)
            : new(RemedyKind.SecondPass, false, Text($"Two passes at right angles would be walked at {speed.MilesPerHour:0.0#} mph ({speed.KilometersPerHour:0.0} km/h), which cannot be walked evenly."), figures);
    }

    private static RateRemedy Nozzle(RateAim aim)
    {
        if (aim.Walk is not { } walk || aim.Width is not { } width)
        {
            return new(RemedyKind.Nozzle, true, Text($"Fit a nozzle that gives {aim.Change:0.##} times the flow at the same pressure, of the kind the label asks, and check that its fan is as wide."), []);
        }

        var flow = SprayerOutput.FlowFor(aim.Wanted, walk, width);
        var at = aim.Pressure is { } pressure ? Text($" at {pressure.PoundsPerSquareInch:0} psi ({pressure.Kilopascals:0} kPa)") : " at the pressure you work at";
        return new(
            RemedyKind.Nozzle,
            true,
            Text($"Keep the walk and fit a nozzle of {flow.GallonsPerMinute:0.00#} gal per min ({flow.LitersPerMinute:0.00} L per min){at}, of the kind the label asks, with a fan as wide."),
            [Worked.Sourced("remedy.nozzle", "Nozzle flow", QuantityKind.FlowRate, flow.LitersPerMinute, "gpm = gal per acre x mph x in / 5,940", "extension calibration sheets (Mesa and Albany counties)", Sureness.Computed, null, Rates(aim, new WorkingInput("v", "walk", walk.MilesPerHour, "mph"), new WorkingInput("w", "width of one nozzle", width.Inches, "in")))]);
    }

    private static string Twice(string how) =>
        $"Spray twice at right angles, {how}: each pass brings half the carrier and half the product, so mix for the whole lawn once and spread it over both passes.";

    private static string Slower(double change) => change > 1.0 ? "slower" : "faster";

    internal static WorkingInput[] Rates(RateAim aim, params WorkingInput[] more) =>
        [new("rate1", "put out now", aim.Now.GallonsPerThousandSquareFeet, "gal per 1,000 sq ft"), new("rate2", "wanted", aim.Wanted.GallonsPerThousandSquareFeet, "gal per 1,000 sq ft"), .. more];

    internal static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
