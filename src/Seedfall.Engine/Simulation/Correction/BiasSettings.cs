namespace Seedfall.Engine.Simulation.Correction;

/// <summary>How far a place's soil is expected to lie off the model, and how far a reading lies off the soil.</summary>
/// <param name="BiasC">Standard deviation of the place's own offset, degC: about 0.8 to 1.0 over measuring stations.</param>
/// <param name="ReadingC">Standard deviation of one reading: reader, depth, spot, degC.</param>
/// <param name="ThermometerC">Standard deviation of what all readings of one thermometer share, degC.</param>
/// <param name="FadeDays">Days in which what was learned fades to 1/e: offsets change with the season.</param>
public sealed record BiasSettings(double BiasC = 1.0, double ReadingC = 0.8, double ThermometerC = 0.4, double FadeDays = 20.0)
{
    /// <summary>The defaults (assumed, after measured station offsets and probe accuracy).</summary>
    public static BiasSettings Default { get; } = new();
}
