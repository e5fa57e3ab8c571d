using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>The figures behind a verdict.</summary>
internal static class SprayFigures
{
    private const string Stull = "wet bulb of Stull 2011 (coefficients common practice, no source read); bands of NDSU and the Australian Bureau of Meteorology";

    /// <summary>Wind and gusts at the nozzle, the limit they are held to, and Delta-T, as far as they can be had.</summary>
    internal static IReadOnlyList<Figure> Of(SprayMoment moment, SprayLimits limits, string windSource) =>
    [
        .. Nozzle("spray.wind.nozzle", "Wind at the nozzle", moment.NozzleMs, moment.StillMs, limits, windSource),
        .. Nozzle("spray.gust.nozzle", "Gusts at the nozzle", moment.GustNozzleMs, null, limits, windSource),
        Wall(limits),
        RainFree(limits),
        .. Delta(moment),
    ];

    /// <summary>The highest wind, the label's or the usual one.</summary>
    internal static Figure Wall(SprayLimits limits) => new("spray.wind.wall", "Never above", QuantityKind.Speed, limits.WallMs, limits.WallFromLabel
        ? new Working("label's highest wind", [], "label, as entered", Sureness.Measured, "Held against the wind as read on the spot, or as forecast brought to 2 m; not against the lesser wind at the nozzle.")
        : new Working("8 mph", [], "a university consortium's advice where the label is silent", Sureness.Assumed, "The label's highest wind was not entered. Enter it: it decides."));

    /// <summary>Hours without rain afterward.</summary>
    internal static Figure RainFree(SprayLimits limits) => new("spray.rainfree", "Hours without rain afterward", QuantityKind.Number, limits.RainFreeMinutes / 60.0, limits.RainFreeFromLabel
        ? new Working("label's hours without rain", [], "label, as entered", Sureness.Measured)
        : new Working("6 h", [], "common practice, no source read", Sureness.Assumed, "The label's hours were not entered. Enter them: they decide."));

    private static IEnumerable<Figure> Nozzle(string id, string label, double? nozzleMs, double? stillMs, SprayLimits limits, string source)
    {
        if (nozzleMs is not { } ms)
        {
            yield break;
        }

        List<WorkingInput> inputs =
        [
            new("zn", "height of the nozzle", new Length(limits.NozzleM).Inches, "in"),
            new("f", "share of the wind at 2 m that is left there", limits.NozzleShare, ""),
            new("u2", "wind at 2 m that goes with it", new Speed(ms / limits.NozzleShare).MilesPerHour, "mph"),
        ];
        if (stillMs is { } still && Math.Abs((still * limits.NozzleShare) - ms) > 1.0e-6)
        {
            inputs.Add(new("um", "likeliest wind at 2 m", new Speed(still).MilesPerHour, "mph"));
        }

        yield return new Figure(id, label, QuantityKind.Speed, ms, new Working("un = f u2, f = ln(67.8 zn - 5.42) / 4.87 with zn in m", inputs, source, Sureness.Computed, "Over open, short grass. Between houses read it at the nozzle."));
    }

    private static IEnumerable<Figure> Delta(SprayMoment moment)
    {
        if (SprayRules.DeltaC(moment) is { } delta)
        {
            yield return new Figure("spray.delta-t", "Delta-T", QuantityKind.TemperatureDifference, delta, new Working(
                "air - wet bulb",
                [new("T", "air", moment.AirC!.Value, "degC"), new("RH", "humidity", moment.HumidityPct!.Value, "%")],
                Stull,
                Sureness.CommonPractice,
                "2 to 8 degC is good, above 10 to be avoided. Not standard practice in the United States: the label decides."));
        }
    }
}
