namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>A daily degree-day snow store: enough to know whether the ground is covered in late autumn.</summary>
internal struct SnowStore
{
    private const double FreezingMeanC = 0.5;
    private const double MeltMmPerDegreeDay = 2.5;
    private const double CoveringMm = 10.0;

    /// <summary>Water in the snow, mm.</summary>
    internal double WaterMm { get; private set; }

    /// <summary>Share of ground covered: full from 10 mm of water (common practice, no source read).</summary>
    internal readonly double CoverShare => Math.Min(1.0, WaterMm / CoveringMm);

    /// <summary>One day's fall and melt.</summary>
    internal void Next(double airC, double rainMm)
    {
        var fallen = airC < FreezingMeanC ? rainMm : 0.0;
        WaterMm = Math.Max(0.0, WaterMm + fallen - (MeltMmPerDegreeDay * Math.Max(0.0, airC + FreezingMeanC)));
    }
}
