namespace Seedfall.Planning.Water.Coverage;

/// <summary>
/// Wind on a spray pattern, as a plain change of its shape: moved downwind, drawn in across the wind, stretched downwind, shortened
/// upwind; the water that lands is the water that left, less what drifts and evaporates. All coefficients from memory, no source read.
/// </summary>
/// <param name="Shift">Pattern moved downwind, share of the throw.</param>
/// <param name="Down">Throw downwind over throw in still air.</param>
/// <param name="Up">Throw upwind over throw in still air.</param>
/// <param name="Across">Throw across the wind over throw in still air.</param>
/// <param name="Lost">Share of the water that does not land.</param>
internal readonly record struct WindDistortion(double Shift, double Down, double Up, double Across, double Lost)
{
    private const double ShiftPerMs = 0.025;

    private const double AcrossPerMs = 0.03;

    private const double DownPerMs = 0.01;

    private const double UpPerMs = 0.05;

    private const double CalmLoss = 0.035;

    private const double LossPerMs = 0.0175;

    private const double CalmMs = 2.0;

    /// <summary>Least throw that is left, so that a gale does not turn a pattern inside out.</summary>
    private const double LeastThrow = 0.2;

    /// <summary>Still air: nothing moves and nothing is lost.</summary>
    internal static WindDistortion Of(double windMs) => windMs <= 0.0 ? new(0.0, 1.0, 1.0, 1.0, 0.0) : new(
        ShiftPerMs * windMs,
        1.0 + (DownPerMs * windMs),
        Math.Max(LeastThrow, 1.0 - (UpPerMs * windMs)),
        Math.Max(LeastThrow, 1.0 - (AcrossPerMs * windMs)),
        Math.Min(1.0, CalmLoss + (LossPerMs * Math.Max(0.0, windMs - CalmMs))));
}
