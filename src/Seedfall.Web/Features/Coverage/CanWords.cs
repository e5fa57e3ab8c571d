using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Web.Features.Coverage;

/// <summary>Catch cans in words.</summary>
internal static class CanWords
{
    /// <summary>Rate, how sure, and what to do about it, in one or two sentences.</summary>
    public static string Sentence(CatchCanTest test, UnitSystem system)
    {
        var figures = CanFigures.Of(test);
        var (count, rate) = (test.Readings.Count, FigureText.Show(figures[0], system));
        if (Value(figures, "half-width") is not { } width)
        {
            return $"One can: {rate} where it stood. It cannot say how evenly the water falls: set out a few more.";
        }

        var sure = string.Create(CultureInfo.InvariantCulture, $"{count} cans: {rate} on average, right to {Math.Max(1.0, 100.0 * width):0} % nine times in ten.");
        return Value(figures, "more") is { } and > 0.0 and var more
            ? string.Create(CultureInfo.InvariantCulture, $"{sure} Set out {more:0} more for an average good to a quarter{(count + more > 60 ? ", or move the heads: so uneven a fall is no matter of cans" : "")}.")
            : $"{sure} That is enough cans.";
    }

    /// <summary>The same in a few words, for a list.</summary>
    public static string Gist(CatchCanTest test, UnitSystem system)
    {
        var figures = CanFigures.Of(test);
        var cans = $"{test.Readings.Count} catch can{(test.Readings.Count == 1 ? "" : "s")}, {FigureText.Show(figures[0], system)}";
        return Value(figures, "half-width") is { } width ? string.Create(CultureInfo.InvariantCulture, $"{cans} ± {Math.Max(1.0, 100.0 * width):0} %") : cans;
    }

    private static double? Value(IReadOnlyList<Figure> figures, string id) => figures.FirstOrDefault(f => f.Id == "water.cans." + id)?.Value;
}
