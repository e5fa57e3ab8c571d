using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>One feeding as a task.</summary>
internal static class FeedTask
{
    internal static PlanTask For(Feeding feeding, DateOnly date, TaskFacts facts) => new()
    {
        Id = $"feed.{feeding.Id}",
        Kind = TaskKind.Feed,
        Title = $"Feed: {feeding.ProductName}",
        Date = date,
        LastDate = date.AddDays(2),
        Minutes = 40,
        Steps =
        [
            feeding.Reason,
            $"Spread {FigureText.Both(feeding.Product)} in all, {FigureText.Both(feeding.ProductRate)}, half each way at right angles.",
            "Sweep granules off paving back onto the lawn, then water lightly.",
        ],
        Conditions = ["The grass is dry, no heavy rain is forecast for a day."],
        CautionIds = facts.Lawn.AppliedForHire == true ? [Cautions.FertilizerId, Cautions.HireId] : [Cautions.FertilizerId],
        Figures = [feeding.Product, feeding.ProductRate, feeding.NitrogenRate],
    };
}
