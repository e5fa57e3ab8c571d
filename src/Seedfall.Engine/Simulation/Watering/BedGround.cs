using System.Runtime.Intrinsics;
using Seedfall.Engine.Simulation.Seedbed;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Watering;

/// <summary>A patch's soil and surface made ready, and the layer kept wet: what steps four of its beds at once.</summary>
internal sealed class BedGround
{
    /// <summary>Deepest layer seedlings hang on in their first two weeks: 20 to 60 mm.</summary>
    private const int RootLayer = 3;

    private readonly PatchConditions _patch;
    private readonly SeedbedSurface _surface;

    internal BedGround(PatchConditions patch, int? layer)
    {
        _patch = patch.Sound();
        (Soil, _surface, Layer) = (SeedbedSoil.For(patch.Texture), patch.Surface, layer ?? patch.SeedLayer);
        ArgumentOutOfRangeException.ThrowIfNegative(Layer, nameof(layer));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Layer, SeedbedSoil.Layers, nameof(layer));
    }

    internal SeedbedSoil Soil { get; }

    internal int Layer { get; }

    /// <summary>Beds at field capacity with nothing on top.</summary>
    internal SeedbedState AtFieldCapacity() => new(Soil.Hydraulics.FieldCapacity);

    /// <summary>One hour on in each of four beds.</summary>
    internal SeedbedFluxes Step(SeedbedState state, Lanes rainMm, Lanes demandMm, Lanes irrigationMm) =>
        SeedbedWater.Step(Soil, state, _surface, _patch.Hour(rainMm, irrigationMm, demandMm));

    /// <summary>1 for each bed that holds, else 0.</summary>
    internal Lanes Held(SeedbedState state, in Hold hold)
    {
        var held = Vector256.GreaterThanOrEqual(Soil.PotentialMPa(state.WaterContent[Layer]), Vector256.Create(hold.SeedMPa));
        for (var layer = 0; hold.Around && layer <= RootLayer; layer++)
        {
            held = layer == Layer ? held : held & Vector256.GreaterThanOrEqual(Soil.PotentialMPa(state.WaterContent[layer]), Vector256.Create(PatchConditions.DryMPa));
        }

        return held & Lanes.One;
    }
}
