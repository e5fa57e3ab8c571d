using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>The opening found for a wanted rate, or why none on the scale does it.</summary>
internal abstract record OpeningChoice
{
    /// <summary>Even the least that flows may give this many times the wanted rate and still pass for it: the rest can make up for it.</summary>
    private const double MostTimes = 2.0;

    /// <summary>How far short of the wanted rate wide open may fall, as a factor.</summary>
    private const double ShortTimes = 1.25;

    /// <summary>An opening with less chance than this of coming close is not advised.</summary>
    private const double LeastChance = 0.3;

    private OpeningChoice()
    {
    }

    internal sealed record Found(double Opening, FlowForecast Forecast) : OpeningChoice
    {
        /// <summary>True where more likely than not anything falls.</summary>
        internal bool Flows => Forecast.ChanceUpTo(MassPerArea.Zero) < 0.5;

        internal double Chance(MassPerArea low, MassPerArea high) => Forecast.ChanceUpTo(high) - Forecast.ChanceUpTo(low);
    }

    /// <summary>One opening gives too little and the next too much, or too little is known to tell.</summary>
    internal sealed record Between(double Opening, FlowForecast Forecast) : OpeningChoice;

    /// <summary>Even wide open it gives too little.</summary>
    internal sealed record TooLittle(double Opening, FlowForecast Forecast) : OpeningChoice;

    /// <summary>Even at the least opening that flows it gives too much.</summary>
    internal sealed record TooMuch(double Opening, FlowForecast Forecast) : OpeningChoice;

    /// <summary>
    /// The opening whose rate is as likely above as below the wanted one, never one whose chance of passing
    /// <paramref name="most"/> is above <paramref name="chance"/> unless it is the least that flows. Openings outside the scale are not looked at.
    /// </summary>
    internal static OpeningChoice For(FlowFit fit, SpreaderScale scale, MassPerArea wanted, MassPerArea most, double chance)
    {
        var below = default(Found);
        var above = default(Found);
        foreach (var opening in scale.Openings)
        {
            var forecast = fit.At(opening);
            if (forecast.ChanceUpTo(MassPerArea.Zero) >= 0.5)
            {
                continue;
            }

            if (forecast.ChanceUpTo(wanted) < 0.5)
            {
                above = new(opening, forecast);
                break;
            }

            below = new(opening, forecast);
        }

        bool Safe(Found found) => 1.0 - found.Forecast.ChanceUpTo(most) <= chance;
        var last = new Found(scale.Openings.Last(), fit.At(scale.Openings.Last()));
        var nearest = below is null ? above : above is null || Off(below, wanted) <= Off(above, wanted) || !Safe(above) ? below : above;
        if (nearest is null || (above is null && Off(nearest, wanted) > Math.Log(ShortTimes)))
        {
            return new TooLittle(last.Opening, last.Forecast);
        }

        if (below is null && Off(nearest, wanted) > Math.Log(MostTimes) && nearest.Forecast.Median > wanted)
        {
            return new TooMuch(nearest.Opening, nearest.Forecast);
        }

        return Safe(nearest) ? nearest : Lower(fit, scale, nearest, Safe);
    }

    /// <summary>The opening with the greatest chance of a rate in a band.</summary>
    internal static OpeningChoice Closest(FlowFit fit, SpreaderScale scale, MassPerArea low, MassPerArea high)
    {
        var found = scale.Openings.Select(o => new Found(o, fit.At(o))).ToList();
        var best = found.MaxBy(f => f.Chance(low, high))!;
        if (best.Chance(low, high) >= LeastChance)
        {
            return best;
        }

        return found.FirstOrDefault(f => f.Flows) is { } least && least.Forecast.ChanceUpTo(high) < 0.5 ? new TooMuch(least.Opening, least.Forecast)
            : found[^1].Forecast.ChanceUpTo(low) > 0.5 ? new TooLittle(found[^1].Opening, found[^1].Forecast)
            : new Between(best.Opening, best.Forecast);
    }

    /// <summary>The greatest safe opening below one that is not safe; the least that flows where none is.</summary>
    private static Found Lower(FlowFit fit, SpreaderScale scale, Found from, Func<Found, bool> safe)
    {
        var lowest = from;
        foreach (var opening in scale.Openings.Reverse().Where(o => o < from.Opening))
        {
            var found = new Found(opening, fit.At(opening));
            if (found.Forecast.ChanceUpTo(MassPerArea.Zero) >= 0.5)
            {
                break;
            }

            lowest = found;
            if (safe(found))
            {
                break;
            }
        }

        return lowest;
    }

    private static double Off(Found found, MassPerArea wanted) => found.Forecast.Median > MassPerArea.Zero ? Math.Abs(Math.Log(found.Forecast.Median / wanted)) : double.MaxValue;
}
