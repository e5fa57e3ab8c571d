using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>
/// Water in and on four seedbeds side by side: six layers, what stands on leaves and mulch, what stands on the ground.
/// </summary>
public sealed class SeedbedState
{
    /// <summary>All layers at one water content, nothing on top.</summary>
    /// <param name="waterContent">Volumetric water, m3/m3, above 0.</param>
    public SeedbedState(double waterContent)
    {
        if (!(waterContent is > 0.0 and < 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(waterContent), waterContent, "a share of water between 0 and 1 is needed");
        }

        WaterContent = new Lanes[SeedbedSoil.Layers];
        Array.Fill(WaterContent, Vector256.Create(waterContent));
    }

    /// <summary>Makes this the same as another.</summary>
    internal void Take(SeedbedState other)
    {
        other.WaterContent.CopyTo(WaterContent, 0);
        (InterceptedMm, PondMm, EventInfiltrationMm, DryHours, SurfaceSM) = (other.InterceptedMm, other.PondMm, other.EventInfiltrationMm, other.DryHours, other.SurfaceSM);
    }

    /// <summary>Volumetric water by layer, top first, m3/m3.</summary>
    public Lanes[] WaterContent { get; }

    /// <summary>Water held on leaves and mulch, mm.</summary>
    public Lanes InterceptedMm { get; set; }

    /// <summary>Water standing on the ground, mm.</summary>
    public Lanes PondMm { get; set; }

    /// <summary>Infiltrated since the wet spell began, mm.</summary>
    public Lanes EventInfiltrationMm { get; set; }

    /// <summary>Dry hours since the last water came; the wet spell ends after six.</summary>
    public Lanes DryHours { get; set; }

    /// <summary>Resistance of the surface to vapor in the last hour, s/m.</summary>
    internal Lanes SurfaceSM { get; set; }

    /// <summary>All water held, mm.</summary>
    public Lanes TotalMm
    {
        get
        {
            var total = InterceptedMm + PondMm;
            for (var i = 0; i < SeedbedSoil.Layers; i++)
            {
                total += WaterContent[i] * SeedbedSoil.ThicknessMm[i];
            }

            return total;
        }
    }
}
