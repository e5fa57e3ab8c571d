namespace Seedfall.Photos.Cover;

/// <summary>
/// Dyed paper mulch: much greener than red but nearly as blue as green, which leaves are not in any light, and evenly so. It counts
/// as ground.
/// </summary>
internal static class PaperMulch
{
    /// <summary>Share of the picture above which it is reported.</summary>
    internal const double Reported = 0.05;

    private const float GreenRedAbove = 0.25f;
    private const float GreenBlueOfGreenRed = 0.33f;
    private const float NotGreen = -6f;

    /// <summary>Sets the evidence of such pixels to ground where there are many; the share of the picture they are.</summary>
    internal static double LeaveOut(ColorPlanes planes, float[] evidence)
    {
        var n = 0;
        for (var i = 0; i < evidence.Length; i++)
        {
            n += IsMulch(planes, i) ? 1 : 0;
        }

        var share = (double)n / evidence.Length;
        for (var i = 0; share > Reported && i < evidence.Length; i++)
        {
            evidence[i] = IsMulch(planes, i) ? Math.Min(evidence[i], NotGreen) : evidence[i];
        }

        return share;
    }

    private static bool IsMulch(ColorPlanes planes, int i) => planes.WideGreenRed[i] > GreenRedAbove && planes.WideGreenBlue[i] < GreenBlueOfGreenRed * planes.WideGreenRed[i];
}
