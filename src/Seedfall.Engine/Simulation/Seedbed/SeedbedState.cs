namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>Water in and on the seedbed: six layers, what stands on leaves and mulch, what stands on the ground.</summary>
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

        WaterContent = new double[SeedbedSoil.Layers];
        Array.Fill(WaterContent, waterContent);
    }

    /// <summary>Volumetric water by layer, top first, m3/m3.</summary>
    public double[] WaterContent { get; }

    /// <summary>Water held on leaves and mulch, mm.</summary>
    public double InterceptedMm { get; set; }

    /// <summary>Water standing on the ground, mm.</summary>
    public double PondMm { get; set; }

    /// <summary>Infiltrated since the wet spell began, mm.</summary>
    public double EventInfiltrationMm { get; set; }

    /// <summary>Dry hours since the last water came; the wet spell ends after six.</summary>
    public int DryHours { get; set; }

    /// <summary>All water held, mm.</summary>
    public double TotalMm
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

    /// <summary>Takes another state's values.</summary>
    public void CopyFrom(SeedbedState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.WaterContent.CopyTo(WaterContent, 0);
        (InterceptedMm, PondMm, EventInfiltrationMm, DryHours) = (other.InterceptedMm, other.PondMm, other.EventInfiltrationMm, other.DryHours);
    }
}
