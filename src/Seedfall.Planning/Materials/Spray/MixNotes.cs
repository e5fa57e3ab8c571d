using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>Foam and how each class goes into the water. Common practice, no source read; the label stands above it.</summary>
internal static class MixNotes
{
    /// <summary>Share of a dose that rounding down to the scale may take before a finer scale is asked for.</summary>
    private const double MostRounding = 0.05;

    internal static IEnumerable<Advice> For(SprayTrip trip) =>
        Classes([.. trip.Products.Select(p => p.Formulation)]).Concat(trip.IsWeighed ? Weighed(trip) : []);

    private static IEnumerable<Advice> Weighed(SprayTrip trip)
    {
        yield return Note("mix.scale", "A dry oz is an ounce by weight, never a fluid ounce. The scale is taken to show 0.1 g below 100 g and 1 g above; every dose is rounded down to that. Set it level, put the empty bowl on, bring it to zero, then weigh; check it now and then with a known weight. A scoop sold with one product serves for that product only.");
        var fine = trip.Tanks.SelectMany(t => t.Products).Where(p => p.Kind == QuantityKind.DryDose && TankMix.ScaleStep(new Mass(p.Value)) > new Mass(p.Value) * MostRounding).Select(p => p.Label).Distinct().ToList();
        if (fine.Count > 0)
        {
            yield return Note("mix.fine-scale", $"{string.Join(" and ", fine)}: a dose this small may come out more than 5 % short on such a scale. Weigh it on one that shows 0.01 g and go by the amount in each gallon, never above it; or fill fewer, larger tanks.");
        }
    }

    private static IEnumerable<Advice> Classes(IReadOnlyList<FormulationClass> classes)
    {
        foreach (var formulation in classes.Distinct().Order())
        {
            yield return Note($"mix.{formulation}".ToLowerInvariant(), Class(formulation, classes.Count == 1));
        }

        if (classes.Any(c => c is FormulationClass.Surfactant or FormulationClass.EmulsifiableConcentrate))
        {
            yield return Note("mix.foam", "Foam: run the last water in slowly with the hose end under the surface, agitate gently, and use a defoamer only where the labels allow one. Do not fill by the foam's level.");
        }

        if (classes.Count > 1)
        {
            yield return Note("mix.next", "Wait until each product is wholly dispersed before the next goes in. Where one label asks for another order, that label is followed; where two contradict each other, they are sprayed apart.");
        }

        yield return Note("mix.standing", "Spray what is mixed the same day. A tank that stood is shaken to the bottom before it is sprayed.");
    }

    private static string Class(FormulationClass formulation, bool alone) => formulation switch
    {
        FormulationClass.WettablePowder => "Wettable powder: stir it to a thin cream in a bucket of water first; agitate all the time, it settles; nozzle screens no finer than the label names.",
        FormulationClass.DryFlowable => "Dry flowable: let the granules fall apart in the half-full tank before the next product, and keep agitating.",
        FormulationClass.SuspensionConcentrate => "Suspension: shake the container well before measuring, for what settled is the product; rinse the measure into the tank.",
        FormulationClass.EmulsifiableConcentrate => "Emulsifiable concentrate: the water turns milky and must stay so; cream or oil on top means it did not mix.",
        FormulationClass.SolublePowder => "Soluble powder: let it dissolve wholly in a bucket of water first; what stays on the bottom is product that is missing on the lawn.",
        FormulationClass.Solution => "Solution: it clears at once and needs no agitation once mixed.",
        FormulationClass.Surfactant when alone => "Surfactant: pour it in gently, into water that is already there.",
        FormulationClass.Surfactant => "Surfactant: last, gently, and only where the label of the pesticide asks for it.",
        _ => throw new ArgumentOutOfRangeException(nameof(formulation), formulation, "is not a known formulation"),
    };

    private static Advice Note(string id, string statement) => new(id, statement, Worked.Practice, Sureness.CommonPractice);
}
