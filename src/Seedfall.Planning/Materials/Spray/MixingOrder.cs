namespace Seedfall.Planning.Materials;

/// <summary>What goes into a tank after what, and the jar test before.</summary>
internal static class MixingOrder
{
    internal static IReadOnlyList<string> For(IReadOnlyList<TankItem> items) =>
        ["half the water, agitating", .. items.OrderBy(i => i.Formulation).Select(i => $"{i.Name} ({Words(i.Formulation)})"), "the rest of the water"];

    /// <summary>The order and amounts of a one-pint jar test, as Utah State University Extension gives them.</summary>
    internal static IReadOnlyList<string> JarTest(IReadOnlyList<TankItem> items) => items.Count < 2
        ? ["One product only: no jar test is needed unless your label asks for it."]
        :
        [
            "Wear what the labels ask. Put 1 pint of the water you will spray with in a clear jar.",
            .. items.OrderBy(i => i.Formulation).Select(i => $"Add {Spoon(i.Formulation)} of {i.Name}; close and shake."),
            "Let it stand 15 minutes.",
            "Heat, layers, flakes or gel: these do not go together. Spray them apart.",
            "Spray the jar out on the lawn or treat it as the labels say; never down a drain.",
        ];

    internal static string Words(FormulationClass formulation) => formulation switch
    {
        FormulationClass.WettablePowder => "wettable powder",
        FormulationClass.DryFlowable => "dry flowable",
        FormulationClass.SuspensionConcentrate => "suspension",
        FormulationClass.EmulsifiableConcentrate => "emulsifiable concentrate",
        FormulationClass.SolublePowder => "soluble powder",
        FormulationClass.Solution => "solution",
        FormulationClass.Surfactant => "surfactant",
        _ => throw new ArgumentOutOfRangeException(nameof(formulation), formulation, "is not a known formulation"),
    };

    private static string Spoon(FormulationClass formulation) =>
        formulation is FormulationClass.WettablePowder or FormulationClass.DryFlowable ? "1 tablespoon" : "1 teaspoon";
}
