namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>What ran through a spreader, by how it flows. Kinds within one class are taken to flow nearly alike.</summary>
public enum SpreadMaterial
{
    /// <summary>Light small seed: bluegrass, fine fescue.</summary>
    FineSeed,

    /// <summary>Larger seed: ryegrass, tall fescue.</summary>
    CoarseSeed,

    /// <summary>A mix of both.</summary>
    MixedSeed,

    /// <summary>Seed in a coat, which flows like small granules.</summary>
    CoatedSeed,

    /// <summary>Granular fertilizer.</summary>
    Granules,
}
