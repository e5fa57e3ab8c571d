using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>One feeding as a step.</summary>
internal static class FeedStepOfDay
{
    internal static DayStep Of(DayFacts facts, Feeding feeding, PlanTask task)
    {
        var half = Worked.Computed(
            $"day.{task.Id}.half", "one of two passes", QuantityKind.Mass, 0.5 * feeding.Product.Value, "half = product / 2", null,
            new WorkingInput("product", "product in all", Mass.FromKilograms(feeding.Product.Value).Pounds, "lb"));
        return new DayStep
        {
            Id = task.Id,
            Kind = TaskKind.Feed,
            Title = task.Title,
            Start = task.Start,
            Big = [feeding.Product, half],
            Lines =
            [
                $"{feeding.ProductName}: {FigureText.Both(feeding.ProductRate)}, half each way at right angles.",
                feeding.Reason,
                "Begin with the opening on the bag turned down, and see how far the first half reaches.",
                .. feeding.Id == "starter-1" ? new[] { "It goes on top of the seed: do not rake again." } : ["Then water it in lightly."],
            ],
            OnlyWhen = task.Conditions,
            Wear = WhatToWear.Feeding,
            CautionIds = task.CautionIds,
            Tools = [DayTool.Spreader],
            Records = facts.Applied(task.Id),
            Troubles = Trouble.Feeding(feeding.ProductRate),
        }.Ticked("Granules are swept off paving back onto the lawn.");
    }
}
