using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>One trip with the sprayer as a task.</summary>
internal static class SprayTask
{
    internal static PlanTask For(SprayTrip trip, DateOnly date, TaskFacts facts) => new()
    {
        Id = $"spray.{trip.Id}",
        Kind = TaskKind.Spray,
        Title = trip.Title,
        Date = date,
        LastDate = date,
        Minutes = 60,
        Steps =
        [
            "Do the jar test first: a pint of your water, the products in the order below, fifteen minutes' rest. Heat, flakes or gel: do not mix.",
            $"Order into the tank: {string.Join(", then ", trip.MixingOrder)}.",
            .. trip.Tanks.Select(Tank),
            "Walk the pace you calibrated at; shut off at every edge.",
        ],
        Conditions =
        [
            "Wind 5 mph or less at the nozzle" + (facts.Lawn.PreEmergent?.MaximumWind is { } wind ? $", and never above the label's {wind.MilesPerHour:0.#} mph." : ", and never above the label's limit."),
            "No rain within the hours the label asks.",
        ],
        CautionIds =
        [
            Cautions.LabelId,
            Cautions.MixId,
            .. trip.IsWeighed ? [Cautions.WeighId] : Array.Empty<string>(),
            Cautions.SprayId,
            .. facts.Lawn.AppliedForHire == true ? [Cautions.HireId] : Array.Empty<string>(),
        ],
        Figures = [trip.CarrierTotal, .. trip.Products.Select(p => p.Total)],
    };

    private static string Tank(TankLoad tank) =>
        $"Tank {tank.Number}: {FigureText.Both(tank.Carrier)} of water with {string.Join(", ", tank.Products.Select(DoseMeasure.Sentence))}.";
}
