using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>A feeding after the rules were put to it.</summary>
/// <param name="NitrogenPoundsPerM">Nitrogen that goes on; null where the feeding falls out.</param>
internal sealed record RuledStep(FeedStep Step, double? NitrogenPoundsPerM, IReadOnlyList<Wall> Walls, IReadOnlyList<Advice> Advice)
{
    /// <summary>Patches it is still to go on; null for the whole lawn.</summary>
    internal IReadOnlyList<string>? Grounds { get; init; }

    /// <summary>What a feeding after recorded ones was held to; empty for others.</summary>
    internal IReadOnlyList<WorkingInput> Bounds { get; init; } = [];
}

/// <summary>
/// The rule pack put to the feedings one after another. A default above a limit is lowered to it and says so; what the user
/// entered above a limit is a wall, but where what is recorded of this season has used up the year it is lowered too.
/// </summary>
/// <param name="spent">Nitrogen of the year so far; every feeding ruled is added to it.</param>
/// <param name="follows">True where feedings of this season are recorded.</param>
internal sealed class FeedRules(RulePack pack, SeedingWork work, SoilFacts? soil, NitrogenLedger spent, double grassMostPoundsPerM, bool follows)
{
    private const double WorthSpreading = 0.1;

    /// <summary>One feeding held to the rules; what it puts on is added to the year.</summary>
    /// <param name="step">The feeding as wanted.</param>
    /// <param name="earlier">Day of the feeding before it; null for the first.</param>
    /// <param name="grounds">Patches it goes on; null for the whole lawn.</param>
    internal RuledStep Rule(FeedStep step, DateOnly? earlier, IReadOnlyList<string>? grounds = null)
    {
        if (FeedDates.Moved(pack, step, earlier) is not { } dated)
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

        return walls.Count > 0 ? new(dated, null, walls, []) : Nitrogen(dated, allowed.MaxPoundsPerM, grounds);
    }

    private RuledStep Nitrogen(FeedStep step, double? perApplication, IReadOnlyList<string>? grounds)
    {
        var before = spent.Most(grounds);
        var leftByLaw = NitrogenLimit.LeftThisYear(pack.Nitrogen, before);
        if (step.AskedPoundsPerM is { } asked)
        {
            if (perApplication is { } most && asked > most + 1e-9)
            {
                return new(step, null, [TooMuch(step, asked, most)], []);
            }

            if (leftByLaw is { } left && asked > left + 1e-9)
            {
                return follows ? Take(step, asked, left, perApplication, leftByLaw, before, grounds) : new(step, null, [YearFull(step, asked, left)], []);
            }

            spent.Add(new(step.Id, $"{step.Title}, still planned", grounds, asked));
            return new(step, asked, [], []) { Grounds = grounds };
        }

        var leftByGrass = Math.Max(0.0, grassMostPoundsPerM - before);
        var taken = Math.Min(step.WantedPoundsPerM, Math.Min(perApplication ?? double.MaxValue, Math.Min(leftByLaw ?? double.MaxValue, leftByGrass)));
        return Take(step, step.WantedPoundsPerM, taken, perApplication, leftByLaw, before, grounds);
    }

    /// <summary>So much of what is wanted, or nothing where it is not worth spreading; lowered, it says so.</summary>
    private RuledStep Take(FeedStep step, double wanted, double taken, double? perApplication, double? leftByLaw, double before, IReadOnlyList<string>? grounds)
    {
        var rounded = taken < WorthSpreading ? 0.0 : taken;
        spent.Add(new(step.Id, $"{step.Title}, still planned", grounds, rounded));
        var advice = rounded < wanted - 1e-9 ? [Lowered(step, wanted, rounded, Binding(taken, perApplication, leftByLaw))] : Array.Empty<Advice>();
        return new(step, rounded > 0.0 ? rounded : null, [], advice) { Grounds = grounds, Bounds = follows ? Bounds(perApplication, before) : [] };
    }

    /// <summary>What a feeding after recorded ones was held to.</summary>
    private IReadOnlyList<WorkingInput> Bounds(double? perApplication, double before) =>
    [
        new("R", "on this ground this year, as recorded and as planned before", before, "lb N per 1,000 sq ft"),
        .. perApplication is { } most ? [new WorkingInput("A", "most in one application", most, "lb N per 1,000 sq ft")] : Array.Empty<WorkingInput>(),
        .. pack.Nitrogen.MaxPerYear is { } year ? [new WorkingInput("Y", "most in one year by the rules", year, "lb N per 1,000 sq ft")] : Array.Empty<WorkingInput>(),
        new("G", "most these grasses want in a year", grassMostPoundsPerM, "lb N per 1,000 sq ft"),
    ];

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

    private static Advice Lowered(FeedStep step, double wanted, double taken, (string Why, string Source, Sureness Sureness) binding) => new(
        $"feed.{step.Id}.lowered",
        taken > 0.0
            ? string.Create(CultureInfo.InvariantCulture, $"{step.Title}: lowered from {wanted:0.##} to {taken:0.###} lb N per 1,000 sq ft: {binding.Why}.")
            : $"{step.Title} is left out: {binding.Why}.",
        binding.Source,
        binding.Sureness);
}
