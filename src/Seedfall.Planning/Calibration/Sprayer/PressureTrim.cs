using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>A small trim of the pressure within the nozzle's limits.</summary>
internal static class PressureTrim
{
    internal static RateRemedy Of(RateAim aim)
    {
        if (Math.Abs(aim.Change - 1.0) > RateRemedies.SmallTrim * (1.0 + 1.0e-9))
        {
            return Not(RateRemedies.Text($"Pressure is for trims up to {RateRemedies.SmallTrim * 100.0:0} % of the flow; this asks for {(aim.Change - 1.0) * 100.0:+0;-0} % and would change the drops: finer ones drift."), []);
        }

        if (aim.Pressure is not { } now)
        {
            return Not("The pressure is not known: without a gauge it cannot be trimmed to a number.", []);
        }

        var wanted = NozzlePressure.PressureFor(FlowRate.FromLitersPerMinute(aim.Change), FlowRate.FromLitersPerMinute(1.0), now);
        IReadOnlyList<Figure> figures =
        [
            Worked.Sourced(
                "remedy.pressure", "Pressure", QuantityKind.Pressure, wanted.Kilopascals, "P2 = P1 (rate2 / rate1)^2", Worked.Practice, Sureness.CommonPractice, "Small trims only.",
                RateRemedies.Rates(aim, new WorkingInput("P1", "pressure now", now.PoundsPerSquareInch, "psi"))),
        ];
        var text = RateRemedies.Text($"{wanted.PoundsPerSquareInch:0.#} psi ({wanted.Kilopascals:0} kPa) instead of {now.PoundsPerSquareInch:0.#} ({now.Kilopascals:0})");
        if (Outside(aim, wanted))
        {
            return Not($"The nozzle's limits do not allow {text}.", figures);
        }

        return aim is { LeastPressure: null } or { MostPressure: null }
            ? new(RemedyKind.Pressure, true, $"Set {text}, if the nozzle's own limits allow it: they were not entered.", figures)
            : new(RemedyKind.Pressure, true, $"Set {text}, within the nozzle's limits.", figures);
    }

    private static bool Outside(RateAim aim, Pressure wanted) =>
        (aim.LeastPressure is { } least && wanted < least) || (aim.MostPressure is { } most && wanted > most);

    private static RateRemedy Not(string why, IReadOnlyList<Figure> figures) => new(RemedyKind.Pressure, false, why, figures);
}
