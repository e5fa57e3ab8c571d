using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>A feeding after the rules were put to it.</summary>
/// <param name="NitrogenPoundsPerM">Nitrogen that goes on; null where the feeding falls out.</param>
internal sealed record RuledStep(FeedStep Step, double? NitrogenPoundsPerM, IReadOnlyList<Wall> Walls, IReadOnlyList<Advice> Advice);

/// <summary>
/// The rule pack put to the feedings one after another. A default above a limit is lowered to it and says so; what the user
/// entered above a limit is a wall.
/// </summary>
internal sealed class FeedRules(RulePack pack, SeedingWork work, SoilFacts? soil, double appliedPoundsPerM, double grassMostPoundsPerM)
{
    private const int LeastDaysAfterStarter = 14;
    private const double WorthSpreading = 0.1;

    private double _spent = appliedPoundsPerM;

    internal RuledStep Rule(FeedStep step, DateOnly? earlier)
    {
        if (Moved(step, earlier) is not { } dated)
        {
            return Blocked(step);
        }

        var walls = new List<Wall>();
        if (PhosphorusWall(dated) is { } phosphorus)
        {
            walls.Add(phosphorus);
        }

        var allowed = NitrogenLimit.PerApplication(pack.Nitrogen, dated.SlowShare);
        if (allowed.Refused)
        {
            walls.Add(SlowWall(dated));
        }

        return walls.Count > 0 ? new(dated, null, walls, []) : Nitrogen(dated, allowed.MaxPoundsPerM);
    }

    private RuledStep Nitrogen(FeedStep step, double? perApplication)
    {
        var leftByLaw = NitrogenLimit.LeftThisYear(pack.Nitrogen, _spent);
        if (step.AskedPoundsPerM is { } asked)
        {
            if (perApplication is { } most && asked > most + 1e-9)
            {
                return new(step, null, [TooMuch(step, asked, most)], []);
            }

            if (leftByLaw is { } left && asked > left + 1e-9)
            {
                return new(step, null, [YearFull(step, asked, left)], []);
            }

            _spent += asked;
            return new(step, asked, [], []);
        }

        var leftByGrass = Math.Max(0.0, grassMostPoundsPerM - _spent);
        var taken = Math.Min(step.WantedPoundsPerM, Math.Min(perApplication ?? double.MaxValue, Math.Min(leftByLaw ?? double.MaxValue, leftByGrass)));
        var rounded = taken < WorthSpreading ? 0.0 : taken;
        _spent += rounded;
        var advice = rounded < step.WantedPoundsPerM - 1e-9 ? [Lowered(step, rounded, Binding(taken, perApplication, leftByLaw))] : Array.Empty<Advice>();
        return new(step, rounded > 0.0 ? rounded : null, [], advice);
    }

    /// <summary>The step on a day the blackout allows: the late feeding moves ahead of it, starters do not move; null where no day is left.</summary>
    private FeedStep? Moved(FeedStep step, DateOnly? earlier)
    {
        if (pack.FertilizerBlackout is not { } blackout || !blackout.Covers(step.Date))
        {
            return step;
        }

        if (step.DaysAfter is not null)
        {
            return null;
        }

        var day = step.Date;
        while (blackout.Covers(day) && step.Date.DayNumber - day.DayNumber < 366)
        {
            day = day.AddDays(-1);
        }

        return earlier is { } first && day.DayNumber - first.DayNumber < LeastDaysAfterStarter ? null : step with { Date = day };
    }

    private RuledStep Blocked(FeedStep step)
    {
        var blackout = pack.FertilizerBlackout!;
        return new(step, null, [new(
            $"rules.blackout.{step.Id}",
            $"{pack.Name}: no fertilizer in the closed season",
            string.Create(CultureInfo.InvariantCulture, $"{step.Title} would fall on {FigureText.DateText(step.Date)}, inside the closed season from {blackout.FromMonth}/{blackout.FromDay} to {blackout.ToMonth}/{blackout.ToDay}."),
            "Leave this feeding out, or seed earlier so that it falls before.",
            blackout.Source)], []);
    }

    private Wall? PhosphorusWall(FeedStep step)
    {
        var judged = PhosphorusLimit.Judge(pack.Phosphorus, step.Product.Phosphate.Value, work, soil, step.Date);
        return judged.Allowed
            ? null
            : new($"rules.phosphorus.{step.Id}", $"{pack.Name}: phosphorus rule", $"{step.Title} with {step.Product.Name}: {judged.Reason}.", "Use a zero-phosphate product, enter a soil test that shows need, or ask the state whether this work counts as repair.", pack.Phosphorus.Source);
    }

    private Wall SlowWall(FeedStep step) => new(
        $"rules.nitrogen.slow.{step.Id}",
        $"{pack.Name}: slow-release nitrogen",
        string.Create(CultureInfo.InvariantCulture, $"{step.Title} with {step.Product.Name}: {step.SlowShare * 100.0:0.#} % of its nitrogen is slow-release, at least {pack.Nitrogen.LeastSlowShare * 100.0:0.#} % is required."),
        "Use a product with enough slow-release nitrogen, or enter the share from its label.",
        pack.Nitrogen.Source);

    private Wall TooMuch(FeedStep step, double asked, double most) => new(
        $"rules.nitrogen.application.{step.Id}",
        $"{pack.Name}: nitrogen in one application",
        string.Create(CultureInfo.InvariantCulture, $"{step.Title} at the entered rate puts on {asked:0.###} lb N per 1,000 sq ft; {most:0.###} is the most."),
        string.Create(CultureInfo.InvariantCulture, $"Spread at most {most / step.Product.Nitrogen.Value:0.##} lb of {step.Product.Name} per 1,000 sq ft."),
        pack.Nitrogen.Source);

    private Wall YearFull(FeedStep step, double asked, double left) => new(
        $"rules.nitrogen.year.{step.Id}",
        $"{pack.Name}: nitrogen in one year",
        string.Create(CultureInfo.InvariantCulture, $"{step.Title} at the entered rate puts on {asked:0.###} lb N per 1,000 sq ft; {left:0.###} of the yearly {pack.Nitrogen.MaxPerYear:0.###} is left."),
        string.Create(CultureInfo.InvariantCulture, $"Spread at most {left / step.Product.Nitrogen.Value:0.##} lb of {step.Product.Name} per 1,000 sq ft, or leave it out."),
        pack.Nitrogen.Source);

    private (string Why, string Source, Sureness Sureness) Binding(double taken, double? perApplication, double? leftByLaw) =>
        taken == perApplication ? ($"{pack.Name} allows no more of this product in one application", pack.Nitrogen.Source, pack.Nitrogen.Sureness)
        : taken == leftByLaw ? ($"{pack.Name} allows no more this year", pack.Nitrogen.Source, pack.Nitrogen.Sureness)
        : ("these grasses want no more in a year", "yearly nitrogen by grass: Maine Department of Agriculture, Conservation and Forestry, YardScaping", Sureness.Published);

    private static Advice Lowered(FeedStep step, double taken, (string Why, string Source, Sureness Sureness) binding) => new(
        $"feed.{step.Id}.lowered",
        taken > 0.0
            ? string.Create(CultureInfo.InvariantCulture, $"{step.Title}: lowered from {step.WantedPoundsPerM:0.##} to {taken:0.###} lb N per 1,000 sq ft: {binding.Why}.")
            : $"{step.Title} is left out: {binding.Why}.",
        binding.Source,
        binding.Sureness);
}
