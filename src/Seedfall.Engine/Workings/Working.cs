namespace Seedfall.Engine.Workings;

/// <summary>One input of a formula, as shown in a working.</summary>
/// <param name="Symbol">Symbol used in the formula, for example <c>A</c>.</param>
/// <param name="Meaning">What it is, in words.</param>
/// <param name="Value">Its value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit as written in the trade; empty for a pure number.</param>
public sealed record WorkingInput(string Symbol, string Meaning, double Value, string Unit);

/// <summary>
/// The working behind one figure: formula, inputs, source and sureness. One value carries it from the
/// function that computed the figure to the screen, the paper and the JSON.
/// </summary>
/// <param name="Formula">The formula in symbols, for example <c>bulk = target / PLS</c>.</param>
/// <param name="Inputs">Its inputs with units, in the order they appear.</param>
/// <param name="Source">Where formula and constants come from; never empty.</param>
/// <param name="Sureness">How sure the figure is.</param>
/// <param name="Note">A caveat or the effect of an assumption; null where none is needed.</param>
public sealed record Working(
    string Formula,
    IReadOnlyList<WorkingInput> Inputs,
    string Source,
    Sureness Sureness,
    string? Note = null);
