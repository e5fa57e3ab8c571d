using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>Foam and how each class goes into the water. Common practice, no source read; the label stands above it.</summary>
internal static class MixNotes
{
    internal static IEnumerable<Advice> For(IReadOnlyList<FormulationClass> classes)
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
        FormulationClass.Solution => "Solution: it clears at once and needs no agitation once mixed.",
        FormulationClass.Surfactant when alone => "Surfactant: pour it in gently, into water that is already there.",
        FormulationClass.Surfactant => "Surfactant: last, gently, and only where the label of the pesticide asks for it.",
        _ => throw new ArgumentOutOfRangeException(nameof(formulation), formulation, "is not a known formulation"),
    };

    private static Advice Note(string id, string statement) => new(id, statement, Worked.Practice, Sureness.CommonPractice);
}
