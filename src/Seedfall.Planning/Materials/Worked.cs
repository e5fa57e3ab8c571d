using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>Figures with their workings, written short.</summary>
internal static class Worked
{
    internal const string Arithmetic = "arithmetic on the inputs";

    internal const string Practice = "common practice, no source read";

    /// <summary>A figure computed from others.</summary>
    internal static Figure Computed(string id, string label, QuantityKind kind, double value, string formula, string? note = null, params WorkingInput[] inputs) =>
        new(id, label, kind, value, new Working(formula, inputs, Arithmetic, Sureness.Computed, note));

    /// <summary>A figure with its own source.</summary>
    internal static Figure Sourced(string id, string label, QuantityKind kind, double value, string formula, string source, Sureness sureness, string? note = null, params WorkingInput[] inputs) =>
        new(id, label, kind, value, new Working(formula, inputs, source, sureness, note));
}
