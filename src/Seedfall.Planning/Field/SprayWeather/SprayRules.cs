using Seedfall.Engine.Units;
using Seedfall.Planning.Aftercare;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>
/// What a moment's weather says of spraying. The same rules run on the phone (<c>Islands/spray-now.ts</c>); a test holds the two together.
/// Wind: 5 mph at the nozzle preferred, the label's highest a wall, 8 mph where it was not entered (university consortium). Still air:
/// 3 mph, 3 degF, 1 h after sunrise, 2 h before sunset (extension). Delta-T: NDSU and the Australian Bureau of Meteorology, not
/// standard practice in the United States.
/// </summary>
public static class SprayRules
{
    /// <summary>The worst of the reasons; go where there is none.</summary>
    public static SprayVerdict VerdictOf(IReadOnlyList<SprayReason> reasons)
    {
        ArgumentNullException.ThrowIfNull(reasons);
        return reasons.Count == 0 ? SprayVerdict.Go : reasons.Max(r => r.Weight);
    }

    /// <summary>Every reason, the weightiest first.</summary>
    public static IReadOnlyList<SprayReason> Judge(SprayMoment moment, SprayLimits limits)
    {
        ArgumentNullException.ThrowIfNull(moment);
        ArgumentNullException.ThrowIfNull(limits);
        return [.. Wind(moment, limits).Concat(Layers(moment, limits)).Concat(Rain(moment, limits)).Concat(Air(moment, limits)).OrderByDescending(r => r.Weight)];
    }

    private static IEnumerable<SprayReason> Wind(SprayMoment m, SprayLimits l)
    {
        if (m.WallMs is not { } wall || m.NozzleMs is not { } nozzle)
        {
            yield return new("wind.unknown", SprayVerdict.Wait);
        }
        else if (wall > l.WallMs)
        {
            yield return new(l.WallFromLabel ? "wind.label" : "wind.usual", SprayVerdict.Stop, wall, l.WallMs);
        }
        else if (nozzle > l.PreferredNozzleMs)
        {
            yield return new("wind.brisk", SprayVerdict.Wait, nozzle, l.PreferredNozzleMs);
        }

        if (m.GustWallMs is { } gust && gust > l.WallMs)
        {
            yield return new(l.WallFromLabel ? "gust.label" : "gust.usual", SprayVerdict.Stop, gust, l.WallMs);
        }
        else if (m.GustNozzleMs is { } low && low > l.GustNozzleMs)
        {
            yield return new("gust.brisk", SprayVerdict.Wait, low, l.GustNozzleMs);
        }

        if (l.LeastMs is { } least && m.StillMs is { } still && still < least)
        {
            yield return new("wind.least", SprayVerdict.Stop, still, least);
        }
    }

    private static IEnumerable<SprayReason> Layers(SprayMoment m, SprayLimits l)
    {
        if (m.Hangs)
        {
            yield return new("layers.seen", SprayVerdict.Stop);
        }
        else if (m.StillMs is { } wind && wind <= l.CalmMs)
        {
            yield return LowSun(m, l) && !(m.CloudPct >= l.OvercastPct)
                ? new("layers.likely", SprayVerdict.Stop, wind, l.CalmMs)
                : new("wind.light", SprayVerdict.Go, wind, l.CalmMs);
        }

        if (m.AfterSunriseMinutes < 0.0 || m.BeforeSunsetMinutes < 0.0)
        {
            yield return new("dark", SprayVerdict.Wait);
        }
    }

    private static bool LowSun(SprayMoment m, SprayLimits l) =>
        m.AfterSunriseMinutes < l.MorningMinutes || m.BeforeSunsetMinutes < l.EveningMinutes || m.WarmedC < l.WarmedC;

    private static IEnumerable<SprayReason> Rain(SprayMoment m, SprayLimits l)
    {
        if (m.RainInMinutes is { } minutes)
        {
            if (minutes <= 0.0)
            {
                yield return new("rain.now", SprayVerdict.Stop);
            }
            else if (minutes < l.RainFreeMinutes)
            {
                yield return l.RainFreeFromLabel
                    ? new("rain.label", SprayVerdict.Stop, minutes, l.RainFreeMinutes)
                    : new("rain.usual", SprayVerdict.Wait, minutes, l.RainFreeMinutes);
            }
        }
        else if (!m.RainKnown && l.RainFreeMinutes > 0.0)
        {
            yield return new("rain.unknown", SprayVerdict.Wait);
        }

        if (m.WetLeaves ?? m.HumidityPct >= l.WetHumidityPct)
        {
            yield return new("leaves.wet", SprayVerdict.Wait);
        }
    }

    private static IEnumerable<SprayReason> Air(SprayMoment m, SprayLimits l)
    {
        if (m.AirC is not { } air)
        {
            yield break;
        }

        if (air < l.LowestC)
        {
            yield return l.LowestFromLabel ? new("cold.label", SprayVerdict.Stop, air, l.LowestC) : new("cold.usual", SprayVerdict.Wait, air, l.LowestC);
        }
        else if (air > l.HighestC)
        {
            yield return l.HighestFromLabel ? new("hot.label", SprayVerdict.Stop, air, l.HighestC) : new("hot.usual", SprayVerdict.Wait, air, l.HighestC);
        }

        if (DeltaC(m) is { } delta)
        {
            if (delta > l.DryDeltaC)
            {
                yield return new("delta.dry", SprayVerdict.Wait, delta, l.DryDeltaC);
            }
            else if (delta > l.DryingDeltaC)
            {
                yield return new("delta.drying", SprayVerdict.Go, delta, l.DryingDeltaC);
            }
            else if (delta < l.DampDeltaC)
            {
                yield return new("delta.damp", SprayVerdict.Go, delta, l.DampDeltaC);
            }
        }
    }

    /// <summary>Air less wet bulb, degC; null where air or humidity is not known or the air is colder or hotter than the formula was made for.</summary>
    internal static double? DeltaC(SprayMoment m) => m is { AirC: { } air and >= DeltaT.ColdestC and <= DeltaT.HottestC, HumidityPct: { } humidity }
        ? DeltaT.DifferenceC(Temperature.FromCelsius(air), Fraction.FromPercent(Math.Clamp(humidity, DeltaT.DriestPct, DeltaT.DampestPct)))
        : null;
}
