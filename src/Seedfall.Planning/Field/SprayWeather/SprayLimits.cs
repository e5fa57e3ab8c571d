using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Units;
using Seedfall.Planning.Aftercare;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>
/// Everything a moment's weather is held against, as plain numbers in the unit of their names, so that a phone without a signal can
/// judge by the same ones. Made by <see cref="For"/>; what a label says always stands in place of what is usual.
/// </summary>
public sealed record SprayLimits
{
    /// <summary>Height of the nozzle above the grass where none was entered, m (20 in): common practice for a wand held low, no source read.</summary>
    public static Length UsualNozzleHeight { get; } = Length.FromInches(20.0);

    /// <summary>Wind at the nozzle up to which spraying is preferred: 5 mph, the caution on every plan.</summary>
    public double PreferredNozzleMs { get; init; } = Speed.FromMilesPerHour(5.0).MetersPerSecond;

    /// <summary>Highest wind; beyond it nothing is sprayed.</summary>
    public double WallMs { get; init; }

    public bool WallFromLabel { get; init; }

    /// <summary>The label's least wind; null where it has none or none was entered.</summary>
    public double? LeastMs { get; init; }

    /// <summary>Wind at 2 m above which air near the ground mixes: 3 mph (trade extension article).</summary>
    public double CalmMs { get; init; } = Speed.FromMilesPerHour(3.0).MetersPerSecond;

    /// <summary>Warming above the morning's low that breaks an inversion: 3 degF (trade extension article).</summary>
    public double WarmedC { get; init; } = 3.0 / 1.8;

    /// <summary>Minutes after sunrise until which still, clear air is taken to lie in layers (Iowa State: label example of 1 h).</summary>
    public double MorningMinutes { get; init; } = 60.0;

    /// <summary>Minutes before sunset from which it is again (Iowa State: label example of 2 h).</summary>
    public double EveningMinutes { get; init; } = 120.0;

    /// <summary>Cloud from which the ground no longer cools under still air, percent (common practice, no source read).</summary>
    public double OvercastPct { get; init; } = 75.0;

    /// <summary>Gusts at the nozzle above which the spray is not under control: 8 mph, where the label is silent (university consortium).</summary>
    public double GustNozzleMs { get; init; } = UsualMost.MetersPerSecond;

    public double RainFreeMinutes { get; init; }

    public bool RainFreeFromLabel { get; init; }

    public double LowestC { get; init; }

    public bool LowestFromLabel { get; init; }

    public double HighestC { get; init; }

    public bool HighestFromLabel { get; init; }

    /// <summary>Delta-T below which drops live long, degC.</summary>
    public double DampDeltaC { get; init; } = DeltaT.LeastC;

    /// <summary>Delta-T above which drops shrink fast, degC.</summary>
    public double DryingDeltaC { get; init; } = DeltaT.CautionC;

    /// <summary>Delta-T above which one waits, degC.</summary>
    public double DryDeltaC { get; init; } = DeltaT.AvoidC;

    /// <summary>Humidity at which dew is taken to lie on the leaves, percent (a usual stand-in for leaf wetness; common practice, no source read).</summary>
    public double WetHumidityPct { get; init; } = 90.0;

    /// <summary>Wind at the nozzle as a share of the wind at 2 m.</summary>
    public double NozzleShare { get; init; }

    /// <summary>Wind at 2 m as a share of the wind at 10 m.</summary>
    public double TwoMeterShare { get; init; } = Wind.TwoMeterFactor(10.0);

    /// <summary>Height of the nozzle above ground, m.</summary>
    public double NozzleM { get; init; }

    internal static Speed UsualMost { get; } = Speed.FromMilesPerHour(8.0);

    internal const double UsualRainFreeHours = 6.0;

    internal static Temperature UsualLowest { get; } = Temperature.FromFahrenheit(40.0);

    internal static Temperature UsualHighest { get; } = Temperature.FromFahrenheit(85.0);

    /// <summary>The limits under a label; what was not entered is taken as usual, and <see cref="SprayAssumptions"/> says so.</summary>
    /// <param name="label">What was entered.</param>
    /// <param name="nozzleHeight">Height of the nozzle above ground, 0.15 to 2 m; null for <see cref="UsualNozzleHeight"/>.</param>
    public static SprayLimits For(SprayLabel label, Length? nozzleHeight = null)
    {
        ArgumentNullException.ThrowIfNull(label);
        var height = nozzleHeight ?? UsualNozzleHeight;
        if (height.Meters is < 0.15 or > 2.0)
        {
            throw new ArgumentOutOfRangeException(nameof(nozzleHeight), height, "0.15 to 2 m are needed");
        }

        return new SprayLimits
        {
            WallMs = (label.MaximumWind ?? UsualMost).MetersPerSecond,
            WallFromLabel = label.MaximumWind is not null,
            LeastMs = label.MinimumWind?.MetersPerSecond,
            RainFreeMinutes = 60.0 * (label.RainFreeHours ?? UsualRainFreeHours),
            RainFreeFromLabel = label.RainFreeHours is not null,
            LowestC = (label.LowestAir ?? UsualLowest).Celsius,
            LowestFromLabel = label.LowestAir is not null,
            HighestC = (label.HighestAir ?? UsualHighest).Celsius,
            HighestFromLabel = label.HighestAir is not null,
            NozzleM = height.Meters,
            NozzleShare = 1.0 / Wind.TwoMeterFactor(height.Meters),
        };
    }
}
